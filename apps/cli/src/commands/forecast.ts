import { forecastAnswer, forecastOfGoal, type GoalForecastView } from '@sedgeline/projections';
import { type Words, words } from '@sedgeline/words';
import { InvalidArgumentError } from 'commander';
import { EXIT } from '../cli-failure.ts';
import { known, openJournal } from '../open-journal.ts';
import { table } from '../table.ts';
import { wholeNumber } from '../whole-number.ts';
import { type AddCommand, type AnswerOptions, answering, print } from './command.ts';

interface Options extends AnswerOptions {
  readonly goal: string;
  readonly perWeek?: number;
  readonly seed: number;
}

/** More sessions than this in a week are a slip of the pen. */
const PER_WEEK_AT_MOST = 21;
/** Weeks that the table for people shows, as far as they are looked ahead to. */
const SHOWN_WEEKS = [0, 1, 2, 4, 6, 8, 13, 20, 26, 39, 52];

/** Sessions a week, fractions allowed. @throws InvalidArgumentError for anything else */
function sessionsAWeek(text: string): number {
  const value = Number(text);
  if (/^\d+(\.\d+)?$/.test(text) && value <= PER_WEEK_AT_MOST) return value;
  throw new InvalidArgumentError(`expected sessions a week, 0 to ${PER_WEEK_AT_MOST}, got ${text}.`);
}

/** `forecast JOURNAL --goal G`: when a dog may reach a goal, and what to proof first. */
export const addForecast: AddCommand = (program, terminal, finish) => {
  const command = program
    .command('forecast')
    .description('say when a dog may reach a goal, and what to proof first')
    .argument('<journal>', 'JSON Lines file, - for standard input')
    .requiredOption('--goal <goal>', 'which goal')
    .option('--per-week <x>', "sessions a week (the record's own weeks when left out)", sessionsAWeek)
    .option('--seed <n>', 'which futures are drawn', wholeNumber, 0);
  answering(command, true).action((path: string, options: Options) => {
    const { kennel, atMs, beside } = openJournal(terminal, path, options);
    const { goals } = kennel.record;
    const goal = goals.get(known('goal', options.goal, goals.keys(), path, beside.setAside));
    if (goal === undefined) throw new RangeError(`goal: expected one of the record's, got ${options.goal}`);
    const perWeek = options.perWeek ?? null;
    const view = forecastOfGoal(kennel.record, kennel.timeline(), goal, {
      atMs,
      seed: options.seed,
      perWeek,
    });
    print(terminal, options, { ...forecastAnswer(view), ...beside }, () => inWords(view, words()));
    finish(EXIT.done);
  });
};

function inWords(view: GoalForecastView, catalogue: Words): string {
  const { season, chances, trade } = catalogue;
  const head = `${view.dogName}: ${view.name}\n`;
  const askRow = ({ skill, wanted, chance, interval90 }: GoalForecastView['asks'][number]) => [
    trade.skill(skill),
    chances.inHundred(wanted),
    chances.shortInterval(chance, interval90),
  ];
  const { ask, wanted, now, week, ready, allGood } = season.columns;
  const asks = view.asks.length === 0 ? '' : `\n${table([ask, wanted, now], view.asks.map(askRow))}`;
  if (view.kind === 'cant-say') return `${head}${season.cantSay(view.why, view.dogName)}\n${asks}`;
  const unknown = [
    ...new Set(view.asks.filter((one) => !one.known).map((one) => season.notKnown(one.skill, one.legs))),
  ];
  const said = [...unknown, ...season.all(view)].join(' ');
  const shown = new Set([...SHOWN_WEEKS, ...(view.by === null ? [] : [view.by.week])]);
  const rows = view.forecast.weeks
    .filter((one) => shown.has(one.week))
    .map((one) => [
      one.week === 0 ? season.now : String(one.week),
      chances.inHundred(one.probabilityReady),
      chances.shortInterval(one.chance, one.interval90),
    ]);
  return `${head}${said}\n${asks}\n${table([week, ready, allGood], rows)}\n${season.stated}\n`;
}

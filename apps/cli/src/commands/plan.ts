import type { Plan } from '@sedgeline/engine/session';
import { type PlanSay, planAnswer, planFor, readPlanRequest } from '@sedgeline/projections';
import { type Words, words } from '@sedgeline/words';
import { CliFailure, EXIT } from '../cli-failure.ts';
import { known, openJournal } from '../open-journal.ts';
import type { Terminal } from '../terminal.ts';
import { wholeNumber } from '../whole-number.ts';
import { type AddCommand, type AnswerOptions, answering, print } from './command.ts';

interface Options extends AnswerOptions {
  readonly request: string;
  readonly seed: number;
}

/** The request in a file. @throws CliFailure (3) naming the field that is not good, (5) for a file that can't be read */
function readRequest(terminal: Terminal, file: string) {
  let value: unknown;
  try {
    value = JSON.parse(terminal.readFile(file).replace(/^\uFEFF/, ''));
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    const message = 'expected one JSON object such as {"dog":"sorrel","minutes":15}';
    throw new CliFailure({ code: 'REQUEST_NOT_GOOD', message, exit: EXIT.badInput, file, field: 'request' });
  }
  const reading = readPlanRequest(value);
  if (reading.ok) return reading.request;
  const { message, field } = reading;
  throw new CliFailure({ code: 'REQUEST_NOT_GOOD', message, exit: EXIT.badInput, file, field });
}

/** `plan JOURNAL --request FILE`: a session for a dog, rep by rep. */
export const addPlan: AddCommand = (program, terminal, finish) => {
  const command = program
    .command('plan')
    .description('plan a session: what to ask, in which order, and what to lay out before each rep')
    .argument('<journal>', 'JSON Lines file, - for standard input')
    .requiredOption('--request <file>', 'JSON file with dog, minutes and what else is wanted')
    .option('--seed <n>', 'which order of chance', wholeNumber, 0);
  answering(command, true).action((path: string, options: Options) => {
    const request = readRequest(terminal, options.request);
    const { kennel, atMs, beside } = openJournal(terminal, path, options);
    known('dog', request.dog, kennel.record.dogs.keys(), path, beside.setAside);
    if (request.layout !== undefined) {
      known('layout', request.layout, kennel.record.layouts.keys(), path, beside.setAside);
    }
    const catalogue = words();
    const plan = planFor(kennel, request, { atMs, seed: options.seed });
    const answer = { ...planAnswer(plan, sayingIn(catalogue)), ...beside };
    const dog = kennel.record.dogs.get(request.dog)?.name ?? request.dog;
    print(terminal, options, answer, () => page(plan, dog, catalogue));
    finish(EXIT.done);
  });
};

function sayingIn({ ask, reasons, plan, rules }: Words): PlanSay {
  return {
    rep: (why, legs) => [ask.rep(legs), ...reasons.all(why)].join(' '),
    caution: plan.caution,
    rule: rules.sentence,
  };
}

/** The session as a page to be walked. */
function page(plan: Plan, dog: string, catalogue: Words): string {
  const { plan: say, rules } = catalogue;
  const broken = plan.rules.filter(({ kept }) => !kept).map((verdict) => `  ${rules.sentence(verdict)}`);
  const minded = plan.cautions.map((caution) => `  ${say.caution(caution)}`);
  return [
    say.title(dog, plan.minutes),
    plan.reps.length === 0 ? say.empty : say.takes(plan.minutesExpected.p50, plan.minutesExpected.p90),
    '',
    ...plan.reps.flatMap((rep) => repLines(plan, rep, catalogue)),
    ...(broken.length === 0 ? [say.allKept] : [say.notKept, ...broken]),
    say.inMind,
    ...minded,
    '',
  ].join('\n');
}

function repLines(plan: Plan, rep: Plan['reps'][number], catalogue: Words): string[] {
  const { plan: say, ask, chances, reasons } = catalogue;
  const least = rep.legs.toSorted((a, b) => b.chance.missed - a.chance.missed)[0];
  const chance =
    least === undefined
      ? ''
      : ` ${catalogue.trade.skillInWords(least.skill)} ${chances.withInterval(1 - least.chance.missed, least.interval90.notMissed)} not missed.`;
  const pause = plan.breaks.find(({ afterRep }) => afterRep === rep.n);
  return [
    `${rep.n}. ${say.purpose(rep.purpose)}. ${ask.legs(rep.legs)}.`,
    `   ${say.before(rep.before) || say.nothingToLay}${chance}`,
    `   ${reasons.all(rep.reasons).join(' ')}`,
    `   ${say.else(`${ask.legs(rep.easier.legs)}.`)}`,
    ...(pause === undefined ? [] : ['', `   ${say.takesBreak(pause.minutes)}`]),
    '',
  ];
}

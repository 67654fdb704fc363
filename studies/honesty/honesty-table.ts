import { MECHANISMS } from '../careers/career.ts';
import { holds, judge, judgePriors, type Verdict } from './criteria.ts';
import { coverageOf, type Figure, meanOf, regretShare, skillOver, slopeOf, talliesIn } from './figures.ts';
import { type KennelTallies, SLICE_NAMES, type Slice } from './judge.ts';

const number = ({ value }: Figure, places: number) => value.toFixed(places);
const withError = (figure: Figure, places: number) =>
  `${number(figure, places)} ± ${figure.se.toFixed(places)}`;

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  return [line(head), line(head.map((_, n) => (n === 0 ? '---' : '---:'))), ...rows.map(line)].join('\n');
}

/** Everyone's scores in one slice, best log loss first. */
export function scoresTable(kennels: readonly KennelTallies[], who: readonly string[], slice: Slice): string {
  const of = (name: string) => talliesIn(kennels, name, slice);
  const rows = [...who]
    .sort((a, b) => meanOf(of(a), 'logLoss').value - meanOf(of(b), 'logLoss').value)
    .map((name) => {
      const tallies = of(name);
      const hasIntervals = tallies.some(({ intervals }) => intervals > 0);
      const slope = slopeOf(tallies);
      return [
        name,
        number(meanOf(tallies, 'logLoss'), 4),
        `${(100 * skillOver(tallies, of('always-average')).value).toFixed(1)} %`,
        number(meanOf(tallies, 'brier'), 4),
        number(meanOf(tallies, 'ranked'), 4),
        withError(meanOf(tallies, 'regret'), 4),
        slope === null ? '' : number(slope, 2),
        hasIntervals ? number(coverageOf(tallies, 'good'), 3) : '',
        hasIntervals ? number(coverageOf(tallies, 'notMissed'), 3) : '',
      ];
    });
  const head = [
    'who',
    'log loss',
    'skill',
    'Brier',
    'ranked',
    'regret',
    'slope',
    'covers good',
    'covers not missed',
  ];
  return table(head, rows);
}

const limits = ({ least, most }: Verdict) => (most === 1 ? `${least} and more` : `${least} to ${most}`);

function verdictRows(verdicts: readonly Verdict[]): string[][] {
  return verdicts.map((verdict) => [
    verdict.criterion,
    limits(verdict),
    verdict.figure === null ? 'too few legs' : withError(verdict.figure, 3),
    holds(verdict, 0) ? 'yes' : 'NO',
  ]);
}

/** What must be true of the engine, and whether it is. */
export function criteriaTable(kennels: readonly KennelTallies[], prior: string): string {
  const verdicts = [...judge(kennels, 'the engine'), judgePriors(kennels, prior)];
  return table(['criterion', 'wanted', 'found', 'met'], verdictRows(verdicts));
}

/** The figures of the engine on each mechanism alone. */
export function mechanismTable(kennels: readonly KennelTallies[]): string {
  const each = MECHANISMS.map((name) =>
    judge(
      kennels.filter(({ mechanism }) => mechanism === name),
      'the engine',
    ),
  );
  const cell = (verdict: Verdict) =>
    verdict.figure === null
      ? 'too few legs'
      : `${number(verdict.figure, 3)}${holds(verdict, 0) ? '' : ' NO'}`;
  const rows = judge(kennels, 'the engine').map(({ criterion }, n) => [
    criterion,
    ...each.map((own) => cell(own[n]!)),
  ]);
  return table(['criterion', ...MECHANISMS], rows);
}

/** Regret against each baseline, by slice. */
export function sharesTable(kennels: readonly KennelTallies[], baselines: readonly string[]): string {
  const rows = baselines.map((name) => [
    name,
    ...SLICE_NAMES.map((slice) => {
      const share = regretShare(talliesIn(kennels, 'the engine', slice), talliesIn(kennels, name, slice));
      return withError(share, 2);
    }),
  ]);
  return table(["the engine's regret as a share of", ...SLICE_NAMES], rows);
}

/** Which criteria each wrong engine fails, that the engine itself meets, by more than `errors` standard errors. */
export function wrongTable(
  kennels: readonly KennelTallies[],
  wrong: readonly string[],
  errors: number,
): string {
  return table(
    ['wrong engine', 'found out by'],
    wrong.map((name) => {
      const found = failures(kennels, name, errors);
      return [name, found.length === 0 ? 'NOTHING' : found.join('; ')];
    }),
  );
}

/** Criteria that a contestant fails, each with its figure. */
export function failures(kennels: readonly KennelTallies[], who: string, errors: number): string[] {
  const own = judge(kennels, 'the engine');
  return judge(kennels, who)
    .filter((verdict, n) => !holds(verdict, errors) && holds(own[n]!, errors))
    .map(({ criterion, figure }) => `${criterion} ${figure === null ? '' : number(figure, 2)}`);
}

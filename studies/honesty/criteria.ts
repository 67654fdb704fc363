import {
  coverageOf,
  type Figure,
  luckOf,
  meanOf,
  regretShare,
  skillOver,
  slopeOf,
  talliesIn,
} from './figures.ts';
import type { KennelTallies, Slice } from './judge.ts';

/** One thing that must be true, and what was found. */
export interface Verdict {
  readonly criterion: string;
  readonly figure: Figure | null;
  readonly least: number;
  readonly most: number;
}

/** Whether a figure keeps its limits, let off by `errors` standard errors. Too few legs for a figure: it doesn't. */
export function holds({ figure, least, most }: Verdict, errors: number): boolean {
  if (figure === null || !Number.isFinite(figure.value)) return false;
  return figure.value >= least - errors * figure.se && figure.value <= most + errors * figure.se;
}

const EARLY: Slice = "a dog's first ten legs";
const COVERED: readonly Slice[] = ['all legs', EARLY, 'first try of a new ask'];
/** Standard errors within which the realised loss must agree with the expected: 1 honest stater in 16,000 fails. */
const LUCK_ERRORS = 4;

/**
 * The criteria of the engine's honesty for one contestant with intervals: regret against the better running average and a
 * pooled logistic regression, skill over the average, slope, coverage, and that it doesn't peek.
 */
export function judge(kennels: readonly KennelTallies[], who: string): Verdict[] {
  const of = (name: string, slice: Slice = 'all legs') => talliesIn(kennels, name, slice);
  const mine = of(who);
  const averages = ['always-average', 'recent-average'].map((name) => of(name));
  const better = averages.sort((a, b) => meanOf(a, 'regret').value - meanOf(b, 'regret').value)[0]!;
  const verdict = (criterion: string, figure: Figure | null, least: number, most: number): Verdict => ({
    criterion,
    figure,
    least,
    most,
  });
  const coverages = COVERED.flatMap((slice) =>
    (['good', 'notMissed'] as const).map((chance) => {
      const words = chance === 'good' ? 'good' : 'not missed';
      const figure = coverageOf(of(who, slice), chance);
      return verdict(`coverage of 90 % intervals of ${words}, ${slice}`, figure, 0.85, 0.95);
    }),
  );
  return [
    verdict("regret, of the better running average's", regretShare(mine, better), 0, 0.5),
    verdict(
      "regret, of the pooled logistic regression's",
      regretShare(mine, of('pooled logistic regression')),
      0,
      0.62,
    ),
    verdict('skill over the dog-by-skill average', skillOver(mine, of('always-average')), 0.12, 1),
    verdict(
      `skill over the dog-by-skill average, ${EARLY}`,
      skillOver(of(who, EARLY), of('always-average', EARLY)),
      0.06,
      1,
    ),
    verdict('calibration slope', slopeOf(mine), 0.9, 1.1),
    ...coverages,
    verdict(
      'realised less expected loss, in standard errors',
      { value: luckOf(mine), se: 0 },
      -LUCK_ERRORS,
      LUCK_ERRORS,
    ),
  ];
}

/** What the priors alone must be worth before anything is learnt. `priors` is their name among the judged. */
export function judgePriors(kennels: readonly KennelTallies[], priors: string): Verdict {
  const slice = "a dog's first rep";
  const figure = skillOver(talliesIn(kennels, priors, slice), talliesIn(kennels, 'always-average', slice));
  return {
    criterion: `skill of the priors alone over the dog-by-skill average, ${slice}`,
    figure,
    least: 0.06,
    most: 1,
  };
}

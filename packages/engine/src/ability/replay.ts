import type { Grade, Skill } from './ask.ts';
import { alwaysAverage, type Baseline, recentAverage } from './baselines.ts';
import { type CalibrationRow, calibrationTable, type StatedOutcome } from './calibration.ts';
import type { GradeChances } from './leg.ts';
import { ScoreSum, type Scores } from './score.ts';

/** A leg with the chances stated before it, and what came of it. */
export interface ReplayedLeg {
  readonly dog: string;
  readonly skill: Skill;
  readonly chance: GradeChances;
  readonly grade: Grade;
  readonly weight: number;
}

export interface ReplayScores {
  /** Of the stated chances; `null` when no leg was scored. */
  readonly stated: Scores | null;
  readonly baselines: { readonly 'always-average': Scores | null; readonly 'recent-average': Scores | null };
  readonly calibration: readonly CalibrationRow[];
  /** Places (from 0) of the legs of weight 0, which are not scored. */
  readonly leftOut: readonly number[];
}

/** Outcomes of good for calibration, of the legs that are scored. */
export function scoredOutcomes(legs: readonly ReplayedLeg[]): readonly StatedOutcome[] {
  return legs
    .filter((leg) => leg.weight > 0)
    .map(({ chance, grade }) => ({ stated: chance.good, came: grade === 'good' }));
}

/**
 * Scores of a replay, legs in time order: log loss, Brier and ranked probability score of the three grades,
 * the same for two baselines on the same legs, and the calibration table of the chance of good. A leg of
 * weight 0 is held against nobody: it is neither scored nor counted by the baselines, but listed in
 * `leftOut`. Every other leg counts in full, also an unsure one: it did happen. A baseline knows what came
 * strictly before.
 */
export function scoreReplay(legs: readonly ReplayedLeg[]): ReplayScores {
  const stated = new ScoreSum();
  const plain: [Baseline, ScoreSum][] = [
    [alwaysAverage(), new ScoreSum()],
    [recentAverage(), new ScoreSum()],
  ];
  const leftOut: number[] = [];
  legs.forEach((leg, place) => {
    if (leg.weight === 0) {
      leftOut.push(place);
      return;
    }
    stated.add(leg.chance, leg.grade);
    for (const [baseline, sum] of plain) {
      sum.add(baseline.forecast(leg.dog, leg.skill), leg.grade);
      baseline.count(leg.dog, leg.skill, leg.grade);
    }
  });
  return {
    stated: stated.scores(),
    baselines: { 'always-average': plain[0]![1].scores(), 'recent-average': plain[1]![1].scores() },
    calibration: calibrationTable(scoredOutcomes(legs)),
    leftOut,
  };
}

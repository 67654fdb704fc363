export * from './ask.ts';
export { ASK_RANGES, checkAsk, checkContext, EASY_CONTEXT, easyAsk } from './ask-range.ts';
export { type CalibrationRow, calibrationTable, type StatedOutcome } from './calibration.ts';
export { DEMANDS, type DemandName, demandVector } from './demands.ts';
export { createAbilityFilter, restoreAbilityFilter } from './filter.ts';
export { isAbilitySnapshot } from './filter-snapshot.ts';
export * from './forecaster.ts';
export { type AskField, harderFields } from './harder-fields.ts';
export {
  FITTED,
  type FitProgress,
  type FittedName,
  fitKennel,
  fittingKennel,
  type KennelFit,
  type KennelFitAnswer,
} from './kennel-fit.ts';
export * from './leg.ts';
export { CAUSES, type Cause, type Counting, legWeight } from './leg-weight.ts';
export {
  type CleanSend,
  type ExpectationPosterior,
  expectationAt,
  expectationPosterior,
  expectationUnder,
  nextStoppedShare,
} from './patterns/expectation-model.ts';
export { findPatterns } from './patterns/find-patterns.ts';
export { PATTERNS, type PatternFinding, type PatternLeg, type PatternName } from './patterns/pattern.ts';
export { type AbilityPriors, shippedPriors } from './priors.ts';
export {
  correctChances,
  type Recalibration,
  type RecalibrationAnswer,
  recalibrate,
} from './recalibrate.ts';
export { correctForecast, recalibratedFilter } from './recalibrated-filter.ts';
export { type ReplayedLeg, type ReplayScores, scoredOutcomes, scoreReplay } from './replay.ts';
export type { Scores } from './score.ts';
export { type LevelWalk, type SessionLevel, smoothedPath } from './smoothed-path.ts';
export { statedChances } from './stated-chances.ts';
export { TOLD, type ToldGround, type ToldLevel } from './told-level.ts';
export { type BasedStep, basedStep, LAST_SUCCESSES, type WellDone } from './why/base.ts';
export type { FactorValue } from './why/factor-fields.ts';
export {
  poorFormProbability,
  VERDICT_LIMITS,
  VERDICTS,
  type Verdict,
  type VerdictFigures,
  verdictOf,
} from './why/verdict.ts';
export { type ChangedFactor, type LegReasons, type WhyStep, whyLeg } from './why/why-leg.ts';

export type { ProofingGain } from './first-to-proof.ts';
export { forecastGoal } from './forecast-goal.ts';
export { type GainShare, gainShares } from './own-gain.ts';
export type * from './season-forecast.ts';
export { type GoalAsk, SEASON, type SeasonWork, type SessionDays } from './season-goal.ts';
export { asBefore, evenly } from './session-days.ts';

export { type Air, airAbsorptionDbPerKm } from './air-absorption.ts';
export {
  type Carrying,
  carriesFarM,
  carryingTo,
  FARTHEST_CARRYING_M,
  levelAtDbSpl,
  usualSound,
  type WhistleSound,
} from './carrying.ts';
export { dogThresholdDbSpl, HEARD_HZ } from './dog-hearing.ts';
export { distanceAtM } from './dog-run.ts';
export { allowedPerDayS, blastsPerDay, NOISE_LIMITS } from './hearing-dose.ts';
export {
  chanceReactsBy,
  learnedReaction,
  type ReactionBelief,
  reactionOfLatencyS,
} from './reaction-belief.ts';
export { speedOfSoundMPerS } from './speed-of-sound.ts';
export { type StopConditions, usualStopConditions } from './stop-conditions.ts';
export { blowWhenDogAtM, type StopPoint, stopAfterWhistle, stopAtPlace } from './stop-point.ts';
export { haltInterval90M, overrunInterval90M, type StopSpread, usualStopSpread } from './stop-spread.ts';
export { type WhistleCaution, whistleCautions } from './whistle-cautions.ts';

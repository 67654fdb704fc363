export { type CleanHazard, cleanGuessability, cleanHazard, hazardSpread } from './clean-figures.ts';
export { type CleanSends, cleanSends, numberToDraw } from './clean-sends.ts';
export { fleshlerHoffman } from './fleshler-hoffman.ts';
export { guessInHindsight, type HindsightGuess } from './guess-in-hindsight.ts';
export type { BestGuess, Guessability, GuessRule, WeightedOrder } from './guessability.ts';
export { guessability } from './guessability.ts';
export { ORDER_LIMITS } from './limits.ts';
export { type CastSide, type SidesInOrder, sidesGuess, sidesInOrder } from './sides-in-order.ts';
export { type StopPlaces, stopPlaces } from './stop-places.ts';

import { finiteBetween } from '../quantity/index.ts';
import type { DogRun } from './dog-run.ts';

/** Everything the place of a stop depends on. */
export interface StopConditions extends DogRun {
  /** From deciding to the sound's leaving the whistle. */
  readonly reactionHandlerS: number;
  /** The dog's, from hearing to braking. */
  readonly reactionDogS: number;
  readonly brakingMPerS2: number;
  readonly airC: number;
}

/**
 * Taken where nothing is told. Reactions: contract, "whistle", in the range of people's (Kosinski2008). Speed, acceleration and braking: our
 * judgement, 2026; no figure for a retriever that stops on a whistle is published.
 */
export const usualStopConditions: StopConditions = {
  runSpeedMPerS: 5,
  reactionHandlerS: 0.3,
  reactionDogS: 0.35,
  accelerationMPerS2: 5,
  brakingMPerS2: 6,
  airC: 15,
};

/** @throws RangeError for figures that no dog and no air has */
export function checkStopConditions(at: StopConditions): void {
  finiteBetween('runSpeedMPerS', at.runSpeedMPerS, 0.1, 25);
  finiteBetween('accelerationMPerS2', at.accelerationMPerS2, 0.1, 40);
  finiteBetween('brakingMPerS2', at.brakingMPerS2, 0.1, 40);
  finiteBetween('reactionHandlerS', at.reactionHandlerS, 0, 10);
  finiteBetween('reactionDogS', at.reactionDogS, 0, 60);
}

import { finiteBetween } from '../quantity/index.ts';
import { brakesAtM, distanceAtM, meetsAtS, speedAtMPerS, timeAtS } from './dog-run.ts';
import { speedOfSoundMPerS } from './speed-of-sound.ts';
import { checkStopConditions, type StopConditions, usualStopConditions } from './stop-conditions.ts';

/**
 * Where the dog is at each step of a stop, metres from the send point, medians throughout. The handler stands at the send point
 * and the dog runs straight out. Nothing here is measured of a retriever but what its handler tells.
 */
export interface StopPoint {
  readonly decideWhenDogAtM: number;
  readonly blowWhenDogAtM: number;
  readonly dogHearsAtM: number;
  readonly dogBrakesAtM: number;
  readonly dogHaltsAtM: number;
  /** From where the dog was when the whistle blew to where it halts. */
  readonly overrunM: number;
  readonly soundDelayS: number;
  /** How long before the send the handler must have decided; 0 mostly. */
  readonly decideBeforeSendS: number;
  /** The dog can't halt so soon: this is the stop of a whistle at the send itself. */
  readonly isTooLate: boolean;
}

const FARTHEST_M = 5_000;

/** The stop that follows a whistle `blowS` after the send. */
function stopOf(blowS: number, at: StopConditions, isTooLate: boolean): StopPoint {
  const hearsS = meetsAtS(blowS, at, speedOfSoundMPerS(at.airC));
  const brakesAt = distanceAtM(hearsS + at.reactionDogS, at);
  const haltsAt = brakesAt + speedAtMPerS(brakesAt, at) ** 2 / (2 * at.brakingMPerS2);
  const blowAt = distanceAtM(blowS, at);
  const decideS = blowS - at.reactionHandlerS;
  return {
    decideWhenDogAtM: distanceAtM(Math.max(0, decideS), at),
    blowWhenDogAtM: blowAt,
    dogHearsAtM: distanceAtM(hearsS, at),
    dogBrakesAtM: brakesAt,
    dogHaltsAtM: haltsAt,
    overrunM: haltsAt - blowAt,
    soundDelayS: hearsS - blowS,
    decideBeforeSendS: Math.max(0, -decideS),
    isTooLate,
  };
}

/**
 * The stop that follows a whistle blown when the dog is `blowAtM` out: sound meets the running dog, which runs on (and may
 * still be getting going) through its reaction, then brakes by `v^2 / 2b`.
 * @throws RangeError for a distance or conditions that cannot be
 */
export function stopAfterWhistle(blowAtM: number, at: StopConditions = usualStopConditions): StopPoint {
  checkStopConditions(at);
  return stopOf(timeAtS(finiteBetween('blowAtM', blowAtM, 0, FARTHEST_M), at), at, false);
}

/**
 * When to blow, and when to decide, for the dog to halt `haltAtM` out: the same steps backwards in closed form. Where even a
 * whistle at the send is too late, the answer is the stop of that whistle, and says so.
 * @throws RangeError for a distance or conditions that cannot be
 */
export function stopAtPlace(haltAtM: number, at: StopConditions = usualStopConditions): StopPoint {
  checkStopConditions(at);
  finiteBetween('haltAtM', haltAtM, 0, FARTHEST_M);
  const hearsS = timeAtS(brakesAtM(haltAtM, at, at.brakingMPerS2), at) - at.reactionDogS;
  if (hearsS < 0) return stopOf(0, at, true);
  const blowS = hearsS - distanceAtM(hearsS, at) / speedOfSoundMPerS(at.airC);
  return blowS < 0 ? stopOf(0, at, true) : stopOf(blowS, at, false);
}

/** Where the dog is when the whistle must sound for it to halt at `haltAtM`; 0 where even that is too late. */
export function blowWhenDogAtM(haltAtM: number, at: StopConditions = usualStopConditions): number {
  return stopAtPlace(haltAtM, at).blowWhenDogAtM;
}

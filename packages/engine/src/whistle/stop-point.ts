/**
 * Where the dog must be when the whistle blows so that it halts at a wanted place: first cut, medians only.
 * Intervals, wind and whether the sound carries come with the whistle's own work.
 */

/** Everything the stop depends on. Defaults: our judgement, 2026; no published braking figure for retrievers. */
export interface StopConditions {
  /** Steady running speed. */
  readonly runSpeedMPerS: number;
  /** The dog's reaction from hearing to braking. */
  readonly reactionDogS: number;
  readonly accelerationMPerS2: number;
  readonly brakingMPerS2: number;
  readonly airC: number;
}

export const usualStopConditions: StopConditions = {
  runSpeedMPerS: 5,
  reactionDogS: 0.35,
  accelerationMPerS2: 5,
  brakingMPerS2: 6,
  airC: 15,
};

/**
 * Speed of sound in dry air, `c = 331.3 sqrt(1 + T/273.15)` m/s (ideal gas; REFERENCES: iso9613-1 uses 343.2 m/s at 20 C).
 * @throws RangeError below -100 C or above 100 C.
 */
export function speedOfSoundMPerS(airC: number): number {
  if (!(airC >= -100 && airC <= 100)) throw new RangeError(`airC: expected -100..100, got ${airC}`);
  return 331.3 * Math.sqrt(1 + airC / 273.15);
}

/** Speed reached `distanceM` after a standing start: `min(v, sqrt(2 a x))`. */
function speedAtMPerS(distanceM: number, at: StopConditions): number {
  return Math.min(at.runSpeedMPerS, Math.sqrt(2 * at.accelerationMPerS2 * Math.max(0, distanceM)));
}

/**
 * How far the dog still runs after the whistle blows while it is `distanceM` out: sound delay and reaction at its
 * speed there, then braking `v^2 / (2 a)`. Takes the speed as steady from then on.
 */
export function overrunM(distanceM: number, at: StopConditions = usualStopConditions): number {
  if (!(distanceM >= 0)) throw new RangeError(`distanceM: expected >= 0, got ${distanceM}`);
  const speed = speedAtMPerS(distanceM, at);
  const delayS = distanceM / speedOfSoundMPerS(at.airC) + at.reactionDogS;
  return speed * delayS + (speed * speed) / (2 * at.brakingMPerS2);
}

/**
 * Where the dog is when the whistle must sound for it to halt at `haltAtM`, both from the send point where the handler
 * stands: the root of `x + overrun(x) = haltAtM` by bisection (the left side grows with x). 0 when even a whistle
 * at the send is too late to halt sooner.
 */
export function blowWhenDogAtM(haltAtM: number, at: StopConditions = usualStopConditions): number {
  if (!(haltAtM >= 0)) throw new RangeError(`haltAtM: expected >= 0, got ${haltAtM}`);
  let low = 0;
  let high = haltAtM;
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (middle + overrunM(middle, at) > haltAtM) high = middle;
    else low = middle;
  }
  return low;
}

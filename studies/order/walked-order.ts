import type { WeightedOrder } from '@sedgeline/engine/session';

/** What can be seen of orders by walking them all; the first and the last send are seen and not judged. */
export interface RunFigures {
  /** Chance of a clean send after exactly none to three stops; `null` where that never comes. */
  readonly hazard: readonly (number | null)[];
  /** Largest less smallest of them. */
  readonly spread: number;
}

/** The hazard of a clean send by walking every order: another way than the engine's, which reckons it from the number alone. */
export function walkedHazard(ways: readonly WeightedOrder[]): RunFigures {
  const asked = [0, 0, 0, 0];
  const clean = [0, 0, 0, 0];
  for (const { order, weight } of ways) {
    let stops = 1;
    for (const isClean of order.slice(1, -1)) {
      if (stops <= 3) {
        asked[stops]! += weight;
        if (isClean) clean[stops]! += weight;
      }
      stops = isClean ? 0 : stops + 1;
    }
  }
  const hazard = asked.map((times, stops) => (times > 0 ? clean[stops]! / times : null));
  const known = hazard.filter((chance) => chance !== null);
  return { hazard, spread: known.length < 2 ? 0 : Math.max(...known) - Math.min(...known) };
}

/** Share right of someone who keeps count and always says the side that has come less, half where both have come as often. */
export function countingAccuracy(ways: readonly WeightedOrder[]): number {
  let right = 0;
  let all = 0;
  for (const { order, weight } of ways) {
    let lead = 0;
    for (const is of order) {
      right += weight * (lead === 0 ? 0.5 : lead > 0 === is ? 0 : 1);
      all += weight;
      lead += is ? 1 : -1;
    }
  }
  return right / all;
}

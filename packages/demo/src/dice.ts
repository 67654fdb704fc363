import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plusFromState } from 'pure-rand/generator/xoroshiro128plus';

/**
 * Seeded chance for the invented kennel. Only +, -, *, / are used on what comes out, all exact in IEEE 754, so that one
 * seed gives the same bytes on every machine (logarithms and sines may differ in the last bit).
 */
export interface Dice {
  /** Uniform in [0, 1). */
  unit(): number;
  /** Uniform in [low, high). */
  between(low: number, high: number): number;
  /** A whole number from low to high, both included. */
  whole(low: number, high: number): number;
  /** True with this probability. */
  chance(probability: number): boolean;
  /** One of a list that is not empty. */
  pick<Item>(items: readonly Item[]): Item;
  /** Mean 0, standard deviation 1, bell-shaped, never beyond 6: twelve uniforms less six (Irwin-Hall). */
  bell(): number;
}

/** Dice of a seed. Throws RangeError unless the seed is a whole number from 0 to 2^53 - 1. */
export function diceOf(seed: number): Dice {
  if (!Number.isSafeInteger(seed) || seed < 0) {
    throw new RangeError(`seed: expected a whole number from 0 on, got ${seed}`);
  }
  const low = (seed % 2 ** 32) | 0;
  const high = Math.floor(seed / 2 ** 32);
  const generator = xoroshiro128plusFromState([-1, ~low, low, high]);
  // Neighbouring seeds differ in few bits; some steps spread the difference over the whole state.
  for (let step = 0; step < 20; step += 1) generator.next();
  const unit = () => uniformFloat64(generator);
  const whole = (low: number, high: number) => low + Math.floor(unit() * (high - low + 1));
  return {
    unit,
    whole,
    between: (low, high) => low + unit() * (high - low),
    chance: (probability) => unit() < probability,
    pick: (items) => {
      const item = items[whole(0, items.length - 1)];
      if (item === undefined) throw new RangeError('items: expected at least one, got none');
      return item;
    },
    bell: () => {
      let sum = -6;
      for (let draw = 0; draw < 12; draw += 1) sum += unit();
      return sum;
    },
  };
}

/** A number to so many places after the point, as a person would write it down. */
export function rounded(value: number, places = 0): number {
  const scale = 10 ** places;
  return Math.round(value * scale) / scale;
}

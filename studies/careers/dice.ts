/** Seeded chance of the invented careers: the studies throw their own dice, so that nothing is shared with what they judge. */
export interface Dice {
  /** In [0, 1), 32 bits. */
  uniform(): number;
  /** Standard normal (Box and Muller's cosine). */
  normal(): number;
  between(low: number, high: number): number;
  /** Whole number in 0..n-1. */
  below(n: number): number;
  chance(p: number): boolean;
  pick<T>(list: readonly T[]): T;
}

/**
 * Dice from a name: the same name, the same throws, on every machine. The generator is sfc32 (Chris Doty-Humphrey,
 * PractRand, public domain), its state filled from the name by FNV-1a and run in for 16 rounds.
 */
export function diceNamed(name: string): Dice {
  let hash = 0x811c9dc5;
  for (let i = 0; i < name.length; i++) hash = Math.imul(hash ^ name.charCodeAt(i), 0x01000193);
  let a = hash | 0;
  let b = Math.imul(hash ^ 0x9e3779b9, 0x85ebca6b);
  let c = Math.imul(hash ^ 0x7f4a7c15, 0xc2b2ae35);
  let count = 1;
  const uniform = () => {
    const sum = (((a + b) | 0) + count++) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (((c << 21) | (c >>> 11)) + sum) | 0;
    return (sum >>> 0) / 2 ** 32;
  };
  for (let round = 0; round < 16; round++) uniform();
  const below = (n: number) => Math.floor(uniform() * n);
  return {
    uniform,
    normal: () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform()),
    between: (low, high) => low + (high - low) * uniform(),
    below,
    chance: (p) => uniform() < p,
    pick<T>(list: readonly T[]): T {
      const one = list[below(list.length)];
      if (one === undefined) throw new RangeError('list: expected one thing or more, got none');
      return one;
    },
  };
}

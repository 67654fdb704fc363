import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** Chance that is handed in: every draw of the engine comes from one of these. */
export interface Random {
  /** In [0, 1), 53 bits. */
  uniform(): number;
  /** Standard normal. */
  normal(): number;
  /** Whole number in 0..n-1. */
  below(n: number): number;
}

/**
 * Random numbers from a seed, the same on every machine: xoroshiro128+ (Blackman2021); normals by the polar
 * method (Marsaglia1964).
 * @throws RangeError unless the seed is a whole number in 0..2^53-1
 */
export function seededRandom(seed: number): Random {
  if (!Number.isSafeInteger(seed) || seed < 0)
    throw new RangeError(`seed: expected a whole number >= 0, got ${seed}`);
  // The generator takes 32 bits: fold the high word in.
  const generator = xoroshiro128plus((seed ^ Math.imul(Math.floor(seed / 2 ** 32), 0x9e3779b9)) | 0);
  const uniform = () => uniformFloat64(generator);
  let kept: number | null = null;
  const normal = () => {
    if (kept !== null) {
      const value = kept;
      kept = null;
      return value;
    }
    for (;;) {
      const u = 2 * uniform() - 1;
      const v = 2 * uniform() - 1;
      const s = u * u + v * v;
      if (s >= 1 || s === 0) continue;
      const scale = Math.sqrt((-2 * Math.log(s)) / s);
      kept = v * scale;
      return u * scale;
    }
  };
  return { uniform, normal, below: (n) => Math.floor(uniform() * n) };
}

import type { Tally } from './tally.ts';

export interface Slope {
  readonly slope: number;
  readonly intercept: number;
  /** Standard error of the slope with kennels as the units: legs of one kennel hang together. */
  readonly slopeSe: number;
}

/**
 * Calibration slope (Cox1958): logistic regression `logit P(good) = intercept + slope x stated logit` by Newton's method;
 * standard error by the sandwich over kennels, `A^-1 (sum_k u_k u_k') A^-1`. `null` with fewer than 100 legs or no maximum.
 */
export function calibrationSlope(kennels: readonly Tally[]): Slope | null {
  if (kennels.reduce((sum, { legs }) => sum + legs, 0) < 100) return null;
  let [a, b] = [0, 1];
  for (let step = 0; step < 50; step++) {
    const { u, v, aa, ab, bb } = totalOf(kennels.map((kennel) => momentsOf(kennel, a, b)));
    const det = aa * bb - ab * ab;
    if (!(det > 0)) return null;
    const [da, db] = [(bb * u - ab * v) / det, (aa * v - ab * u) / det];
    a += da;
    b += db;
    if (Math.abs(da) + Math.abs(db) > 1e-9) continue;
    const spread = kennels.reduce((sum, kennel) => {
      const own = momentsOf(kennel, a, b);
      return sum + ((aa * own.v - ab * own.u) / det) ** 2;
    }, 0);
    return { slope: b, intercept: a, slopeSe: Math.sqrt(spread) };
  }
  return null;
}

/** Slope and curvature of the log likelihood of one kennel. */
function momentsOf({ logits, came }: Tally, a: number, b: number) {
  const sums = { u: 0, v: 0, aa: 0, ab: 0, bb: 0 };
  logits.forEach((x, n) => {
    const p = 1 / (1 + Math.exp(-(a + b * x)));
    const away = (came[n] ? 1 : 0) - p;
    const w = p * (1 - p);
    sums.u += away;
    sums.v += away * x;
    sums.aa += w;
    sums.ab += w * x;
    sums.bb += w * x * x;
  });
  return sums;
}

function totalOf(parts: readonly ReturnType<typeof momentsOf>[]) {
  const sum = { u: 0, v: 0, aa: 0, ab: 0, bb: 0 };
  for (const part of parts) for (const key of ['u', 'v', 'aa', 'ab', 'bb'] as const) sum[key] += part[key];
  return sum;
}

import { normalQuantile } from './normal.ts';

/** Lower and upper end, in the units of what is estimated. */
export type Ends = readonly [number, number];

function checkCount(x: number, n: number, confidence: number): void {
  if (!(n > 0)) throw new RangeError(`n: expected > 0, got ${n}`);
  if (!(x >= 0 && x <= n)) throw new RangeError(`x: expected 0..${n}, got ${x}`);
  if (!(confidence > 0 && confidence < 1))
    throw new RangeError(`confidence: expected 0..1, got ${confidence}`);
}

/**
 * Wilson's score interval for a share of x out of n (Wilson1927), in [0, 1].
 * @throws RangeError if n is not positive, x not within 0..n, or confidence not within 0..1
 */
export function wilsonInterval(x: number, n: number, confidence = 0.95): Ends {
  checkCount(x, n, confidence);
  const z = normalQuantile(0.5 + confidence / 2);
  const share = x / n;
  const centre = share + (z * z) / (2 * n);
  const half = z * Math.sqrt((share * (1 - share)) / n + (z * z) / (4 * n * n));
  const scale = 1 + (z * z) / n;
  return [x === 0 ? 0 : (centre - half) / scale, x === n ? 1 : (centre + half) / scale];
}

/**
 * Newcombe's interval for a difference of two shares, `x1/n1 - x2/n2` (Newcombe1998, method 10): the two
 * Wilson intervals joined by squares. In [-1, 1].
 * @throws RangeError as `wilsonInterval`
 */
export function newcombeInterval(x1: number, n1: number, x2: number, n2: number, confidence = 0.95): Ends {
  const [low1, high1] = wilsonInterval(x1, n1, confidence);
  const [low2, high2] = wilsonInterval(x2, n2, confidence);
  const p1 = x1 / n1;
  const p2 = x2 / n2;
  const difference = p1 - p2;
  return [difference - Math.hypot(p1 - low1, high2 - p2), difference + Math.hypot(high1 - p1, p2 - low2)];
}

/**
 * How late a thumb is beside its usual: mostly near it, now and then much later, seldom sooner (our judgement, 2026; the study
 * joins sessions whose thumbs keep another law).
 */
const CORE = 0.86;
const LATE = { share: 0.11, meanS: 30 } as const;
const SOON = { share: 0.03, meanS: 10 } as const;
const SQRT_2PI = Math.sqrt(2 * Math.PI);
/** Beyond so many spreads the middle of the law is under 1e-17 and lost beside its tails. */
const FAR = 9;

/**
 * The law of lateness along calls: writes to `into`, from `at`, the density (per second) of a tap that belongs to call `first`, `first + 1` ... up to
 * `last` (left out), of calls at `startsS` in order of time, where the call is expected at `expectedS`.
 * `CORE N(rest; 0, spreadS)` and on the late side `0.11 exp(-rest / 30) / 30`, on the other `0.03 exp(rest / 10) / 10`. The
 * tails are carried from call to call, since an exponential of a sum is a product.
 */
export function createLateness(startsS: Float64Array) {
  const gap = (n: number) => (n === 0 ? 0 : startsS[n]! - startsS[n - 1]!);
  /** What a tail gains and loses from the call before to this one. */
  const later = startsS.map((_, n) => Math.exp(gap(n) / LATE.meanS));
  const sooner = startsS.map((_, n) => Math.exp(-gap(n) / SOON.meanS));
  return (
    into: Float64Array,
    at: number,
    first: number,
    last: number,
    expectedS: number,
    spreadS: number,
  ) => {
    const height = CORE / (SQRT_2PI * spreadS);
    let isLate = true;
    let tail = 0;
    for (let j = first; j < last; j++) {
      const restS = expectedS - startsS[j]!;
      if (j === first || restS > 0 !== isLate) {
        isLate = restS > 0;
        const { share, meanS } = isLate ? LATE : SOON;
        tail = (share / meanS) * Math.exp(-Math.abs(restS) / meanS);
      } else tail *= isLate ? later[j]! : sooner[j]!;
      const z = restS / spreadS;
      into[at + j - first] = tail + (z < FAR && z > -FAR ? height * Math.exp(-0.5 * z * z) : 0);
    }
  };
}

/** Call times over which two taps of one call are weighed, seconds before and after the first: beyond, the laws' product is next to nothing. */
const OVERLAP = { beforeS: 250, afterS: 100, stepS: 0.5 } as const;

/**
 * How likely two taps are to come so far apart, if each is late by this law of its own and both are of one call: the integral over the
 * call's time of the product of the two laws (per second), by the rule of rectangles. `apartS`: where the call is expected by the second tap, less where by
 * the first. For spreads of a second and more.
 */
export function createTapsOverlap() {
  const { beforeS, afterS, stepS } = OVERLAP;
  const timesS = Float64Array.from({ length: (beforeS + afterS) / stepS + 1 }, (_, n) => n * stepS - beforeS);
  const along = createLateness(timesS);
  const [first, second] = [new Float64Array(timesS.length), new Float64Array(timesS.length)];
  return (apartS: number, firstSpreadS: number, secondSpreadS: number): number => {
    along(first, 0, 0, timesS.length, 0, firstSpreadS);
    along(second, 0, 0, timesS.length, apartS, secondSpreadS);
    return stepS * first.reduce((sum, one, n) => sum + one * second[n]!, 0);
  };
}

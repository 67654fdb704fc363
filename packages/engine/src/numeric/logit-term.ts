import { logistic, logisticSlope, logLogistic } from './logistic.ts';

/** What one observation says about its log-odds `eta`: its log-likelihood, a concave function of it. */
export interface LogitTerm {
  logLik(eta: number): number;
  /** The same with its first derivative, and minus the second (never negative). */
  turn(eta: number): { readonly logLik: number; readonly slope: number; readonly curvature: number };
}

/**
 * y successes out of n, `y ~ Bin(n, s(eta))`, without `ln C(n, y)`.
 * @throws RangeError if y is not within 0..n
 */
export function binomialTerm(y: number, n: number): LogitTerm {
  if (!(y >= 0 && y <= n)) throw new RangeError(`y: expected 0..${n}, got ${y}`);
  return {
    logLik: (eta) => y * logLogistic(eta) + (n - y) * logLogistic(-eta),
    turn: (eta) => {
      // One exponential for all three; no difference of near equals, so that a runaway is not taken for rest.
      const e = Math.exp(-Math.abs(eta));
      const small = e / (1 + e);
      const large = 1 / (1 + e);
      const [up, down] = eta >= 0 ? [large, small] : [small, large];
      const logLarge = -Math.log1p(e);
      const logSmall = logLarge - Math.abs(eta);
      return {
        logLik: eta >= 0 ? y * logLarge + (n - y) * logSmall : y * logSmall + (n - y) * logLarge,
        slope: y * down - (n - y) * up,
        curvature: n * small * large,
      };
    },
  };
}

/**
 * One grade of a cumulative logit with given cuts (McCullagh1980): `P(Y <= k) = s(cut_k - eta)`, grades
 * 0..cuts.length, a larger eta means higher grades.
 * @throws RangeError if the grade is none of them or the cuts do not rise
 */
export function ordinalTerm(grade: number, cuts: ArrayLike<number>): LogitTerm {
  const k = cuts.length;
  if (!Number.isInteger(grade) || grade < 0 || grade > k)
    throw new RangeError(`grade: expected 0..${k}, got ${grade}`);
  for (let c = 1; c < k; c++)
    if (!(cuts[c]! > cuts[c - 1]!)) throw new RangeError(`cuts: expected to rise, got ${cuts[c]} at ${c}`);
  const top = grade < k ? cuts[grade]! : Infinity;
  const floor = grade > 0 ? cuts[grade - 1]! : -Infinity;
  // ln(s(a) - s(b)) = ln s(a) + ln s(-b) + ln(1 - e^(b - a)), a and b the ends less eta: no cancellation at any eta.
  const width = Math.log(-Math.expm1(floor - top));
  const logLik = (eta: number) => {
    if (top === Infinity) return logLogistic(eta - floor);
    if (floor === -Infinity) return logLogistic(top - eta);
    return logLogistic(top - eta) + logLogistic(eta - floor) + width;
  };
  return {
    logLik,
    turn: (eta) => ({
      logLik: logLik(eta),
      slope: logistic(floor - eta) - logistic(eta - top),
      curvature: logisticSlope(top - eta) + logisticSlope(floor - eta),
    }),
  };
}

import { logistic } from '../numeric/logistic.ts';
import { ruleForLogistic } from '../numeric/logistic-normal.ts';

/** A chance whose log-odds are normal. */
export interface LogitNormal {
  readonly mean: number;
  readonly sd: number;
}

/** `E s` and `E s^2` of s(X), X ~ N(mean, sd^2), with their slopes in mean and sd. */
function momentsAt(mean: number, sd: number) {
  const { nodes, weights } = ruleForLogistic(sd * sd);
  const at = { first: 0, second: 0, firstByMean: 0, firstBySd: 0, secondByMean: 0, secondBySd: 0 };
  for (let k = 0; k < nodes.length; k++) {
    const z = nodes[k]!;
    const s = logistic(mean + sd * z);
    const p = weights[k]! * s;
    const slope = p * (1 - s);
    at.first += p;
    at.second += p * s;
    at.firstByMean += slope;
    at.firstBySd += slope * z;
    at.secondByMean += 2 * slope * s;
    at.secondBySd += 2 * slope * s * z;
  }
  return at;
}

/** `E s(X)^2` for X ~ N(mean, variance). */
export function meanSquareLogistic(mean: number, variance: number): number {
  return momentsAt(mean, Math.sqrt(variance)).second;
}

const MOST_STEPS = 30;
/** Residual of both moments at rest. */
const REST = 1e-9;

/**
 * The logit-normal with the given first and second moment, by Newton in two dimensions from `start`; `null`
 * where it does not come to rest (moments at the very ends).
 */
export function fitLogitNormal(first: number, second: number, start: LogitNormal): LogitNormal | null {
  let { mean, sd } = start;
  for (let step = 0; step < MOST_STEPS; step++) {
    const at = momentsAt(mean, sd);
    const off1 = first - at.first;
    const off2 = second - at.second;
    if (Math.abs(off1) < REST && Math.abs(off2) < REST) return { mean, sd };
    const det = at.firstByMean * at.secondBySd - at.firstBySd * at.secondByMean;
    const byMean = (off1 * at.secondBySd - off2 * at.firstBySd) / det;
    const bySd = (off2 * at.firstByMean - off1 * at.secondByMean) / det;
    if (!Number.isFinite(byMean) || !Number.isFinite(bySd)) return null;
    mean += Math.max(-1, Math.min(1, byMean));
    sd = Math.min(2 * sd, Math.max(sd / 2, sd + bySd));
    if (sd > 5) return null;
  }
  return null;
}

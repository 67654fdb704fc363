import { describe, expect, it } from 'vitest';
import maps from '../../reference/logistic-map.json' with { type: 'json' };
import { gaussHermite } from './gauss-hermite.ts';
import { importanceSample } from './importance-sample.ts';
import { logLogistic } from './logistic.ts';
import { type LogisticRow, logisticMap } from './logistic-map.ts';
import { posteriorQuadrature } from './posterior-quadrature.ts';
import { seededRandom } from './random.ts';
import { effectiveSize, sampleError, sampleMoments } from './weighted-sample.ts';

/** `ln` likelihood and prior, constants in, on its own: not through the fit that it checks. */
function logJointOf(rows: readonly LogisticRow[], priorMean: readonly number[], priorSd: readonly number[]) {
  const constant = priorSd.reduce((sum, sd) => sum - Math.log(sd) - 0.5 * Math.log(2 * Math.PI), 0);
  return (b: Float64Array) => {
    let sum = constant;
    for (let j = 0; j < b.length; j++) sum -= 0.5 * ((b[j]! - priorMean[j]!) / priorSd[j]!) ** 2;
    for (const { x, y, n } of rows) {
      let eta = 0;
      for (let j = 0; j < b.length; j++) eta += x[j]! * b[j]!;
      sum += y * logLogistic(eta) + (n - y) * logLogistic(-eta);
    }
    return sum;
  };
}

describe('birth weights, ten coefficients, by importance sampling', () => {
  const { birthWeight } = maps;
  const want = birthWeight.tenImportance;
  const rows: LogisticRow[] = birthWeight.rows.map(([low, ...x]) => ({ x: [1, ...x], y: low!, n: 1 }));
  const logJoint = logJointOf(rows, Array(10).fill(0), birthWeight.ten.priorSd);
  const fit = logisticMap(rows, Array(10).fill(0), birthWeight.ten.priorSd)!;
  const sample = importanceSample(logJoint, fit, 20_000, seededRandom(1989));
  const size = effectiveSize(sample);
  const { mean, sd } = sampleMoments(sample);
  it('the draws are worth most of their number', () => {
    // Theirs, 2,000,000 draws of the like, were worth 76 %.
    expect(size).toBeGreaterThan(10_000);
    expect(size).toBeLessThan(20_000);
  });
  it.each(birthWeight.ten.columns.map((name, j) => [name, j] as const))('%s', (_, j) => {
    const error = Math.hypot(
      want.meanError[j]!,
      sampleError(sample, (b) => b[j]!),
    );
    expect(Math.abs(mean[j]! - want.mean[j]!)).toBeLessThan(4 * error);
    // An sd of draws of a near-normal has an error of sd/sqrt(2 size); half as much again for the t's weights.
    expect(Math.abs(sd[j]! - want.sd[j]!)).toBeLessThan((4 * 1.5 * want.sd[j]!) / Math.sqrt(2 * size));
  });
  it('evidence', () => {
    // The error of the mean weight: sqrt(draws/size - 1)/sqrt(draws).
    const own = Math.sqrt((20_000 / size - 1) / 20_000);
    const error = Math.hypot(own, want.logEvidenceError);
    expect(Math.abs(sample.logEvidence - want.logEvidence)).toBeLessThan(4 * error);
    // And Laplace's is 0.13 away: not to be mistaken for it.
    expect(Math.abs(fit.logEvidence - want.logEvidence)).toBeGreaterThan(0.1);
  });
});

describe('bioassay, exact by quadrature', () => {
  const { bioassay } = maps;
  const rows: LogisticRow[] = bioassay.dose.map((dose, i) => ({
    x: [1, dose],
    y: bioassay.y[i]!,
    n: bioassay.n[i]!,
  }));
  const logChoose = (n: number, y: number) =>
    Array.from({ length: y }, (_, k) => Math.log((n - k) / (k + 1))).reduce((a, b) => a + b, 0);
  const constant = bioassay.y.reduce((sum, y, i) => sum + logChoose(bioassay.n[i]!, y), 0);
  it.each(bioassay.cases)('$name', ({ priorMean, priorSd, exact }) => {
    const fit = logisticMap(rows, priorMean, priorSd)!;
    // A long tail to the right (Laplace's slope is 0.6 of an sd low): it takes 64 nodes.
    const posterior = posteriorQuadrature(logJointOf(rows, priorMean, priorSd), fit, gaussHermite(64));
    const { mean, sd } = sampleMoments(posterior);
    for (let j = 0; j < 2; j++) {
      expect(Math.abs(mean[j]! - exact.mean[j]!)).toBeLessThan(1e-4);
      expect(Math.abs(sd[j]! - exact.sd[j]!)).toBeLessThan(1e-4);
    }
    expect(Math.abs(posterior.logEvidence + constant - exact.log_evidence)).toBeLessThan(1e-4);
  });
});

it('names what is wrong', () => {
  const flat = { mode: new Float64Array(2), cov: new Float64Array(4) };
  const unit = { mode: new Float64Array(8), cov: new Float64Array(64).map((_, i) => Number(i % 9 === 0)) };
  expect(() => importanceSample(() => 0, flat, 10, seededRandom(1))).toThrow(/^cov: /);
  expect(() => importanceSample(() => 0, unit, 0, seededRandom(1))).toThrow(/^draws: /);
  expect(() => posteriorQuadrature(() => 0, flat, gaussHermite(3))).toThrow(/^cov: /);
  expect(() => posteriorQuadrature(() => 0, unit, gaussHermite(11))).toThrow(/^nodes: /);
});

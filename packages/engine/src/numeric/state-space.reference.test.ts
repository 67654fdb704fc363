import { describe, expect, it } from 'vitest';
import walks from '../../reference/binomial-walk.json' with { type: 'json' };
import nile from '../../reference/nile.json' with { type: 'json' };
import { jointModeWalk, sequentialModeWalk } from './binomial-walk.ts';
import { filterLocalLevel, smoothLevel } from './local-level.ts';
import { maximise } from './maximise.ts';

/** Largest difference, relative to `scale` of the wanted value. Tolerances' reasons: the reference files. */
function worst(got: ArrayLike<number>, want: readonly number[], relative = false): number {
  expect(got.length).toBe(want.length);
  return Math.max(...want.map((w, i) => Math.abs(got[i]! - w) / (relative ? Math.abs(w) : 1)));
}

describe('local level on the Nile', () => {
  const start = { mean: nile.startMean, variance: nile.startVariance };
  const filter = filterLocalLevel(nile.y, start, nile.noise, nile.walk);
  it('filters', () => {
    expect(worst(filter.filtered.mean, nile.filteredMean, true)).toBeLessThan(1e-5);
    expect(worst(filter.filtered.variance, nile.filteredVariance, true)).toBeLessThan(1e-5);
    expect(Math.abs(filter.logLik - nile.logLik)).toBeLessThan(1e-5);
  });
  it('smooths', () => {
    const smooth = smoothLevel(filter);
    expect(worst(smooth.mean, nile.smoothedMean, true)).toBeLessThan(1e-5);
    expect(worst(smooth.variance, nile.smoothedVariance)).toBeLessThan(1e-3);
  });
});

describe.each(walks.cases)('binomial random walk: $name', ({ y, n, m0, P0, q, jointMode, sequential }) => {
  const trials = y.map((value, t) => ({ y: value, n: n[t]! }));
  it('joint mode', () => {
    const path = jointModeWalk(trials, { mean: m0, variance: P0 }, q);
    expect(worst(path.mean, jointMode.mode)).toBeLessThan(1e-6);
    expect(worst(path.variance, jointMode.variance)).toBeLessThan(1e-6);
    expect(Math.abs(path.logJoint - jointMode.logJoint)).toBeLessThan(1e-6);
    expect(Math.abs(path.logEvidence - jointMode.logEvidence)).toBeLessThan(1e-6);
  });
  it('sequential mode filter and backward pass', () => {
    const path = sequentialModeWalk(trials, { mean: m0, variance: P0 }, q);
    expect(worst(path.filtered.mean, sequential.filteredMean)).toBeLessThan(1e-6);
    expect(worst(path.filtered.variance, sequential.filteredVariance)).toBeLessThan(1e-6);
    expect(worst(path.smoothed.mean, sequential.smoothedMean)).toBeLessThan(1e-6);
    expect(worst(path.smoothed.variance, sequential.smoothedVariance)).toBeLessThan(1e-6);
    const sum = path.logPredictive.reduce((total, value) => total + value, 0);
    expect(Math.abs(sum - sequential.sumLogPredictive)).toBeLessThan(1e-6);
  });
});

it('the walk variance of the highest evidence, 30 dogs', () => {
  const { y, n, m0, P0 } = walks.cases[0]!;
  const trials = y.map((value, t) => ({ y: value, n: n[t]! }));
  const evidence = ([logQ]: Float64Array) =>
    jointModeWalk(trials, { mean: m0, variance: P0 }, Math.exp(logQ!)).logEvidence;
  const { end, x, value } = maximise(evidence, [Math.log(0.05)], { steps: 200, tolerance: 1e-10 });
  expect(end).toBe('converged');
  expect(Math.abs(Math.exp(x[0]!) - walks.evidenceMaximum.q)).toBeLessThan(1e-4);
  expect(Math.abs(value - walks.evidenceMaximum.logEvidence)).toBeLessThan(1e-4);
});

import { describe, expect, it } from 'vitest';
import twoState from '../../reference/two-state-walk.json' with { type: 'json' };
import { type HierarchicalRow, hierarchicalMode } from './hierarchical-mode.ts';
import { binomialTerm } from './logit-term.ts';
import { sequentialModeVectorWalk, type VectorState } from './vector-walk.ts';

/** Provenance, status and the reason of the tolerance stand in the reference file: 1e-6, like with like. */
const { x, y, m0, P0, q, sequential, smoothed, joint } = twoState;
const START: VectorState = { mean: Float64Array.from(m0), cov: Float64Array.from([P0[0]!, 0, 0, P0[1]!]) };

interface Path {
  readonly mean: readonly (readonly number[])[];
  readonly cov: readonly (readonly number[])[];
}

function expectPath(got: readonly VectorState[], want: Path): void {
  expect(got.length).toBe(want.mean.length);
  got.forEach(({ mean, cov }, t) => {
    for (let i = 0; i < 2; i++) expect(Math.abs(mean[i]! - want.mean[t]![i]!)).toBeLessThan(1e-6);
    [cov[0]!, cov[1]!, cov[3]!].forEach((value, k) => {
      expect(Math.abs(value - want.cov[t]![k]!)).toBeLessThan(1e-6);
    });
  });
}

describe('a level and the effect of a cue, both walking', () => {
  const readings = y.map((value, t) => ({ term: binomialTerm(value, 1), h: [1, x[t]!] }));
  it('sequential mode filter and backward pass', () => {
    const path = sequentialModeVectorWalk(readings, START, q);
    expectPath(path.filtered, sequential);
    expectPath(path.smoothed, smoothed);
  });

  it('all states at their joint mode, as a hierarchical model of the steps they take', () => {
    // s_t = m0 + the sum of its steps so far; the steps are independent, and the change of variables has volume 1.
    const rows: HierarchicalRow[] = y.map((value, t) => {
      const steps = Array.from({ length: t + 1 }, (_, step) => step);
      return {
        term: binomialTerm(value, 1),
        offset: m0[0]! + x[t]! * m0[1]!,
        group: 0,
        z: [],
        at: steps.flatMap((step) => [2 * step, 2 * step + 1]),
        x: steps.flatMap(() => [1, x[t]!]),
      };
    });
    const commonSd = y.flatMap((_, t) => (t === 0 ? P0 : q).map(Math.sqrt));
    const fit = hierarchicalMode({ rows, groups: 1, groupSd: [], commonSd })!;
    const n = commonSd.length;
    const states = y.map((_, t): VectorState => {
      const mean = Float64Array.from(m0);
      const cov = new Float64Array(4);
      for (let a = 0; a <= t; a++)
        for (let i = 0; i < 2; i++) {
          mean[i]! += fit.common[2 * a + i]!;
          for (let b = 0; b <= t; b++)
            for (let j = 0; j < 2; j++) cov[2 * i + j]! += fit.commonCov[(2 * a + i) * n + 2 * b + j]!;
        }
      return { mean, cov };
    });
    expectPath(states, joint);
    expect(Math.abs(fit.logJoint - joint.logJoint)).toBeLessThan(1e-6);
    expect(Math.abs(fit.logEvidence - joint.logEvidence)).toBeLessThan(1e-6);
  });

  it('a step without observation only walks', () => {
    const { filtered } = sequentialModeVectorWalk([readings[0]!, null], START, q);
    expect(filtered[1]!.mean).toEqual(filtered[0]!.mean);
    expect(filtered[1]!.cov[0]).toBe(filtered[0]!.cov[0]! + q[0]!);
    expect(filtered[1]!.cov[3]).toBe(filtered[0]!.cov[3]! + q[1]!);
  });

  it('names what is wrong', () => {
    expect(() => sequentialModeVectorWalk([], START, [1])).toThrow(/^walk: /);
    expect(() => sequentialModeVectorWalk([], START, [1, 0])).toThrow(/^walk: /);
  });
});

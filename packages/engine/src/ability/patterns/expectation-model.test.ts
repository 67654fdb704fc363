import { describe, expect, it } from 'vitest';
import { logistic } from '../../numeric/index.ts';
import { expectationAt, expectationPosterior, expectationUnder } from './expectation-model.ts';

const sends = (count: number, stoppedShare: number, expecting: boolean) =>
  Array.from({ length: count }, () => ({ stoppedShare, expecting }));

describe('the model of expectation', () => {
  it('with no sends is its prior: at no stops the chance is that of a ~ N(-3.5, 1), by fine midpoints', () => {
    let mean = 0;
    let total = 0;
    for (let z = -3.995; z < 4; z += 0.01) {
      const weight = Math.exp(-0.5 * z * z);
      mean += weight * logistic(-3.5 + z);
      total += weight;
    }
    const found = expectationAt(expectationPosterior([]), 1);
    // 0.001: the grid ends at 3 sds and steps by a quarter.
    expect(Math.abs(found.mean - mean / total)).toBeLessThan(0.001);
    expect(expectationPosterior([]).logEvidence).toBeCloseTo(0, 12);
  });

  it('has weights that add up to 1, and an evidence that multiplies: P(A) P(B | A) = P(A and B)', () => {
    const first = sends(3, 0.7, true);
    const both = [...first, ...sends(1, 0.2, true)];
    const posterior = expectationPosterior(first);
    expect(posterior.nodes.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 12);
    const next = expectationAt(posterior, 1 - 0.2).mean;
    expect(expectationPosterior(both).logEvidence).toBeCloseTo(posterior.logEvidence + Math.log(next), 10);
  });

  it('comes to the dog’s own share with a long record (to 0.03: one sd of 400 sends at 1 in 4 is 0.022)', () => {
    const record = [...sends(100, 2 / 3, true), ...sends(300, 2 / 3, false)];
    const found = expectationAt(expectationPosterior(record), 1 / 3);
    expect(Math.abs(found.mean - 0.25)).toBeLessThan(0.03);
    expect(found.sd).toBeLessThan(0.03);
    expect(expectationUnder(expectationPosterior(record), 1 / 3, 0.1)).toBeLessThan(0.001);
  });

  it('falls as more is run clean, and refuses a share that is none', () => {
    const posterior = expectationPosterior(sends(5, 0.5, true));
    let last = 1;
    for (const share of [0, 0.25, 0.5, 0.75, 1]) {
      const { mean } = expectationAt(posterior, share);
      expect(mean).toBeLessThan(last);
      last = mean;
    }
    expect(() => expectationAt(posterior, 1.2)).toThrow(RangeError);
  });
});

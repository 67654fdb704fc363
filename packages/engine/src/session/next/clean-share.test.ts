import { describe, expect, it } from 'vitest';
import { type CleanSend, nextStoppedShare } from '../../ability/index.ts';
import { wantedCleanShare } from './clean-share.ts';

const sends = (count: number, stoppedShare: number, expecting: boolean): CleanSend[] =>
  Array.from({ length: count }, () => ({ stoppedShare, expecting }));

describe('the share of sends that are run straight through', () => {
  it('halves the memory of a stop in four sends (the half-life of the design)', () => {
    let share = nextStoppedShare(0, true);
    expect(share).toBeCloseTo(1 - 0.5 ** 0.25, 12);
    for (let n = 0; n < 4; n++) share = nextStoppedShare(share, false);
    expect(share).toBeCloseTo((1 - 0.5 ** 0.25) / 2, 12);
  });

  it('starts a new dog near 1 in 3 (common practice, no source; "near": 0.2 to 0.4)', () => {
    expect(wantedCleanShare([])).toBeGreaterThanOrEqual(0.2);
    expect(wantedCleanShare([])).toBeLessThanOrEqual(0.4);
  });

  it('asks for more clean sends of a dog that expects, fewer of one that does not, within 1 in 5 and 3 in 5', () => {
    const free = wantedCleanShare(sends(30, 0.7, false));
    const expecting = wantedCleanShare(sends(30, 0.7, true));
    expect(free).toBe(0.2);
    expect(expecting).toBe(0.6);
    expect(wantedCleanShare(sends(3, 0.7, true))).toBeGreaterThan(wantedCleanShare([]));
    expect(wantedCleanShare(sends(3, 0.7, false))).toBeLessThanOrEqual(wantedCleanShare([]));
  });

  it('grows with every sign of expectation', () => {
    const shares = [0, 1, 2, 3, 4].map((signs) =>
      wantedCleanShare([...sends(signs, 0.6, true), ...sends(8 - signs, 0.6, false)]),
    );
    for (let n = 1; n < shares.length; n++) expect(shares[n]!).toBeGreaterThanOrEqual(shares[n - 1]!);
    expect(shares[4]!).toBeGreaterThan(shares[0]!);
  });
});

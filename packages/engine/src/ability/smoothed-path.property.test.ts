import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MS_PER_DAY } from '../quantity/time.ts';
import { shippedPriors } from './priors.ts';
import { smoothedPath } from './smoothed-path.ts';

/** Any path a filter, or a caller with a bug in its times, could hand in: same moments, lay-offs, sds that grow. */
const LEVELS = fc.array(
  fc.record({
    atMs: fc.integer({ min: 0, max: 900 }).map((days) => days * MS_PER_DAY),
    mean: fc.double({ min: -20, max: 20, noNaN: true }),
    sd: fc.double({ min: 0, max: 4, noNaN: true }),
    shift: fc.double({ min: -1, max: 1, noNaN: true }),
  }),
  { maxLength: 40 },
);
const STILL = {
  ...shippedPriors,
  abilityWalkPerDay: 0,
  weightWalkPerDay: 0,
  generalWalkPerDay: 0,
  gainPerSession: 0,
};

describe('laws of the backward pass', () => {
  it('one finite estimate a session; the last is the filtered one; no sd grows', () => {
    fc.assert(
      fc.property(LEVELS, fc.double({ min: 0, max: 30, noNaN: true }), (levels, squares) => {
        const path = smoothedPath(levels, shippedPriors, squares);
        expect(path).toHaveLength(levels.length);
        path.forEach(({ mean, sd }, t) => {
          expect(Number.isFinite(mean)).toBe(true);
          expect(sd).toBeGreaterThanOrEqual(0);
          expect(sd).toBeLessThanOrEqual(levels[t]!.sd);
        });
        const last = levels.at(-1);
        if (last !== undefined) {
          expect(path.at(-1)!.mean).toBe(last.mean);
          // A square and its root: one rounding each.
          expect(path.at(-1)!.sd).toBeCloseTo(last.sd, 12);
        }
      }),
    );
  });

  it('with no gain and no walk all sessions come to the last, which knows most', () => {
    const surer = LEVELS.map((levels) => {
      const sds = levels.map(({ sd }) => sd + 0.01).sort((a, b) => b - a);
      return levels.map((level, t) => ({ ...level, sd: sds[t]!, shift: 0 }));
    });
    fc.assert(
      fc.property(surer, (levels) => {
        for (const { mean, sd } of smoothedPath(levels, STILL)) {
          expect(mean).toBeCloseTo(levels.at(-1)!.mean, 9);
          expect(sd).toBeCloseTo(levels.at(-1)!.sd, 6);
        }
      }),
    );
  });

  it('a longer lay-off ties a session less to what came after it, up to 60 days', () => {
    const after = (days: number) =>
      smoothedPath(
        [
          { atMs: 0, mean: 0, sd: 0.4 },
          { atMs: days * MS_PER_DAY, mean: 2, sd: 0.2 },
        ],
        shippedPriors,
      )[0]!.mean;
    expect(after(0)).toBeGreaterThan(after(10));
    expect(after(10)).toBeGreaterThan(after(60));
    expect(after(60)).toBe(after(600));
  });

  it('one session, and none', () => {
    expect(smoothedPath([], shippedPriors)).toEqual([]);
    expect(smoothedPath([{ atMs: 5, mean: 1, sd: 0.5 }], shippedPriors)).toEqual([{ mean: 1, sd: 0.5 }]);
  });

  it.each([
    ['atMs', { atMs: Number.NaN, mean: 0, sd: 1 }],
    ['mean', { atMs: 0, mean: Infinity, sd: 1 }],
    ['sd', { atMs: 0, mean: 0, sd: -1 }],
    ['shift', { atMs: 0, mean: 0, sd: 1, shift: Number.NaN }],
  ])('%s that is no number is a bug of the caller', (field, level) => {
    expect(() => smoothedPath([level], shippedPriors)).toThrow(`${field}: expected`);
  });
});

import { describe, expect, it } from 'vitest';
import walks from '../../reference/binomial-walk.json' with { type: 'json' };
import nile from '../../reference/nile.json' with { type: 'json' };
import { MS_PER_DAY } from '../quantity/time.ts';
import { type LevelWalk, smoothedPath } from './smoothed-path.ts';

/** A walk of `q` from day to day, and nothing else. */
const daily = (q: number): LevelWalk => ({
  abilityWalkPerDay: q,
  generalWalkPerDay: 0,
  weightWalkPerDay: 0,
  walkDaysAtMost: 60,
  gainPerSession: 0,
  gainFading: 1,
});
const levels = (mean: readonly number[], variance: readonly number[]) =>
  mean.map((m, day) => ({ atMs: day * MS_PER_DAY, mean: m, sd: Math.sqrt(variance[day]!) }));

describe('the Nile, one session a year (Durbin2012; R 4.2.2, see the reference file)', () => {
  const path = smoothedPath(levels(nile.filteredMean, nile.filteredVariance), daily(nile.walk));

  // Tolerances of the reference file: 1e-5 relative for the level, 1e-3 of a variance of 2,300 to 4,000.
  it('gives the published smoothed levels and variances', () => {
    expect(path).toHaveLength(nile.smoothedMean.length);
    path.forEach(({ mean, sd }, year) => {
      expect(Math.abs(mean / nile.smoothedMean[year]! - 1)).toBeLessThan(1e-5);
      expect(Math.abs(sd ** 2 - nile.smoothedVariance[year]!)).toBeLessThan(1e-3);
    });
  });

  it('and those of a level with a known gain and shift, which move it and teach nothing', () => {
    const gain = { gainPerSession: 40, gainFading: 0.9 };
    let moved = 0;
    const drifting = levels(nile.filteredMean, nile.filteredVariance).map((level, year) => {
      const shift = year === 0 ? 0 : -3 * year;
      if (year > 0) moved += gain.gainPerSession * gain.gainFading ** year + shift;
      return { level: { ...level, mean: level.mean + moved, shift }, moved };
    });
    const drifted = smoothedPath(
      drifting.map(({ level }) => level),
      { ...daily(nile.walk), ...gain },
    );
    // Rounding only: a level of up to 15,000 in doubles, a hundred steps.
    drifted.forEach(({ mean, sd }, year) => {
      expect(Math.abs(mean - drifting[year]!.moved - path[year]!.mean)).toBeLessThan(1e-8);
      expect(Math.abs(sd - path[year]!.sd)).toBeLessThan(1e-8);
    });
  });
});

describe.each(walks.cases)('binomial walk, filtered leg by leg: $name', ({ q, sequential }) => {
  it('gives the backward pass of the reference', () => {
    const path = smoothedPath(levels(sequential.filteredMean, sequential.filteredVariance), daily(q));
    // 1e-6, like method with like: the reference file's own tolerance.
    path.forEach(({ mean, sd }, t) => {
      expect(Math.abs(mean - sequential.smoothedMean[t]!)).toBeLessThan(1e-6);
      expect(Math.abs(sd ** 2 - sequential.smoothedVariance[t]!)).toBeLessThan(1e-6);
    });
  });
});

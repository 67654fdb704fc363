import { describe, expect, it } from 'vitest';
import { placeSeason, weekTicks } from './place-season.ts';

const week = (at: number, chance: number, probabilityReady: number) => ({
  week: at,
  chance,
  probabilityReady,
  interval90: [chance - 0.2, chance + 0.2] as const,
});

describe('placeSeason', () => {
  it('puts week 0 at the left, the last at the right, chance 1 at the top', () => {
    const placed = placeSeason([week(0, 0.3, 0), week(1, 0.5, 0.25), week(4, 0.7, 1)]);
    expect(placed.ready).toBe('M0 1L0.25 0.75L1 0');
    expect(placed.line).toBe('M0 0.7L0.25 0.5L1 0.3');
    // Out along the upper edge, home along the lower.
    expect(placed.band).toBe('M0 0.5L0.25 0.3L1 0.1L1 0.5L0.25 0.7L0 0.9Z');
    expect(placed.xOf(2)).toBe(0.5);
    expect(placed.xOf(9)).toBe(1);
  });

  it('draws a forecast of now alone as level lines, and of nothing as nothing', () => {
    expect(placeSeason([week(0, 0.5, 1)])).toMatchObject({ ready: 'M0 0L1 0', line: 'M0 0.5L1 0.5' });
    expect(placeSeason([])).toMatchObject({ ready: '', line: '', band: '' });
  });
});

describe('weekTicks', () => {
  it('has now and the last week, and no more figures than a phone has room for', () => {
    expect(weekTicks(0)).toEqual([0]);
    expect(weekTicks(3)).toEqual([0, 1, 2, 3]);
    expect(weekTicks(26)).toEqual([0, 4, 8, 12, 16, 20, 26]);
    for (let last = 0; last <= 60; last++) {
      const ticks = weekTicks(last);
      expect([ticks[0], ticks.at(-1)]).toEqual([0, last]);
      expect(ticks.length).toBeLessThanOrEqual(8);
      expect(ticks).toEqual([...new Set(ticks)].toSorted((a, b) => a - b));
    }
  });
});

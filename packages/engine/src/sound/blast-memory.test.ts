import { describe, expect, it } from 'vitest';
import { MEMORY_FEATURES, memoryFeatures } from './blast-memory.ts';
import { candidateAt } from './candidate.fixture.ts';

const figure = (
  name: (typeof MEMORY_FEATURES)[number],
  at: number,
  others: readonly number[],
  lastsS = 0.2,
) =>
  memoryFeatures(
    candidateAt(at, at + 0.2),
    others.map((startS) => candidateAt(startS, startS + lastsS)),
  )[MEMORY_FEATURES.indexOf(name)];

describe('what was heard before', () => {
  it('is on the beat where it comes back after the same time again and again', () => {
    // Every 1.1 s, five times before: all are a whole number of beats away.
    expect(figure('onTheBeat', 20, [14.5, 15.6, 16.7, 17.8, 18.9])).toBeCloseTo(Math.log(6), 12);
    // As a hand blows: 1.3, 4 and 9.2 s before; the shortest is one beat of itself, the others are 3.08 and 7.08 of them.
    expect(figure('onTheBeat', 20, [10.8, 16, 18.7])).toBeCloseTo(Math.log(2), 12);
    // Pips of one call are no beat: they come quicker.
    expect(figure('onTheBeat', 20, [19.1, 19.4, 19.7])).toBe(0);
    // Nor are notes of another length.
    expect(figure('onTheBeat', 20, [16.7, 17.8, 18.9], 0.5)).toBe(0);
  });

  it('is forgotten after half a minute', () => {
    expect(figure('farBlasts', 40, [5])).toBe(0);
    expect(figure('farBlasts', 40, [15])).toBeGreaterThan(0);
  });
});

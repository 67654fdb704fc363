import { describe, expect, it } from 'vitest';
import { otherReadings } from './span-readings.ts';

/** A tone of 200 frames, 0.8 s: silent but for stretches at some height, in bins of some pitch. */
function toneOf(stretches: readonly { from: number; to: number; height?: number; bin?: number }[]) {
  const bins = new Float64Array(200).fill(50);
  const heights = new Float64Array(200);
  for (const { from, to, height = 1, bin = 50 } of stretches) {
    heights.fill(height, from, to + 1);
    bins.fill(bin, from, to + 1);
  }
  return { bins, heights };
}

describe('other readings of a tone', () => {
  it('join what a silence of under 0.3 s parts, and nothing further apart', () => {
    const near = [
      [10, 50],
      [90, 130],
    ] as const;
    expect(otherReadings(toneOf(near.map(([from, to]) => ({ from, to }))), near)).toEqual([[10, 130]]);
    const far = [
      [10, 50],
      [140, 180],
    ] as const;
    expect(otherReadings(toneOf(far.map(([from, to]) => ({ from, to }))), far)).toEqual([]);
  });

  it('join nothing that comes back at another pitch', () => {
    const tone = toneOf([
      { from: 10, to: 50 },
      { from: 60, to: 100, bin: 53 },
    ]);
    expect(
      otherReadings(tone, [
        [10, 50],
        [60, 100],
      ]),
    ).toEqual([]);
  });

  it('part a stretch where the height leaps, or the pitch does', () => {
    const louder = toneOf([
      { from: 10, to: 59, height: 0.6 },
      { from: 60, to: 120, height: 2 },
    ]);
    expect(otherReadings(louder, [[10, 120]])).toEqual([
      [60, 120],
      [10, 59],
    ]);
    const higher = toneOf([
      { from: 10, to: 59 },
      { from: 60, to: 120, bin: 51 },
    ]);
    expect(otherReadings(higher, [[10, 120]])).toEqual([
      [60, 120],
      [10, 59],
    ]);
    expect(otherReadings(toneOf([{ from: 10, to: 120 }]), [[10, 120]])).toEqual([]);
  });
});

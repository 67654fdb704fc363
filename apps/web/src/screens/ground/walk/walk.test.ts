import { describe, expect, it } from 'vitest';
import type { PlaceFix } from '../../../devices/watch-place.ts';
import { standingFixes } from './standing-fixes.ts';
import { walkedPlace } from './walked-place.ts';

const fix = (latDeg: number, lonDeg: number, more: Partial<PlaceFix> = {}): PlaceFix => ({
  latDeg,
  lonDeg,
  accuracyM: 4,
  atMs: 0,
  speedMPerS: null,
  ...more,
});
/** Degrees of latitude in one metre at latitude 52: 111,267 m a degree on WGS84 (111132.954 - 559.822 cos 104 deg + 1.175 cos 208 deg). */
const M = 1 / 111_267;

describe('readings while standing still', () => {
  const two = standingFixes(standingFixes([], fix(52, 0)), fix(52 + M, 0, { atMs: 1000 }));

  it('are averaged while they wander by a metre', () => {
    expect(two).toHaveLength(2);
  });

  it('begin again 20 m on, or when the device says that it walks', () => {
    const on = fix(52 + 20 * M, 0, { atMs: 2000 });
    expect(standingFixes(two, on)).toEqual([on]);
    const walking = fix(52, 0, { atMs: 2000, speedMPerS: 1.4 });
    expect(standingFixes(two, walking)).toEqual([walking]);
    const elsewhere = fix(-52, 179, { atMs: 2000 });
    expect(standingFixes(two, elsewhere)).toEqual([elsewhere]);
  });

  it('let go what is no place: not a number, or within half a mile only', () => {
    expect(standingFixes(two, fix(Number.NaN, 0))).toBe(two);
    expect(standingFixes(two, fix(52, 0, { accuracyM: 800 }))).toBe(two);
    expect(standingFixes(two, fix(52, 0, { accuracyM: Number.NaN }))).toBe(two);
  });
});

describe('where one stands on the drawing', () => {
  const origin = { geo: { latDeg: 52, lonDeg: -1 }, at: { eastM: 5, northM: -3 } };

  it('40 m north of the beginning is 40 m up from it', () => {
    const place = walkedPlace(origin, { latDeg: 52 + 40 * M, lonDeg: -1 });
    expect(place?.eastM).toBeCloseTo(5, 3);
    // The degree's length is of the middle latitude, good to 1 mm over 40 m.
    expect(place?.northM).toBeCloseTo(37, 2);
  });

  it('works as well at latitude 89, where a degree of longitude is 1.95 km', () => {
    const polar = { geo: { latDeg: 89, lonDeg: 10 }, at: { eastM: 0, northM: 0 } };
    // cos 89 deg x 6,399.6 km (the radius there) x 0.01 deg in radians = 19.49 m.
    const place = walkedPlace(polar, { latDeg: 89, lonDeg: 10.01 });
    expect(place?.eastM).toBeCloseTo(19.49, 1);
    expect(Math.abs(place?.northM ?? Number.NaN)).toBeLessThan(0.01);
  });

  it('is nowhere 3 km off, or on another continent', () => {
    expect(walkedPlace(origin, { latDeg: 52 + 3000 * M, lonDeg: -1 })).toBeNull();
    expect(walkedPlace(origin, { latDeg: 52, lonDeg: 90 })).toBeNull();
    expect(walkedPlace(origin, { latDeg: -40, lonDeg: 170 })).toBeNull();
  });
});

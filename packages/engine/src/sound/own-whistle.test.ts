import { describe, expect, it } from 'vitest';
import { isOwn, learnOwnWhistle, ownPitchLogOdds } from './own-whistle.ts';

describe('the own whistle', () => {
  it('is not known before a blast is confirmed', () => {
    expect(learnOwnWhistle([])).toBeNull();
  });

  it('is learned from one blast, worked by hand', () => {
    // Spread: sqrt(4 * 0.015^2 / (4 + 1 - 1) * (1 + 1)) = 0.015 sqrt 2 = 0.0212132.
    expect(learnOwnWhistle([3000])).toEqual({
      pitchHz: expect.closeTo(3000, 9),
      spread: expect.closeTo(0.0212132, 7),
    });
  });

  it('grows narrower with blasts that agree and wider with blasts that do not', () => {
    const one = learnOwnWhistle([3000])!;
    const agreeing = learnOwnWhistle(Array(12).fill(3000))!;
    const apart = learnOwnWhistle([2700, 3000, 3300])!;
    expect(agreeing.spread).toBeLessThan(one.spread);
    expect(apart.spread).toBeGreaterThan(one.spread);
  });

  it('speaks for its own pitch, within bounds, and against others', () => {
    const own = learnOwnWhistle([3000, 3010, 2990])!;
    expect(ownPitchLogOdds(own, 3000)).toBe(2.5);
    // Far away only the share of other blasts is left: ln 0.05 = -2.996.
    expect(ownPitchLogOdds(own, 5000)).toBeCloseTo(-2.996, 3);
    expect([isOwn(own, 3005), isOwn(own, 3300)]).toEqual([true, false]);
  });

  it('refuses what is no pitch', () => {
    for (const hz of [0, -1, Number.NaN]) expect(() => learnOwnWhistle([hz])).toThrow(RangeError);
  });
});

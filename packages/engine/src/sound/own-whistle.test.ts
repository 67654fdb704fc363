import { describe, expect, it } from 'vitest';
import { isOwn, learnOwnWhistle, ownFigures } from './own-whistle.ts';

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

  it('tells how near a pitch lies, worked by hand', () => {
    const own = learnOwnWhistle([3000, 3000, 3000])!;
    expect([...ownFigures(own, 3000)]).toEqual([1, 1, 1, 1]);
    // ln(3060 / 3000) = 0.0198026: exp(-0.5 * 2.47533^2) = 0.046718, exp(-0.5 * 0.990131^2) = 0.612516, exp(-0.5 * 0.330044^2) = 0.946992.
    const near = ownFigures(own, 3060);
    expect(near[1]).toBeCloseTo(0.046718, 5);
    expect(near[2]).toBeCloseTo(0.612516, 5);
    expect(near[3]).toBeCloseTo(0.946992, 5);
    expect([...ownFigures(null, 3000)]).toEqual([0, 0, 0, 0]);
    expect([isOwn(own, 3005), isOwn(own, 3300)]).toEqual([true, false]);
  });

  it('refuses what is no pitch', () => {
    for (const hz of [0, -1, Number.NaN]) expect(() => learnOwnWhistle([hz])).toThrow(RangeError);
  });
});

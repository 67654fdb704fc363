import { describe, expect, it } from 'vitest';
import { carriesFarM, carryingTo, levelAtDbSpl, usualSound } from './carrying.ts';
import { blastsPerDay } from './hearing-dose.ts';

describe('whether a whistle carries', () => {
  it('is a margin over the higher of noise and threshold, by hand at 100 m', () => {
    // 105 - 40 dB of spreading, less 99 m of absorption; noise 40 dB stands over the threshold of about 5 dB at 3.5 kHz.
    const heard = carryingTo(100, usualSound);
    expect(heard).toMatchObject({ carries: true, boundBy: 'noise' });
    expect(heard.marginDb).toBeCloseTo(heard.levelAtDogDb - 40, 12);
    // Threshold at 3.5 kHz by hand: 9 - 5 ln(1.75) / ln 2 = 4.9632.
    const quiet = carryingTo(100, { ...usualSound, noiseDb: 0 });
    expect(quiet.boundBy).toBe('threshold');
    expect(quiet.marginDb).toBeCloseTo(quiet.levelAtDogDb - 4.9632, 4);
    expect(carryingTo(100, { ...usualSound, noiseDb: 70 }).carries).toBe(false);
  });

  it('carries as far as the margin lasts, never where it is drowned at once, 2,000 m at most', () => {
    const farM = carriesFarM(usualSound);
    expect(carryingTo(farM - 0.01, usualSound).carries).toBe(true);
    expect(carryingTo(farM + 0.01, usualSound).carries).toBe(false);
    expect(carriesFarM({ ...usualSound, noiseDb: 110 })).toBe(0);
    expect(carriesFarM({ ...usualSound, levelDbSpl: 140, noiseDb: 0, pitchHz: 1_000 })).toBe(2_000);
  });

  it('is the level at 1 m nearer than that; cover takes 6 dB over 100 m where it is over the dog’s back', () => {
    expect(levelAtDbSpl(0, usualSound)).toBe(105);
    const open = levelAtDbSpl(101, usualSound);
    expect(open - levelAtDbSpl(101, { ...usualSound, cover: 3 })).toBeCloseTo(6, 9);
  });

  it('counts blasts: 100 dB is 15 minutes a day, 1,800 half seconds', () => {
    expect(blastsPerDay(100)).toBe(1_800);
  });

  it('says no to figures that cannot be', () => {
    for (const wrong of [{ pitchHz: 0 }, { humidityPct: 101 }, { levelDbSpl: 400 }, { noiseDb: Number.NaN }])
      expect(() => carryingTo(50, { ...usualSound, ...wrong })).toThrow(RangeError);
    expect(() => carryingTo(-1, usualSound)).toThrow(RangeError);
  });
});

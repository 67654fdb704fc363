import { describe, expect, it } from 'vitest';
import { carryingTo, usualSound } from './carrying.ts';
import { stopAtPlace } from './stop-point.ts';
import { whistleCautions } from './whistle-cautions.ts';

const cautions = (haltAtM: number, sound = usualSound, windMPerS = 0) => {
  const stop = stopAtPlace(haltAtM);
  return whistleCautions(stop, carryingTo(stop.dogHearsAtM, sound), sound, windMPerS);
};
const codes = (...args: Parameters<typeof cautions>) => cautions(...args).map(({ code }) => code);

describe('what to mind of a stop', () => {
  it('a usual stop has the ears alone: 105 dB is 283.5 s a day (28,800 / 2^(20/3))', () => {
    expect(cautions(40)).toEqual([
      { code: 'ears', source: 'NIOSH1998', levelDb: 105, limitDb: 85, allowedS: expect.closeTo(283.48, 1) },
    ]);
    expect(codes(40, { ...usualSound, levelDbSpl: 85 })).toEqual([]);
  });

  it('too soon to halt there, or to decide after the send', () => {
    expect(codes(0.5)[0]).toBe('too-late');
    // Least halt, by hand: reaction 0.35 s at 5 m/s2 makes 0.306 m and 1.75 m/s, braking 0.255 m: 0.561 m. For 1 m it brakes at 0.545 m, 0.467 s after the send, so it hears at 0.117 s: sooner than a handler's 0.3 s.
    expect(codes(0.6)[0]).toBe('decide-before-send');
    expect(codes(1)[0]).toBe('decide-before-send');
  });

  it('not heard, hardly heard, and wind', () => {
    expect(codes(200, { ...usualSound, noiseDb: 75 })).toEqual(['not-heard', 'ears']);
    const level = carryingTo(stopAtPlace(200).dogHearsAtM, usualSound).levelAtDogDb;
    expect(codes(200, { ...usualSound, noiseDb: level - 9 })).toEqual(['thin-margin', 'ears']);
    expect(codes(200, { ...usualSound, noiseDb: level - 11 })).toEqual(['ears']);
    expect(codes(40, usualSound, 2)).toEqual(['wind', 'ears']);
    expect(codes(40, usualSound, 1.9)).toEqual(['ears']);
  });
});

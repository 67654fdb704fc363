import { describe, expect, it } from 'vitest';
import { createResampler } from './resampler.ts';

function brought(fromHz: number, sound: Float32Array, piece = 997): number[] {
  const out: number[] = [];
  const resampler = createResampler(fromHz, (samples) => out.push(...samples));
  for (let at = 0; at < sound.length; at += piece) resampler.push(sound.subarray(at, at + piece));
  resampler.finish();
  return out;
}

const tone = (hz: number, rate: number) =>
  Float32Array.from({ length: rate / 2 }, (_, i) => Math.sin((2 * Math.PI * hz * i) / rate));

describe('the resampler', () => {
  it.each([8_000, 11_025, 16_000, 22_050, 32_000, 44_100, 47_999, 48_000, 96_000, 192_000])(
    'keeps a tone of 3 kHz where it was, from %i samples a second',
    (rate) => {
      const out = brought(rate, tone(3000, rate));
      let worst = 0;
      for (let k = 500; k < 7500; k++)
        worst = Math.max(worst, Math.abs(out[k]! - Math.sin((2 * Math.PI * 3000 * k) / 16_000)));
      // 45 dB of rejection is 0.0056 of full scale.
      expect(worst).toBeLessThan(0.0056);
    },
  );

  it('keeps out what would fold into the band', () => {
    // 10 kHz would fold to 6 kHz.
    const out = brought(48_000, tone(10_000, 48_000)).slice(500, 7500);
    expect(Math.max(...out.map(Math.abs))).toBeLessThan(0.0056);
  });

  it('makes the same of any pieces', () => {
    const sound = tone(2500, 44_100);
    expect(brought(44_100, sound, 1)).toEqual(brought(44_100, sound, 50_000));
  });
});

import { describe, expect, it } from 'vitest';
import { createPowerSpectrum } from './power-spectrum.ts';

const SIZE = 256;
const powerOf = createPowerSpectrum(SIZE);

/** Powers of a tone that lies at a bin, or between two. */
function toneAt(bin: number): Float32Array {
  const powers = new Float32Array(SIZE / 2);
  powerOf(
    Float64Array.from({ length: SIZE }, (_, n) => Math.cos((2 * Math.PI * bin * n) / SIZE + 0.7)),
    0,
    powers,
  );
  return powers;
}

describe('the power spectrum', () => {
  it('is the sum that defines it', () => {
    const frame = Float64Array.from({ length: 32 }, (_, n) => Math.sin(n * n) + 0.3 * n);
    const powers = new Float32Array(16);
    createPowerSpectrum(32)(frame, 0, powers);
    for (let k = 0; k < 16; k++) {
      let [re, im] = [0, 0];
      frame.forEach((x, n) => {
        const w = Math.sin((Math.PI * (n + 0.5)) / 32) ** 2;
        re += w * x * Math.cos((2 * Math.PI * k * n) / 32);
        im -= w * x * Math.sin((2 * Math.PI * k * n) / 32);
      });
      // Powers are kept in 32 bits: 6e-8 of their size, and the leakage of the largest (2e4) beside it.
      expect(Math.abs(powers[k]! - (re * re + im * im))).toBeLessThan(2e-7 * (re * re + im * im) + 1e-5);
    }
  });

  // Harris 1978, table 1, Hann: noise bandwidth 1.50 bins, scalloping 1.42 dB, highest sidelobe -32 dB (printed digits; computed again: 1.5000, 1.4236).
  it('has the noise bandwidth of a Hann window', () => {
    const impulse = (n: number) => {
      const frame = new Float64Array(SIZE);
      frame[n] = 1;
      const powers = new Float32Array(SIZE / 2);
      powerOf(frame, 0, powers);
      return powers[40]!;
    };
    let squares = 0;
    let sum = 0;
    for (let n = 0; n < SIZE; n++) {
      squares += impulse(n);
      sum += Math.sqrt(impulse(n));
    }
    expect((SIZE * squares) / sum ** 2).toBeCloseTo(1.5, 2);
  });

  it('loses 1.42 dB half way between two bins', () => {
    const lossDb = 10 * Math.log10(toneAt(40)[40]! / toneAt(40.5)[40]!);
    expect(Math.abs(lossDb - 1.42)).toBeLessThan(0.01);
  });

  it('keeps its sidelobes 31 dB down', () => {
    const powers = toneAt(40.5);
    const top = Math.max(...powers);
    // The main lobe is four bins wide; sidelobes are -31.5 dB, printed as -32, and the tone itself is 1.42 dB off its bin.
    powers.forEach((power, k) => {
      if (Math.abs(k - 40.5) > 2) expect(10 * Math.log10(power / top)).toBeLessThan(-29.5);
    });
  });

  it('refuses sizes that are no power of two', () => {
    for (const size of [0, 4, 100, 257]) expect(() => createPowerSpectrum(size)).toThrow(RangeError);
  });
});

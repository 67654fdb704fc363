import type { FrameStore } from './frame-store.ts';
import { BAND_HZ, BIN_HZ, BINS, FRAME } from './listening-grid.ts';
import { createPowerSpectrum } from './power-spectrum.ts';

const powerOf = createPowerSpectrum(FRAME);
const frame = new Float32Array(FRAME);
const FIRST = BAND_HZ[0] / BIN_HZ;
/** The press stands just after the window's begin; two frames before it tell what was there already. */
const LEAD = 80;
const BEFORE = [330, 460] as const;

function powersFrom(store: FrameStore, from: number): Float32Array {
  for (let i = 0; i < FRAME; i++) frame[i] = store.sampleAt(from + i);
  const into = new Float32Array(BINS);
  powerOf(frame, 0, into);
  return into;
}

/** Spectrum of a sudden sound at `sample`, what was there before taken off. */
export function suddenSpectrum(store: FrameStore, sample: number): Float32Array {
  const at = powersFrom(store, sample - LEAD);
  const before = BEFORE.map((back) => powersFrom(store, sample - back));
  return at.map((power, k) => Math.max(0, power - before[0]![k]! - before[1]![k]!));
}

function smoothAmplitude(powers: Float32Array, bin: number): number {
  const at = Math.floor(bin);
  const part = bin - at;
  const amplitude = (k: number) => Math.sqrt(powers[Math.min(BINS - 1, k)]!);
  return (1 - part) * amplitude(at) + part * amplitude(at + 1);
}

/**
 * Likeness of two spectra within the band, 0 to 1: the cosine of the angle between their amplitudes, one stretched by up to 7 %, as the strip of
 * a clicker sounds a few per cent higher or lower when it springs back.
 */
export function likeness(a: Float32Array, b: Float32Array, topBin: number): number {
  let best = 0;
  for (let stretch = -0.07; stretch <= 0.0701; stretch += 0.02) {
    let [ab, aa, bb] = [0, 0, 0];
    for (let bin = FIRST; bin <= topBin; bin++) {
      const x = Math.sqrt(a[bin]!);
      const y = smoothAmplitude(b, bin * (1 + stretch));
      ab += x * y;
      aa += x * x;
      bb += y * y;
    }
    best = Math.max(best, ab / Math.sqrt(aa * bb + 1e-40));
  }
  return best;
}

/** The kinds of second-order filter in use. */
type Kind = 'lowpass' | 'highpass' | 'bandpass';

/** Coefficients of a second-order filter, a0 divided out. */
export interface Biquad {
  b0: number;
  b1: number;
  b2: number;
  a1: number;
  a2: number;
}

/**
 * Second-order filter by the bilinear transform (R. Bristow-Johnson's equations for audio filters); the band-pass has 0 dB at its middle.
 * A corner above 0.45 of the sample rate is put there.
 */
export function biquad(kind: Kind, cornerHz: number, q: number, sampleRateHz: number): Biquad {
  const w = (2 * Math.PI * Math.min(cornerHz, 0.45 * sampleRateHz)) / sampleRateHz;
  const cos = Math.cos(w);
  const alpha = Math.sin(w) / (2 * q);
  const a0 = 1 + alpha;
  const poles = { a1: (-2 * cos) / a0, a2: (1 - alpha) / a0 };
  if (kind === 'bandpass') return { b0: alpha / a0, b1: 0, b2: -alpha / a0, ...poles };
  const edge = kind === 'lowpass' ? 1 - cos : 1 + cos;
  const middle = kind === 'lowpass' ? edge : -edge;
  return { b0: edge / 2 / a0, b1: middle / a0, b2: edge / 2 / a0, ...poles };
}

/** The sound through the filter, in place, from rest. */
export function filtered(sound: Float64Array, { b0, b1, b2, a1, a2 }: Biquad): Float64Array {
  let s1 = 0;
  let s2 = 0;
  for (let i = 0; i < sound.length; i++) {
    const x = sound[i]!;
    const y = b0 * x + s1;
    s1 = b1 * x - a1 * y + s2;
    s2 = b2 * x - a2 * y;
    sound[i] = y;
  }
  return sound;
}

/** The sound between two corners, each of second order. */
export const banded = (sound: Float64Array, lowHz: number, highHz: number, sampleRateHz: number) =>
  filtered(
    filtered(sound, biquad('highpass', lowHz, Math.SQRT1_2, sampleRateHz)),
    biquad('lowpass', highHz, Math.SQRT1_2, sampleRateHz),
  );

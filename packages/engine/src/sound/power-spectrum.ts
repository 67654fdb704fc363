/**
 * Power spectrum of real frames of one length, a power of two from 8 up: |X_k|^2 for k = 0 to size / 2 - 1 with the Hann window
 * w_n = sin^2(pi (n + 1/2) / size) [Harris1978], by a complex transform of half the length [CooleyTukey1965] that is split into the even and
 * the odd samples' parts. No factor is divided out. One is made once for a size, and its tables serve every frame.
 */
export function createPowerSpectrum(size: number) {
  if (size < 8 || (size & (size - 1)) !== 0)
    throw new RangeError(`size: expected a power of two from 8 up, got ${size}`);
  const half = size / 2;
  const window = Float64Array.from({ length: size }, (_, n) => Math.sin((Math.PI * (n + 0.5)) / size) ** 2);
  const cos = Float64Array.from({ length: half }, (_, k) => Math.cos((2 * Math.PI * k) / size));
  const sin = Float64Array.from({ length: half }, (_, k) => Math.sin((2 * Math.PI * k) / size));
  const bits = Math.log2(half);
  const turned = Uint16Array.from({ length: half }, (_, i) => {
    let back = 0;
    for (let bit = 0; bit < bits; bit++) if (i & (1 << bit)) back |= half >> (bit + 1);
    return back;
  });
  const re = new Float64Array(half);
  const im = new Float64Array(half);

  function butterflies(): void {
    for (let span = 1; span < half; span *= 2) {
      // The tables turn once in `size` samples, the transform in `half`.
      const step = half / span;
      for (let pair = 0; pair < span; pair++) {
        const c = cos[pair * step]!;
        const s = -sin[pair * step]!;
        for (let low = pair; low < half; low += 2 * span) {
          const high = low + span;
          const a = re[high]! * c - im[high]! * s;
          const b = re[high]! * s + im[high]! * c;
          re[high] = re[low]! - a;
          im[high] = im[low]! - b;
          re[low] = re[low]! + a;
          im[low] = im[low]! + b;
        }
      }
    }
  }

  /** Reads `size` samples from `from`, writes `size / 2` powers from `at`. */
  return function powerOf(samples: ArrayLike<number>, from: number, into: Float32Array, at = 0): void {
    for (let i = 0; i < half; i++) {
      const n = 2 * i;
      re[turned[i]!] = samples[from + n]! * window[n]!;
      im[turned[i]!] = samples[from + n + 1]! * window[n + 1]!;
    }
    butterflies();
    into[at] = (re[0]! + im[0]!) ** 2;
    for (let k = 1; k < half; k++) {
      const evenRe = 0.5 * (re[k]! + re[half - k]!);
      const evenIm = 0.5 * (im[k]! - im[half - k]!);
      const oddRe = 0.5 * (im[k]! + im[half - k]!);
      const oddIm = -0.5 * (re[k]! - re[half - k]!);
      const c = cos[k]!;
      const s = sin[k]!;
      const a = evenRe + c * oddRe + s * oddIm;
      const b = evenIm + c * oddIm - s * oddRe;
      into[at + k] = a * a + b * b;
    }
  };
}

/**
 * What a listener costs that only looks: each frame of 2,048 samples, 256 apart, through a Hann window and a plain transform of radix 2, its
 * loudest bin noted. No resampling, no following, no verdict.
 */
export function createPlainTransform() {
  const size = 2048;
  const hop = 256;
  const held = new Float64Array(size);
  const re = new Float64Array(size);
  const im = new Float64Array(size);
  const hann = Float64Array.from({ length: size }, (_, n) => Math.sin((Math.PI * (n + 0.5)) / size) ** 2);
  const cos = Float64Array.from({ length: size / 2 }, (_, k) => Math.cos((2 * Math.PI * k) / size));
  const sin = Float64Array.from({ length: size / 2 }, (_, k) => Math.sin((2 * Math.PI * k) / size));
  let filled = 0;
  let loudest = 0;

  function transform(): void {
    for (let i = 0, j = 0; i < size; i++) {
      re[j] = held[i]! * hann[i]!;
      im[j] = 0;
      let bit = size >> 1;
      for (; j & bit; bit >>= 1) j ^= bit;
      j ^= bit;
    }
    for (let half = 1; half < size; half *= 2) {
      const step = size / (2 * half);
      for (let start = 0; start < size; start += 2 * half) {
        for (let k = 0; k < half; k++) {
          const [c, s] = [cos[k * step]!, -sin[k * step]!];
          const [low, high] = [start + k, start + k + half];
          const a = re[high]! * c - im[high]! * s;
          const b = re[high]! * s + im[high]! * c;
          re[high] = re[low]! - a;
          im[high] = im[low]! - b;
          re[low] = re[low]! + a;
          im[low] = im[low]! + b;
        }
      }
    }
    for (let k = 0; k < size / 2; k++) loudest = Math.max(loudest, re[k]! * re[k]! + im[k]! * im[k]!);
  }

  return {
    push(samples: Float32Array): void {
      for (const sample of samples) {
        held[filled++] = sample;
        if (filled < size) continue;
        transform();
        held.copyWithin(0, hop);
        filled = size - hop;
      }
    },
    loudest: () => loudest,
  };
}

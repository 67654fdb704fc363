/**
 * Discrete Fourier transform of the study's own, in place, radix 2 (Cooley and Tukey 1965): plain and slow enough to be read. The length is a
 * power of two; no factor forward, 1/n backward.
 */
export function transform(re: Float64Array, im: Float64Array, direction: 'forward' | 'backward'): void {
  const n = re.length;
  if (n < 2 || (n & (n - 1)) !== 0 || im.length !== n) {
    throw new RangeError(`re, im: expected the same power of two, got ${n} and ${im.length}`);
  }
  for (let i = 1, j = 0; i < n; i++) {
    let bit = n >> 1;
    for (; j & bit; bit >>= 1) j ^= bit;
    j ^= bit;
    if (i < j) {
      [re[i], re[j]] = [re[j]!, re[i]!];
      [im[i], im[j]] = [im[j]!, im[i]!];
    }
  }
  const { cos, sin } = turns(n);
  const sign = direction === 'forward' ? -1 : 1;
  for (let half = 1; half < n; half *= 2) {
    const step = n / (2 * half);
    for (let start = 0; start < n; start += 2 * half) {
      for (let k = 0; k < half; k++) {
        const c = cos[k * step]!;
        const s = sign * sin[k * step]!;
        const low = start + k;
        const high = low + half;
        const a = re[high]! * c - im[high]! * s;
        const b = re[high]! * s + im[high]! * c;
        re[high] = re[low]! - a;
        im[high] = im[low]! - b;
        re[low] = re[low]! + a;
        im[low] = im[low]! + b;
      }
    }
  }
  if (direction === 'forward') return;
  for (let i = 0; i < n; i++) {
    re[i] = re[i]! / n;
    im[i] = im[i]! / n;
  }
}

const known = new Map<number, { cos: Float64Array; sin: Float64Array }>();

function turns(n: number) {
  let table = known.get(n);
  if (table === undefined) {
    table = {
      cos: Float64Array.from({ length: n / 2 }, (_, k) => Math.cos((2 * Math.PI * k) / n)),
      sin: Float64Array.from({ length: n / 2 }, (_, k) => Math.sin((2 * Math.PI * k) / n)),
    };
    known.set(n, table);
  }
  return table;
}

/** The smallest power of two that is `n` or more. */
export const powerOfTwoFrom = (n: number) => 2 ** Math.ceil(Math.log2(Math.max(2, n)));

/** A sound's spectrum, padded with silence to `length`, a power of two; bin k stands for k · sampleRateHz / length. */
export function spectrumOf(sound: ArrayLike<number>, length = powerOfTwoFrom(sound.length)) {
  const re = new Float64Array(length);
  const im = new Float64Array(length);
  for (let i = 0; i < sound.length; i++) re[i] = sound[i]!;
  transform(re, im, 'forward');
  return { re, im };
}

/** How a path treats one frequency: a complex factor. */
export type Response = (frequencyHz: number) => { re: number; im: number };

/**
 * The sound after a path with that response. The result is `tailS` longer than the sound, for what comes late; what would come before the first
 * sample wraps round into the padding and is dropped, so a response without delay keeps every time where it was.
 */
export function throughResponse(
  sound: ArrayLike<number>,
  sampleRateHz: number,
  tailS: number,
  response: Response,
): Float64Array {
  const outLength = sound.length + Math.round(tailS * sampleRateHz);
  const length = powerOfTwoFrom(outLength + 512);
  const { re, im } = spectrumOf(sound, length);
  for (let k = 0; k <= length / 2; k++) {
    const factor = response((k * sampleRateHz) / length);
    const a = re[k]! * factor.re - im[k]! * factor.im;
    const b = re[k]! * factor.im + im[k]! * factor.re;
    re[k] = a;
    im[k] = k === length / 2 ? 0 : b;
    if (k > 0 && k < length / 2) {
      re[length - k] = a;
      im[length - k] = -b;
    }
  }
  im[0] = 0;
  transform(re, im, 'backward');
  return re.subarray(0, outLength);
}

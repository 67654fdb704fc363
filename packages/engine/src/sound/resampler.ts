import { WORK_RATE_HZ } from './listening-grid.ts';

/** Where samples go: to the handler of this many, which may not keep the array. */
export type Sink = (samples: Float32Array) => void;

/** Kaiser's window for 45 dB of rejection [Kaiser1974]: 0.5842 (A - 21)^0.4 + 0.07886 (A - 21). */
const REJECTION_DB = 45;
const KAISER_BETA = 0.5842 * (REJECTION_DB - 21) ** 0.4 + 0.07886 * (REJECTION_DB - 21);
const MOST_PHASES = 640;
const BLOCK = 4096;

/** Modified Bessel function of the first kind, order nought, by its series: enough terms for x < 10. */
function besselI0(x: number): number {
  let sum = 1;
  let term = 1;
  for (let k = 1; k < 30; k++) {
    term *= (x / (2 * k)) ** 2;
    sum += term;
  }
  return sum;
}

function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b);
}

/** Taps of the low-pass at each phase between two samples, and how many samples it reaches to each side. */
function lowPass(fromHz: number) {
  const stopHz = Math.min(WORK_RATE_HZ, fromHz) / 2;
  // From 7 to 9 kHz it falls; what folds back from beyond 8 kHz lies above 7 kHz again.
  const bandHz = 0.25 * stopHz;
  // Even, so that the taps come in fours.
  const reach = 2 * Math.ceil((0.25 * fromHz * (REJECTION_DB - 8)) / (2.285 * 2 * Math.PI * bandHz));
  const exact = WORK_RATE_HZ / commonDivisor(fromHz, WORK_RATE_HZ);
  const phases = Math.min(exact, MOST_PHASES);
  const taps = new Float64Array((phases + 1) * 2 * reach);
  for (let phase = 0; phase <= phases; phase++) {
    let sum = 0;
    for (let tap = 0; tap < 2 * reach; tap++) {
      const away = tap - reach + 1 - phase / phases;
      const turn = (2 * Math.PI * stopHz * away) / fromHz;
      const window = besselI0(KAISER_BETA * Math.sqrt(Math.max(0, 1 - (away / reach) ** 2)));
      const value = (turn === 0 ? 1 : Math.sin(turn) / turn) * window;
      taps[phase * 2 * reach + tap] = value;
      sum += value;
    }
    for (let tap = 0; tap < 2 * reach; tap++) taps[phase * 2 * reach + tap]! /= sum;
  }
  return { taps, phases, reach };
}

/**
 * Brings a stream to `WORK_RATE_HZ` by a windowed sine cardinal (45 dB), without delay: sample k out stands for the time k / 16,000 s. However
 * the stream is cut into pieces, the same samples come out. Rates without a common measure are put to the nearest of 640 phases.
 * @throws RangeError unless the rate is a whole number from 8,000 to 192,000
 */
export function createResampler(fromHz: number, sink: Sink) {
  if (!Number.isInteger(fromHz) || fromHz < 8_000 || fromHz > 192_000)
    throw new RangeError(`sampleRateHz: expected a whole number from 8000 to 192000, got ${fromHz}`);
  if (fromHz === WORK_RATE_HZ) return { push: sink, finish: () => undefined };
  const { taps, phases, reach } = lowPass(fromHz);
  const width = 2 * reach;
  const held = new Float64Array(BLOCK + 2 * width);
  // The stream is taken to be silent before its first sample.
  let holds = reach - 1;
  let at = reach - 1;
  let rest = 0;
  const out = new Float32Array(BLOCK);
  let made = 0;

  /** Makes all that the held samples reach. */
  function make(): void {
    while (at + reach < holds) {
      const phase = Math.round((rest * phases) / WORK_RATE_HZ);
      const first = at - reach + 1;
      const row = phase * width;
      // Four sums side by side: one alone waits for each addition to end.
      let a = 0;
      let b = 0;
      let c = 0;
      let d = 0;
      for (let tap = 0; tap < width; tap += 4) {
        a += taps[row + tap]! * held[first + tap]!;
        b += taps[row + tap + 1]! * held[first + tap + 1]!;
        c += taps[row + tap + 2]! * held[first + tap + 2]!;
        d += taps[row + tap + 3]! * held[first + tap + 3]!;
      }
      out[made++] = a + b + (c + d);
      if (made === BLOCK) flush();
      rest += fromHz;
      const whole = Math.floor(rest / WORK_RATE_HZ);
      rest -= whole * WORK_RATE_HZ;
      at += whole;
    }
    const drop = Math.min(at - reach + 1, holds);
    held.copyWithin(0, drop, holds);
    holds -= drop;
    at -= drop;
  }

  function flush(): void {
    if (made > 0) sink(out.subarray(0, made));
    made = 0;
  }

  function push(samples: Float32Array): void {
    for (let from = 0; from < samples.length; ) {
      const part = samples.subarray(from, from + Math.min(BLOCK, held.length - holds));
      held.set(part, holds);
      holds += part.length;
      from += part.length;
      make();
    }
    flush();
  }

  /** Makes the last samples; the stream is taken to be silent after its end. */
  function finish(): void {
    push(new Float32Array(reach + 1));
  }
  return { push, finish };
}

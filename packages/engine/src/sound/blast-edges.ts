import type { FrameStore } from './frame-store.ts';
import { BIN_HZ, HOP, WORK_RATE_HZ } from './listening-grid.ts';
import type { ToneSpan } from './tone-spans.ts';

/** Where a tone begins and ends, at half height, and how long it takes to rise and fall. */
export interface BlastEdges {
  startS: number;
  endS: number;
  riseS: number;
  fallS: number;
}

/** Amplitude is read every millisecond through a Hann window of 8 ms at three pitches 5 % apart: a band of about a third of an octave. */
const STEP = WORK_RATE_HZ / 1000;
const WINDOW = 128;
const SIDE = 0.05;
const OUTSIDE_MS = 60;
const INSIDE_MS = 70;
const SETTLED_MS = 14;

const hann = Float64Array.from({ length: WINDOW }, (_, n) => Math.sin((Math.PI * (n + 0.5)) / WINDOW) ** 2);

/** The samples about an edge, copied out once, and one window of them. */
const about = new Float64Array((OUTSIDE_MS + INSIDE_MS) * 2 * STEP + WINDOW);
const windowed = new Float64Array(WINDOW);

/** Power of the band about a pitch through the window that begins at `from` of the copied samples. */
function bandPower(from: number, turns: readonly { c: number; s: number }[]): number {
  for (let n = 0; n < WINDOW; n++) windowed[n] = hann[n]! * about[from + n]!;
  let sum = 0;
  for (const { c, s } of turns) {
    // Turned by Goertzel's recurrence [Goertzel1958]: one product a sample.
    let last = 0;
    let before = 0;
    for (let n = 0; n < WINDOW; n++) {
      const now = windowed[n]! + 2 * c * last - before;
      before = last;
      last = now;
    }
    sum += (last - c * before) ** 2 + (s * before) ** 2;
  }
  return sum;
}

function quantileOf(values: ArrayLike<number>, share: number): number {
  const sorted = Float64Array.from(values).sort();
  return sorted[Math.round(share * (sorted.length - 1))] ?? 0;
}

/**
 * One edge, looked at from outside in: `towards` is 1 for a start, -1 for an end. Heights are what is left of amplitude when the noise
 * outside is taken off; the level is that of the tone just inside.
 */
function edge(store: FrameStore, frame: number, bin: number, lastsMs: number, towards: 1 | -1) {
  const inside = Math.min(INSIDE_MS, Math.max(20, Math.round(0.6 * lastsMs)));
  const length = OUTSIDE_MS + inside + 1;
  const powers = new Float64Array(length);
  const turns = [-SIDE, 0, SIDE].map((side) => {
    const turn = (2 * Math.PI * bin * BIN_HZ * (1 + side)) / WORK_RATE_HZ;
    return { c: Math.cos(turn), s: Math.sin(turn) };
  });
  const firstMs = towards === 1 ? -OUTSIDE_MS : -inside;
  const first = frame * HOP + firstMs * STEP - WINDOW / 2;
  for (let i = 0; i < length * STEP + WINDOW; i++) about[i] = store.sampleAt(first + i);
  for (let i = 0; i < length; i++) {
    powers[i] = bandPower((towards === 1 ? i : length - 1 - i) * STEP, turns);
  }
  const noise = quantileOf(powers.subarray(0, OUTSIDE_MS - 15), 0.4);
  const heights = powers.map((power) => Math.sqrt(Math.max(0, power - noise)));
  const settled = OUTSIDE_MS + Math.min(SETTLED_MS, Math.round(inside / 2));
  const level = quantileOf(heights.subarray(settled), 0.6);
  const crossing = (share: number): number => {
    let i = settled;
    while (i > 0 && heights[i]! < share * level) i--;
    while (i > 0 && heights[i - 1]! >= share * level) i--;
    if (i === 0) return 0;
    const [low, high] = [heights[i - 1]!, heights[i]!];
    return i - (high - share * level) / Math.max(1e-30, high - low);
  };
  const half = crossing(0.5);
  const outer = crossing(0.3);
  const inner = crossing(0.8);
  return {
    atS: (frame * HOP) / WORK_RATE_HZ + (towards * (half - OUTSIDE_MS)) / 1000,
    slopeS: Math.max(0, inner - outer) / 1000,
  };
}

const median = (values: Float64Array) => quantileOf(values, 0.5);

/** The edges of a span at a millisecond's fineness. */
export function blastEdges(store: FrameStore, span: ToneSpan): BlastEdges {
  const lastsMs = (span.lastFrame - span.firstFrame) * 4;
  const start = edge(store, span.firstFrame, median(span.bins.subarray(1, 12)), lastsMs, 1);
  const end = edge(store, span.lastFrame, median(span.bins.subarray(-10, -1)), lastsMs, -1);
  return { startS: start.atS, endS: end.atS, riseS: start.slopeS, fallS: end.slopeS };
}

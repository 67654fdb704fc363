import type { FrameStore } from './frame-store.ts';
import { BAND_HZ, BIN_HZ } from './listening-grid.ts';
import { LONGEST_FRAMES, type Ridge } from './ridge-tracker.ts';
import { otherReadings } from './span-readings.ts';

/** A stretch over which one tone stands above half of its height: what may be a blast. */
export interface ToneSpan {
  firstFrame: number;
  lastFrame: number;
  /** Pitch in bins, amplitude (in the spectrum's own unit) and height over the floor (a ratio of power), frame by frame. */
  bins: Float64Array;
  heights: Float64Array;
  ratios: Float64Array;
}

/** How far beyond a ridge its tone is looked for; before it, further for as long as it is there. */
export const BEYOND_FRAMES = 60;
const NEAR_FRAMES = 30;
/** How long a dip between two halves of one blast may last. */
const DIP_FRAMES = 11;
const SUNK_FRAMES = 100;
const SUNK = 0.36;
const LEAST_FRAMES = 9;
const HALF = 0.5;
/** A tone is followed sideways in frames where it stands 6 dB over the floor. */
const SURE_RATIO = 4;
const AROUND_BINS = 2;
const LOWEST_BIN = BAND_HZ[0] / BIN_HZ - 2;
/** Mean of exponential noise over its median. */
const MEAN_OVER_MEDIAN = 1 / Math.LN2;

/** The tone of a ridge followed from its highest frame to both sides. */
function followed(store: FrameStore, ridge: Ridge): ToneSpan {
  const firstFrame = Math.max(store.earliest, ridge.firstFrame - LONGEST_FRAMES);
  const lastFrame = Math.min(store.made - 1, ridge.lastFrame + 3 * BEYOND_FRAMES);
  const length = lastFrame - firstFrame + 1;
  const bins = new Float64Array(length);
  const heights = new Float64Array(length);
  const ratios = new Float64Array(length);
  const measure = (frame: number, near: number): number => {
    const middle = Math.round(near);
    let top = middle;
    for (let bin = middle - AROUND_BINS; bin <= middle + AROUND_BINS; bin++) {
      if (bin >= LOWEST_BIN && bin < store.topBin && store.powerAt(frame, bin) > store.powerAt(frame, top))
        top = bin;
    }
    const floor = store.floorAt(frame, top);
    let sum = 0;
    for (let bin = top - AROUND_BINS; bin <= top + AROUND_BINS; bin++) sum += store.powerAt(frame, bin);
    const at = frame - firstFrame;
    const ratio = store.powerAt(frame, top) / floor;
    ratios[at] = ratio;
    heights[at] = Math.sqrt(Math.max(0, sum - (2 * AROUND_BINS + 1) * MEAN_OVER_MEDIAN * floor));
    bins[at] = ratio >= SURE_RATIO ? store.peakBin(frame, top) : near;
    return bins[at]!;
  };
  const top = Math.max(firstFrame, Math.min(lastFrame, ridge.topFrame));
  let near = measure(top, ridge.topBin);
  const middle = near;
  for (let frame = top + 1; frame <= lastFrame; frame++) near = measure(frame, near);
  near = middle;
  let sureFrame = top;
  let frame = top - 1;
  for (; frame >= firstFrame; frame--) {
    near = measure(frame, near);
    if (ratios[frame - firstFrame]! >= SURE_RATIO) sureFrame = frame;
    else if (frame < ridge.firstFrame - BEYOND_FRAMES && sureFrame - frame > DIP_FRAMES) break;
  }
  const from = frame + 1 - firstFrame;
  return {
    firstFrame: frame + 1,
    lastFrame,
    bins: bins.subarray(from),
    heights: heights.subarray(from),
    ratios: ratios.subarray(from),
  };
}

/** The greatest of each value and those within `reach` of it, in linear time (a queue that falls). */
function greatestNear(values: Float64Array, reach: number): Float64Array {
  const found = new Float64Array(values.length);
  const queue = new Int32Array(values.length);
  let head = 0;
  let tail = 0;
  for (let i = 0; i < values.length + reach; i++) {
    if (i < values.length) {
      while (tail > head && values[queue[tail - 1]!]! <= values[i]!) tail--;
      queue[tail++] = i;
    }
    const middle = i - reach;
    if (middle < 0) continue;
    while (queue[head]! < middle - reach) head++;
    found[middle] = values[queue[head]!]!;
  }
  return found;
}

/**
 * Whether the tone only sank between the end of a span and `to`, as with moving air or a gain that was turned down: its crests stay over a
 * third of the greater side. Between two blasts there are echoes at most, 12 dB down and more.
 */
function isWaver(heights: Float64Array, [from, last]: readonly [number, number], to: number): boolean {
  if (to - last > SUNK_FRAMES) return false;
  const crest = (first: number, end: number) => {
    let most = 0;
    for (let i = Math.max(0, first); i < Math.min(heights.length, end); i++)
      most = Math.max(most, heights[i]!);
    return most;
  };
  const greater = Math.max(crest(Math.max(from, last - 12), last + 1), crest(to, to + 12));
  for (let i = last + 1; i < to; i++) if (crest(i - 4, i + 5) < SUNK * greater) return false;
  return true;
}

/**
 * The stretches of a ridge where its tone stands above half of the greatest height about it; short dips do not part them. Other readings of the
 * same tone come after them.
 */
export function toneSpans(store: FrameStore, ridge: Ridge): ToneSpan[] {
  const whole = followed(store, ridge);
  const near = greatestNear(whole.heights, NEAR_FRAMES);
  const spans: [number, number][] = [];
  for (let i = 0; i < near.length; i++) {
    if (whole.heights[i]! < HALF * near[i]! || whole.ratios[i]! < SURE_RATIO) continue;
    const last = spans.at(-1);
    if (last !== undefined && (i - last[1] <= DIP_FRAMES || isWaver(whole.heights, last, i))) last[1] = i;
    else spans.push([i, i]);
  }
  return [...spans, ...otherReadings(whole, spans)]
    .filter(
      ([from, to]) =>
        to - from + 1 >= LEAST_FRAMES &&
        whole.firstFrame + to >= ridge.firstFrame &&
        whole.firstFrame + from <= ridge.lastFrame,
    )
    .map(([from, to]) => ({
      firstFrame: whole.firstFrame + from,
      lastFrame: whole.firstFrame + to,
      bins: whole.bins.slice(from, to + 1),
      heights: whole.heights.slice(from, to + 1),
      ratios: whole.ratios.slice(from, to + 1),
    }));
}

import type { ToneSpan } from './tone-spans.ts';

/** What is measured of how a tone's loudness and pitch sway within a span. */
export const SWAY_FEATURES = [
  'plateau',
  'lean',
  'riseShare',
  'fallShare',
  'quaver',
  'quaverTime',
  'swayTime',
  'together',
  'steady',
  'sunk',
  'longestDip',
  'deepestDip',
] as const;

/** Slower than this a sway is a bend: a ninth of a second each way, in frames. */
const SLOW_FRAMES = 14;
/** Periods of a sway in frames: 8 ms is 125 a second, 160 ms is 6. */
const PERIODS = [2, 40] as const;

/** A row less its running mean. */
function quick(values: ArrayLike<number>): Float64Array {
  const n = values.length;
  const left = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const from = Math.max(0, i - SLOW_FRAMES);
    const to = Math.min(n - 1, i + SLOW_FRAMES);
    let sum = 0;
    for (let k = from; k <= to; k++) sum += values[k]!;
    left[i] = values[i]! - sum / (to - from + 1);
  }
  return left;
}

const power = (row: Float64Array) => row.reduce((sum, x) => sum + x * x, 0) / Math.max(1, row.length);

/** How regularly a row comes back: the greatest of its autocorrelation after that has first crossed nought, 0 to 1. */
function regular(row: Float64Array): number {
  const whole = power(row) * row.length + 1e-12;
  let hasCrossed = false;
  let best = 0;
  for (let lag = PERIODS[0]; lag <= Math.min(PERIODS[1], row.length >> 1); lag++) {
    let sum = 0;
    for (let i = lag; i < row.length; i++) sum += row[i]! * row[i - lag]!;
    const share = (sum / whole) * (row.length / (row.length - lag));
    if (share < 0) hasCrossed = true;
    else if (hasCrossed) best = Math.max(best, share);
  }
  return Math.min(1, best);
}

/** Dips of a span's inside: the share of it under a quarter of its height, the longest under half of it, and how deep the deepest goes. */
function dips(core: Float64Array, height: number): [sunk: number, longest: number, deepest: number] {
  let [sunk, run, longest, least] = [0, 0, 0, Number.POSITIVE_INFINITY];
  for (let i = 0; i < core.length; i++) {
    if (core[i]! < 0.25 * height) sunk++;
    run = core[i]! < 0.5 * height ? run + 1 : 0;
    longest = Math.max(longest, run);
    if (i >= 2) least = Math.min(least, (core[i]! + core[i - 1]! + core[i - 2]!) / 3);
  }
  const deepest = Math.log10(Math.max(0.03, Math.min(1, least / height)));
  return [sunk / Math.max(1, core.length), Math.min(3, longest / 12), deepest];
}

/**
 * Figures of a span's sway, in the order of `SWAY_FEATURES`. A pea sways loudness and pitch together, a throat often one alone; breath that is
 * blown stands on a plateau with short ends, breath that is sung swells for a share of the note.
 */
export function swayFeatures(
  { heights, bins }: ToneSpan,
  middleBin: number,
  riseS: number,
  fallS: number,
  lastsS: number,
): Float64Array {
  const n = heights.length;
  const head = Math.min(5, n >> 3);
  const core = heights.subarray(head, n - head);
  const logs = Float64Array.from(core, (height) => Math.log(height + 1e-12));
  const pitches = Float64Array.from(bins.subarray(head, n - head), (bin) => Math.log(bin / middleBin));
  const loud = quick(logs);
  const high = quick(pitches);
  const sorted = Float64Array.from(heights).sort();
  const top = sorted[Math.round(0.9 * (n - 1))]! + 1e-30;
  let [over, sum, moment] = [0, 0, 0];
  heights.forEach((height, i) => {
    if (height > 0.7 * top) over++;
    sum += height;
    moment += height * i;
  });
  let both = 0;
  for (let i = 0; i < loud.length; i++) both += loud[i]! * high[i]!;
  both /= loud.length * Math.sqrt(power(loud) * power(high)) + 1e-12;
  const steps = Float64Array.from({ length: Math.max(1, pitches.length - 1) }, (_, i) =>
    Math.abs((pitches[i + 1] ?? 0) - pitches[i]!),
  ).sort();
  return Float64Array.of(
    over / n,
    Math.max(-1, Math.min(1, 4 * (moment / (sum + 1e-30) / Math.max(1, n - 1) - 0.5))),
    Math.log(0.02 + riseS / lastsS) + 2,
    Math.log(0.02 + fallS / lastsS) + 2,
    Math.min(2, Math.sqrt(power(loud)) / 0.3),
    regular(loud),
    regular(high),
    Math.max(-1, Math.min(1, both)),
    Math.log(0.0005 + steps[steps.length >> 1]!) + 6,
    ...dips(core, sorted[Math.round(0.7 * (n - 1))]! + 1e-30),
  );
}

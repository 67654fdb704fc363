import type { BlastEdges } from './blast-edges.ts';
import { SWAY_FEATURES, swayFeatures } from './blast-sway.ts';
import type { FrameStore } from './frame-store.ts';
import { BIN_HZ, BINS, HOP, HOP_S } from './listening-grid.ts';
import { createPowerSpectrum } from './power-spectrum.ts';
import type { ToneSpan } from './tone-spans.ts';

/** What is measured of a span alone, in units that keep near one. */
export const BLAST_FEATURES = [
  'length',
  'snr',
  'slope',
  'curve',
  'wobble',
  'headBend',
  'tailBend',
  'flat',
  'rise',
  'fall',
  'beat',
  'narrow',
  'line',
  'side',
  'second',
  'under',
  'lowRise',
  'lowLevel',
  'breath',
  'breathLevel',
  'rivals',
  'pitch',
  'bend',
  'breathLow',
  'breathHigh',
  'third',
  'ahead',
  'behind',
  ...SWAY_FEATURES,
] as const;

const CLOSE_UP = 1024;
const closeUp = createPowerSpectrum(CLOSE_UP);
const dB = (ratio: number) => 10 * Math.log10(Math.max(ratio, 1e-12));
const clip = (value: number, low: number, high: number) => Math.max(low, Math.min(high, value));

export function quantile(values: ArrayLike<number>, share: number): number {
  const sorted = Float64Array.from(values).sort();
  return sorted[Math.round(share * (sorted.length - 1))] ?? 0;
}

/** Weighted parabola through the pitch of a span's middle part: change, bend and what is left. */
function pitchShape(span: ToneSpan, middleBin: number) {
  const n = span.bins.length;
  const head = Math.min(6, Math.floor(n / 4));
  const tail = Math.min(4, Math.floor(n / 5));
  let [w0, w1, w2, w3, w4, y0, y1, y2] = [1e-9, 0, 1e-9, 0, 1e-9, 0, 0, 0];
  const from = head;
  const to = n - 1 - tail;
  const place = (i: number) => (2 * (i - from)) / Math.max(1, to - from) - 1;
  const top = quantile(span.heights, 0.7);
  const weight = (i: number) => Math.min(1, (span.heights[i]! / (top + 1e-30)) ** 2);
  const logPitch = (i: number) => Math.log(span.bins[i]! / middleBin);
  for (let i = from; i <= to; i++) {
    const [u, w, q] = [place(i), weight(i), logPitch(i)];
    w0 += w;
    w1 += w * u;
    w2 += w * u * u;
    w3 += w * u ** 3;
    w4 += w * u ** 4;
    y0 += w * q;
    y1 += w * q * u;
    y2 += w * q * u * u;
  }
  const det = w0 * (w2 * w4 - w3 * w3) - w1 * (w1 * w4 - w2 * w3) + w2 * (w1 * w3 - w2 * w2) + 1e-12;
  const a = (y0 * (w2 * w4 - w3 * w3) - w1 * (y1 * w4 - y2 * w3) + w2 * (y1 * w3 - y2 * w2)) / det;
  const b = (w0 * (y1 * w4 - y2 * w3) - y0 * (w1 * w4 - w2 * w3) + w2 * (w1 * y2 - w2 * y1)) / det;
  const c = (w0 * (w2 * y2 - w3 * y1) - w1 * (w1 * y2 - w2 * y1) + y0 * (w1 * w3 - w2 * w2)) / det;
  let rest = 0;
  for (let i = from; i <= to; i++) {
    const u = place(i);
    rest += weight(i) * (logPitch(i) - a - b * u - c * u * u) ** 2;
  }
  let headSum = 0;
  for (let i = 0; i < head; i++) headSum += logPitch(i);
  let tailSum = 0;
  for (let i = n - tail; i < n; i++) tailSum += logPitch(i);
  return {
    slope: 2 * b,
    curve: c,
    wobble: Math.sqrt(rest / w0),
    headBend: head > 0 ? headSum / head - (a - b + c) : 0,
    tailBend: tail > 0 ? tailSum / tail - (a + b + c) : 0,
  };
}

/** Mean power of bins over frames. */
function meanPower(store: FrameStore, [f0, f1]: [number, number], [b0, b1]: [number, number]): number {
  let sum = 0;
  let count = 0;
  for (let frame = Math.max(store.earliest, f0); frame <= Math.min(f1, store.made - 1); frame++) {
    for (let bin = Math.max(1, b0); bin <= Math.min(BINS - 1, b1); bin++) {
      sum += store.powerAt(frame, bin);
      count++;
    }
  }
  return count === 0 ? 0 : sum / count;
}

function meanFloor(store: FrameStore, f0: number, f1: number, bin: number): number {
  let sum = 0;
  let count = 0;
  for (let frame = Math.max(store.earliest, f0); frame <= Math.min(f1, store.made - 1); frame++) {
    sum += store.floorAt(frame, bin);
    count++;
  }
  return count === 0 ? 0 : sum / count;
}

/** How much of the tone's surroundings (12 % to each side) lies in one line of 64 ms, and the strongest other line there. */
function lineShape(store: FrameStore, span: ToneSpan, middleBin: number) {
  const middle = Math.round((span.firstFrame + span.lastFrame) / 2) * HOP;
  const samples = Float32Array.from({ length: CLOSE_UP }, (_, i) =>
    store.sampleAt(middle - CLOSE_UP / 2 + i),
  );
  const powers = new Float32Array(CLOSE_UP / 2);
  closeUp(samples, 0, powers);
  const fine = CLOSE_UP / 256;
  const from = Math.floor(middleBin * 0.88 * fine);
  const to = Math.min(powers.length - 2, Math.ceil(middleBin * 1.12 * fine));
  let top = from;
  let sum = 0;
  for (let k = from; k <= to; k++) {
    sum += powers[k]!;
    if (powers[k]! > powers[top]!) top = k;
  }
  let line = 0;
  for (let k = top - 2; k <= top + 2; k++) line += powers[k]!;
  let side = 0;
  for (let k = from; k <= to; k++) if (Math.abs(k - top) > 4) side = Math.max(side, powers[k]!);
  return { line: line / (sum + 1e-30), sideDb: dB(side / (powers[top]! + 1e-30)) };
}

/** Stands for a figure whose sound is not kept any more, or does not go on: nothing is there. */
const NOT_MEASURED = -4;

/** Figures of one span, in the order of `BLAST_FEATURES`. */
export function blastFeatures(store: FrameStore, span: ToneSpan, edges: BlastEdges): Float64Array {
  const { firstFrame: f0, lastFrame: f1, heights, ratios } = span;
  const lastsS = Math.max(0.01, edges.endS - edges.startS);
  const middleBin = quantile(span.bins, 0.5);
  const shape = pitchShape(span, middleBin);
  const top = quantile(heights, 0.9);
  const core = heights.subarray(Math.min(4, heights.length >> 2), Math.max(5, heights.length - 3));
  let flat = 0;
  for (const height of heights) if (height > 0.8 * top) flat++;
  const meanHeight = core.reduce((sum, x) => sum + x, 0) / core.length + 1e-30;
  let beat = 0;
  for (let i = 1; i < core.length; i++) beat += Math.abs(core[i]! - core[i - 1]!);
  beat /= core.length * meanHeight;
  const bin = Math.round(middleBin);
  const tone = meanPower(store, [f0, f1], [bin - 1, bin + 1]) + 1e-30;
  const wide = meanPower(store, [f0, f1], [bin - 6, bin + 6]) + 1e-30;
  const line = lineShape(store, span, middleBin);
  const outside: [number, number] = [f0 - 30, f0 - 8];
  const risen = (b0: number, b1: number) => {
    const inside = meanPower(store, [f0 + 2, f1 - 2], [b0, b1]);
    const before = meanPower(store, outside, [b0, b1]) + 1e-30;
    return { rise: dB(inside / before), level: dB(Math.max(0, inside - before) / tone) };
  };
  // Breath lies about the tone, 15 to 35 % off to each side, and goes with it.
  const aside = (from: number, to: number) =>
    clip(
      risen(Math.round(middleBin * from), Math.min(store.topBin, Math.round(middleBin * to))).rise / 10,
      -1,
      3,
    );
  const third =
    3 * middleBin < store.topBin ? risen(Math.round(3 * middleBin) - 1, Math.round(3 * middleBin) + 1) : null;
  const second =
    2 * middleBin < store.topBin ? risen(Math.round(2 * middleBin) - 1, Math.round(2 * middleBin) + 1) : null;
  let under = -60;
  for (const part of [1 / 3, 1 / 2, 2 / 3, 3 / 4]) {
    const at = Math.round(middleBin * part);
    const { rise, level } = risen(at - 1, at + 1);
    if (rise > 3) under = Math.max(under, level);
  }
  // What sounds at the same pitch just before and just after.
  const beside = (from: number, to: number) =>
    clip(dB(meanPower(store, [from, to], [bin - 1, bin + 1]) / tone) / 10, -4, 1);
  const low = risen(4, 20);
  const breathIn = meanFloor(store, f0 + 2, f1 - 2, bin);
  const breathOut =
    Math.min(
      meanFloor(store, f0 - 30, f0 - 8, bin),
      meanFloor(store, f1 + 8, f1 + 30, bin) || Number.POSITIVE_INFINITY,
    ) + 1e-30;
  // Other lines of the band as high over their floor as this one is, less 10 dB.
  let rivals = 0;
  const middleFrames: [number, number] = [Math.round((3 * f0 + f1) / 4), Math.round((f0 + 3 * f1) / 4)];
  const ownRatio = quantile(ratios, 0.6);
  for (let k = 12; k < store.topBin - 1; k += 1) {
    if (Math.abs(k - bin) < 7 || Math.abs(k - 2 * bin) < 5) continue;
    const power = meanPower(store, middleFrames, [k, k]);
    const floor = meanFloor(store, ...middleFrames, k) + 1e-30;
    rivals = Math.max(rivals, power / floor);
  }
  return Float64Array.of(
    Math.log(lastsS / 0.2),
    clip(dB(ownRatio) / 10, 0, 4) - 2,
    Math.min(3, Math.abs(shape.slope) / 0.04),
    Math.min(3, Math.abs(shape.curve) / 0.01),
    Math.min(3, shape.wobble / 0.01),
    clip(shape.headBend / 0.02, -3, 3),
    clip(shape.tailBend / 0.02, -3, 3),
    flat / heights.length,
    clip(edges.riseS / 0.02, 0, 3),
    clip(edges.fallS / 0.02, 0, 3),
    clip(beat / 0.1, 0, 3),
    clip(dB((3 * tone) / (13 * wide)) / 3, -3, 0),
    line.line,
    clip(line.sideDb / 10, -3, 0),
    second === null ? -3 : clip(second.level / 10, -4, 1),
    clip(under / 10, -4, 1),
    clip(low.rise / 10, -1, 3),
    clip(low.level / 10, -4, 1),
    clip(dB(breathIn / breathOut) / 10, -1, 3),
    clip(dB(Math.max(0, breathIn - breathOut) / tone) / 10, -5, 0),
    clip((dB(rivals) - dB(ownRatio)) / 10, -3, 1),
    Math.log((middleBin * BIN_HZ) / 3500),
    Math.min(3, Math.abs(shape.slope) / Math.max(0.05, (f1 - f0) * HOP_S) / 0.3),
    aside(0.65, 0.85),
    aside(1.15, 1.35),
    third === null ? -3 : clip(third.level / 10, -4, 1),
    beside(f0 - 12, f0 - 5),
    beside(f1 + 5, f1 + 12),
    ...swayFeatures(span, middleBin, edges.riseS, edges.fallS, lastsS),
  ).map((figure) => (Number.isFinite(figure) ? figure : NOT_MEASURED));
}

import { bandHz } from './background.ts';
import { banded } from './filters.ts';
import { spectrumOf } from './fourier.ts';
import type { Detector, Heard } from './recording.ts';
import { quantile } from './score.ts';

/** One frame's loudest tone. */
interface Peak {
  pitchHz: number;
  height: number;
}

const HOP_S = 0.004;
const TONE_OVER_MEDIAN_DB = 17;
const PITCH_STEP = 0.07;
const SHORTEST_S = 0.06;
const LONG_FROM_S = 0.35;
const STEADY_SPREAD = 0.03;
const CLICK_OVER_DB = 12;
const CLICK_FALL_DB = 8;
const RELEASE_WITHIN_S = 0.35;

/** The frames' peaks: where a bin of the band stands well above the median of its frame. */
function tonePeaks(samples: Float32Array, sampleRateHz: number): (Peak | null)[] {
  const size = 2 ** Math.round(Math.log2(0.022 * sampleRateHz));
  const hop = Math.round(HOP_S * sampleRateHz);
  const [lowHz, highHz] = bandHz(sampleRateHz);
  const first = Math.ceil((lowHz * size) / sampleRateHz);
  const last = Math.floor((highHz * size) / sampleRateHz);
  const frame = new Float64Array(size);
  const peaks: (Peak | null)[] = [];
  for (let at = -size / 2; at < samples.length - size / 2; at += hop) {
    for (let i = 0; i < size; i++) {
      frame[i] = (samples[at + i] ?? 0) * Math.sin((Math.PI * (i + 0.5)) / size) ** 2;
    }
    const { re, im } = spectrumOf(frame, size);
    const power = Array.from(
      { length: last - first + 1 },
      (_, k) => re[first + k]! ** 2 + im[first + k]! ** 2,
    );
    let best = 0;
    power.forEach((p, k) => {
      if (p > power[best]!) best = k;
    });
    const over = 10 * Math.log10((power[best]! + 1e-12) / (quantile(power, 0.5)! + 1e-12));
    const [below, at0, above] = [power[best - 1] ?? 0, power[best]!, power[best + 1] ?? 0].map((p) =>
      Math.log(p + 1e-20),
    );
    const lean = (0.5 * (below! - above!)) / Math.min(-1e-9, below! - 2 * at0! + above!);
    peaks.push(
      over < TONE_OVER_MEDIAN_DB
        ? null
        : { pitchHz: ((first + best + lean) * sampleRateHz) / size, height: Math.sqrt(power[best]!) },
    );
  }
  return peaks;
}

/** Runs of frames whose peak moves little from one to the next, two empty frames at most between. */
function ridges(peaks: readonly (Peak | null)[]): { from: number; peaks: (Peak | null)[] }[] {
  const found: { from: number; peaks: (Peak | null)[] }[] = [];
  let from = -1;
  let lastAt = -1;
  const close = () => {
    if (from >= 0) found.push({ from, peaks: peaks.slice(from, lastAt + 1) });
  };
  peaks.forEach((peak, at) => {
    if (peak === null) return;
    const before = from < 0 ? null : peaks[lastAt]!;
    if (
      before === null ||
      at - lastAt > 3 ||
      Math.abs(Math.log(peak.pitchHz / before.pitchHz)) > PITCH_STEP
    ) {
      close();
      from = at;
    }
    lastAt = at;
  });
  close();
  return found;
}

function blastOf(ridge: { from: number; peaks: (Peak | null)[] }): Heard['whistles'][number] | null {
  const heights = ridge.peaks.map((peak) => peak?.height ?? 0);
  const half = quantile(heights, 0.6)! / 2;
  const first = heights.findIndex((height) => height >= half);
  const last = heights.findLastIndex((height) => height >= half);
  const pitches = ridge.peaks
    .slice(first, last + 1)
    .flatMap((peak) => (peak === null ? [] : [Math.log(peak.pitchHz)]));
  const middle = quantile(pitches, 0.5)!;
  const spread = quantile(
    pitches.map((p) => Math.abs(p - middle)),
    0.75,
  )!;
  const lastsS = (last - first) * HOP_S;
  if (lastsS < SHORTEST_S || spread > STEADY_SPREAD) return null;
  const startS = (ridge.from + first) * HOP_S;
  return {
    startS,
    endS: startS + lastsS,
    kind: lastsS >= LONG_FROM_S ? 'long' : 'pip',
    pitchHz: Math.exp(middle),
  };
}

/** Sudden broad sounds that fall as quickly; what comes within a release's time of one is taken for its release. */
function clicksIn(samples: Float32Array, sampleRateHz: number): Heard['clicks'] {
  const band = banded(Float64Array.from(samples), 2000, bandHz(sampleRateHz)[1], sampleRateHz);
  const step = Math.round(0.002 * sampleRateHz);
  const levelsDb = Array.from({ length: Math.floor(band.length / step) }, (_, k) => {
    let sum = 0;
    for (let i = k * step; i < (k + 1) * step; i++) sum += band[i]! ** 2;
    return 10 * Math.log10(sum / step + 1e-12);
  });
  const clicks: Heard['clicks'] = [];
  for (let k = 12; k < levelsDb.length - 14; k++) {
    const before = quantile(levelsDb.slice(k - 12, k), 0.75)!;
    if (levelsDb[k]! < before + CLICK_OVER_DB) continue;
    const peak = Math.max(...levelsDb.slice(k, k + 3));
    const after = quantile(levelsDb.slice(k + 8, k + 14), 0.5)!;
    const timeS = (k * step) / sampleRateHz;
    if (peak - after < CLICK_FALL_DB || timeS - (clicks.at(-1)?.timeS ?? -1) < RELEASE_WITHIN_S) continue;
    clicks.push({ timeS });
  }
  return clicks;
}

/**
 * A plain detector to judge others by: the loudest tone of each frame followed while its pitch moves little, thresholds in place of learning.
 * It knows nothing of birds, echoes, gain control or the handler's own pitch.
 */
export const ridgeAndRules: Detector = (samples, sampleRateHz) => ({
  whistles: ridges(tonePeaks(samples, sampleRateHz)).flatMap((ridge) => blastOf(ridge) ?? []),
  clicks: clicksIn(samples, sampleRateHz),
});

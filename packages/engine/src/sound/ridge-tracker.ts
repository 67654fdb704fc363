import type { FrameStore } from './frame-store.ts';
import { BAND_HZ, BIN_HZ } from './listening-grid.ts';

/** A tone that was followed from frame to frame. */
export interface Ridge {
  firstFrame: number;
  lastFrame: number;
  /** Frames in which it stood over the noise. */
  hits: number;
  /** Pitch in the frame where it stood highest, in bins, and that height over the floor as a ratio of power. */
  topFrame: number;
  topBin: number;
  topRatio: number;
  lastBin: number;
}

/** A new tone stands 12 dB over the median of the noise, one that is followed 8 dB (our judgement, 2026). */
const NEW_RATIO = 10 ** 1.2;
const FOLLOWED_RATIO = 10 ** 0.8;
/** From one frame to the next a pitch moves 140 Hz at most: a pea's trill does not move faster. */
const MOST_MOVE_BINS = 2.3;
const MOST_AT_ONCE = 20;
const MISSED_FRAMES = 9;
const LEAST_HITS = 8;
/** No blast lasts 5 s: what does is closed, and is no blast. */
export const LONGEST_FRAMES = 1250;

/** Follows tones through the frames of a store; `onRidge` is given each one that ends. */
export function createRidgeTracker(store: FrameStore, onRidge: (ridge: Ridge) => void) {
  let active: Ridge[] = [];
  const first = BAND_HZ[0] / BIN_HZ;

  function close(ridge: Ridge): void {
    if (ridge.hits >= LEAST_HITS) onRidge(ridge);
  }

  /** The nearest tone that was followed up to here and has no peak of this frame yet. */
  function nearest(bin: number, frame: number): Ridge | undefined {
    let best: Ridge | undefined;
    let least = MOST_MOVE_BINS;
    for (const ridge of active) {
      if (ridge.lastFrame === frame) continue;
      const away = Math.abs(ridge.lastBin - bin);
      if (away < least) {
        best = ridge;
        least = away;
      }
    }
    return best;
  }

  function step(frame: number): void {
    const peaks: { bin: number; ratio: number }[] = [];
    for (let bin = first; bin < store.topBin; bin++) {
      const power = store.powerAt(frame, bin);
      if (power < store.powerAt(frame, bin - 1) || power <= store.powerAt(frame, bin + 1)) continue;
      const ratio = power / store.floorAt(frame, bin);
      if (ratio >= FOLLOWED_RATIO) peaks.push({ bin: store.peakBin(frame, bin), ratio });
    }
    peaks.sort((a, b) => b.ratio - a.ratio);
    for (const { bin, ratio } of peaks) {
      const ridge = nearest(bin, frame);
      if (ridge !== undefined) {
        ridge.lastFrame = frame;
        ridge.lastBin = bin;
        ridge.hits++;
        if (ratio > ridge.topRatio) Object.assign(ridge, { topFrame: frame, topBin: bin, topRatio: ratio });
      } else if (ratio >= NEW_RATIO && active.length < MOST_AT_ONCE) {
        const at = { firstFrame: frame, lastFrame: frame, topFrame: frame };
        active.push({ ...at, hits: 1, topBin: bin, topRatio: ratio, lastBin: bin });
      }
    }
    const isOver = ({ firstFrame, lastFrame }: Ridge) =>
      frame - lastFrame > MISSED_FRAMES || frame - firstFrame > LONGEST_FRAMES;
    if (!active.some(isOver)) return;
    for (const ridge of active) if (isOver(ridge)) close(ridge);
    active = active.filter((ridge) => !isOver(ridge));
  }

  return {
    step,
    finish() {
      active.forEach(close);
      active = [];
    },
  };
}

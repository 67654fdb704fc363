import { type BlastCandidate, WAIT_S } from './blast-context.ts';
import { blastEdges } from './blast-edges.ts';
import { blastFeatures, quantile } from './blast-features.ts';
import { MEMORY_S } from './blast-memory.ts';
import type { FrameStore } from './frame-store.ts';
import { BIN_HZ, HOP_S } from './listening-grid.ts';
import { createRidgeTracker, LONGEST_FRAMES, type Ridge } from './ridge-tracker.ts';
import { BEYOND_FRAMES, type ToneSpan, toneSpans } from './tone-spans.ts';

/** Two spans are one sound when they share more than half of the shorter and their pitches lie within 13 %: a whistle of two chambers. */
const SHARED = 0.5;
const TWO_CHAMBERS = Math.log(1.13);
/** So they are up to a third apart when they also begin and end together, as two mouths never do. */
const TOGETHER_S = 0.025;
const FAR_CHAMBERS = Math.log(1.33);

/** A candidate whose company is known, ready to be judged, with all that was found about it and in the half minute before. */
export type OnCandidate = (candidate: BlastCandidate, all: readonly BlastCandidate[]) => void;

/** Finds what may be blasts as frames come; each is handed on when what follows it is known too. */
export function createBlastHearing(
  store: FrameStore,
  scoreAlone: (own: Float64Array) => number,
  onCandidate: OnCandidate,
) {
  let waiting: Ridge[] = [];
  let undecided: BlastCandidate[] = [];
  let recent: BlastCandidate[] = [];
  const tracker = createRidgeTracker(store, (ridge) => {
    if (ridge.lastFrame - ridge.firstFrame < LONGEST_FRAMES) waiting.push(ridge);
  });

  function candidateOf(span: ToneSpan): BlastCandidate {
    const edges = blastEdges(store, span);
    const own = blastFeatures(store, span, edges);
    return {
      startS: edges.startS,
      endS: edges.endS,
      pitchHz: quantile(span.bins, 0.5) * BIN_HZ,
      levelDb: 20 * Math.log10(quantile(span.heights, 0.8) + 1e-12),
      own,
      alone: scoreAlone(own),
    };
  }

  /** Adds a candidate unless a louder one is the same sound. */
  function add(one: BlastCandidate): void {
    if (one.endS - one.startS < 0.03) return;
    const isSame = (other: BlastCandidate) => {
      const shared = Math.min(one.endS, other.endS) - Math.max(one.startS, other.startS);
      const shorter = Math.min(one.endS - one.startS, other.endS - other.startS);
      const isTogether =
        Math.abs(one.startS - other.startS) < TOGETHER_S && Math.abs(one.endS - other.endS) < TOGETHER_S;
      const away = Math.abs(Math.log(one.pitchHz / other.pitchHz));
      return shared > SHARED * shorter && away < (isTogether ? FAR_CHAMBERS : TWO_CHAMBERS);
    };
    const weight = ({ levelDb, startS, endS }: BlastCandidate) => levelDb + 20 * Math.log10(endS - startS);
    const same = undecided.filter(isSame);
    if (same.some((other) => weight(other) >= weight(one))) return;
    const isKept = (other: BlastCandidate) => !same.includes(other);
    undecided = [...undecided.filter(isKept), one];
    recent = [...recent.filter(isKept), one];
  }

  function form(isEnd: boolean): void {
    const isReady = ({ lastFrame }: Ridge) => isEnd || store.made > lastFrame + BEYOND_FRAMES + 20;
    if (!waiting.some(isReady)) return;
    const ready = waiting.filter(isReady);
    waiting = waiting.filter((ridge) => !isReady(ridge));
    for (const ridge of ready) for (const span of toneSpans(store, ridge)) add(candidateOf(span));
  }

  function decide(nowS: number): void {
    const isReady = ({ endS }: BlastCandidate) => nowS > endS + WAIT_S + 1;
    if (!undecided.some(isReady)) return;
    const ready = undecided.filter(isReady).sort((a, b) => a.startS - b.startS);
    undecided = undecided.filter((one) => !isReady(one));
    for (const one of ready) onCandidate(one, recent);
    const firstS = Math.min(...undecided.map(({ startS }) => startS), nowS) - MEMORY_S - 6;
    recent = recent.filter(({ endS }) => endS > firstS);
  }

  return {
    step(frame: number): void {
      tracker.step(frame);
      form(false);
      decide(frame * HOP_S);
    },
    finish(): void {
      tracker.finish();
      form(true);
      decide(Number.POSITIVE_INFINITY);
    },
  };
}

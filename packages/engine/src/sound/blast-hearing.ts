import { isAlternative } from './alternatives.ts';
import { AFTER_S, type BlastCandidate } from './blast-context.ts';
import { blastEdges } from './blast-edges.ts';
import { blastFeatures, quantile } from './blast-features.ts';
import { MEMORY_S } from './blast-memory.ts';
import type { FrameStore } from './frame-store.ts';
import { BIN_HZ, HOP_S } from './listening-grid.ts';
import { createRidgeTracker, LONGEST_FRAMES, type Ridge } from './ridge-tracker.ts';
import { BEYOND_FRAMES, type ToneSpan, toneSpans } from './tone-spans.ts';

/** Two readings are the same when they begin and end together; so are two chambers, up to a third apart in pitch, as two mouths never do. */
const TOGETHER_S = 0.025;
const FAR_CHAMBERS = Math.log(1.33);
const SHORTEST_S = 0.03;
/** What is ready is judged together, twice a second. */
const JUDGED_EVERY_FRAMES = 125;

/** Candidates whose company is known, ready to be judged, with all that were found about them and in the half minute before. */
export type OnCandidates = (ready: readonly BlastCandidate[], all: readonly BlastCandidate[]) => void;

/** Finds what may be blasts as frames come; each is handed on when what follows it is known too, with the other readings of it that are ready. */
export function createBlastHearing(
  store: FrameStore,
  scoreAlone: (own: Float64Array) => number,
  onCandidates: OnCandidates,
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

  /** Adds a candidate unless a louder one is the same reading. */
  function add(one: BlastCandidate): void {
    if (one.endS - one.startS < SHORTEST_S) return;
    const isSame = (other: BlastCandidate) =>
      Math.abs(one.startS - other.startS) < TOGETHER_S &&
      Math.abs(one.endS - other.endS) < TOGETHER_S &&
      Math.abs(Math.log(one.pitchHz / other.pitchHz)) < FAR_CHAMBERS;
    const same = undecided.filter(isSame);
    if (same.some(({ levelDb }) => levelDb >= one.levelDb)) return;
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
    const isOver = ({ endS }: BlastCandidate) => nowS > endS + AFTER_S + 1;
    const isReady = (one: BlastCandidate) =>
      isOver(one) && undecided.every((other) => isOver(other) || !isAlternative(one, other));
    const ready = undecided.filter(isReady);
    if (ready.length === 0) return;
    undecided = undecided.filter((one) => !ready.includes(one));
    onCandidates(ready, recent);
    const firstS = Math.min(...undecided.map(({ startS }) => startS), nowS) - MEMORY_S - 6;
    recent = recent.filter(({ endS }) => endS > firstS);
  }

  return {
    step(frame: number): void {
      tracker.step(frame);
      form(false);
      if (frame % JUDGED_EVERY_FRAMES === 0) decide(frame * HOP_S);
    },
    finish(): void {
      tracker.finish();
      form(true);
      decide(Number.POSITIVE_INFINITY);
    },
  };
}

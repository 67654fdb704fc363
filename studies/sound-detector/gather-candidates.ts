import type { BlastCandidate } from '../../packages/engine/src/sound/blast-context.ts';
import { createBlastHearing } from '../../packages/engine/src/sound/blast-hearing.ts';
import { createClickHearing } from '../../packages/engine/src/sound/click-hearing.ts';
import { FrameStore } from '../../packages/engine/src/sound/frame-store.ts';
import { bandTopHz } from '../../packages/engine/src/sound/listening-grid.ts';
import { createResampler } from '../../packages/engine/src/sound/resampler.ts';
import type { Disturbed, Recording } from '../sound/recording.ts';
import { WITHIN_S } from '../sound/score.ts';

/** One candidate as the detector measured it, and whether it is what is looked for. */
export interface Labelled {
  figures: Float64Array;
  isReal: boolean;
}

/** What the truth says of a candidate; `unasked` lies below the judged ratio and teaches neither way. */
export type Label = 'real' | 'none' | 'unasked';

/** A tone with those that the detector had about it when it judged, and what else was sounding. */
export interface LabelledTone {
  candidate: BlastCandidate;
  all: readonly BlastCandidate[];
  label: Label;
  kinds: readonly string[];
}

interface Found {
  startS: number;
  label: Label | null;
}
type FoundTone = Found & { candidate: BlastCandidate; all: readonly BlastCandidate[] };
type FoundClick = Found & { figures: Float64Array };

/** A second chamber lies up to 16 % off the first. */
const SAME_PITCH = 0.16;
/** A release comes up to 0.3 s after its press. */
const RELEASE_S = 0.35;

function heardCandidates({ samples, sampleRateHz }: Recording) {
  const store = new FrameStore(bandTopHz(sampleRateHz));
  const tones: FoundTone[] = [];
  const clicks: FoundClick[] = [];
  const blastHearing = createBlastHearing(
    store,
    () => 0,
    (candidate, all) => {
      tones.push({ startS: candidate.startS, candidate, all: [...all], label: null });
    },
  );
  const clickHearing = createClickHearing(store, ({ timeS, own }, company) => {
    clicks.push({ startS: timeS, figures: Float64Array.of(...own, ...company), label: null });
  });
  const resampler = createResampler(sampleRateHz, (part) => {
    for (const sample of part) {
      clickHearing.take(sample);
      if (store.take(sample)) blastHearing.step(store.made - 1);
    }
  });
  resampler.push(samples);
  resampler.finish();
  blastHearing.finish();
  clickHearing.finish();
  return { tones, clicks };
}

/** The nearest candidate without a label within the judged tolerance. */
function nearest<T extends Found>(
  found: readonly T[],
  atS: number,
  fits: (one: T) => boolean,
): T | undefined {
  return found
    .filter((one) => one.label === null && Math.abs(one.startS - atS) <= WITHIN_S && fits(one))
    .sort((a, b) => Math.abs(a.startS - atS) - Math.abs(b.startS - atS))[0];
}

const soundingAt = (disturbed: readonly Disturbed[], atS: number) =>
  disturbed.filter(({ startS, endS }) => atS > startS - WITHIN_S && atS < endS).map(({ kind }) => kind);

/** All that the detector measures in a recording, labelled by its truth. */
export function gatherCandidates(recording: Recording, lowestDb: number) {
  const { tones, clicks } = heardCandidates(recording);
  const { truth, disturbed } = recording;
  for (const { startS, pitchHz, inBandSnrDb } of truth.whistles) {
    const isPitch = ({ candidate }: FoundTone) =>
      Math.abs(Math.log(candidate.pitchHz / pitchHz)) < SAME_PITCH;
    const one = nearest(tones, startS, isPitch);
    if (one !== undefined) one.label = inBandSnrDb >= lowestDb ? 'real' : 'unasked';
  }
  for (const one of tones) {
    const isIn = truth.whistles.some(
      ({ startS, endS, inBandSnrDb }) =>
        inBandSnrDb < lowestDb && one.startS > startS - WITHIN_S && one.startS < endS + WITHIN_S,
    );
    one.label ??= isIn ? 'unasked' : 'none';
  }
  for (const { timeS, snrDb } of truth.clicks) {
    const one = nearest(clicks, timeS, () => true);
    const isAsked = snrDb >= lowestDb;
    if (one !== undefined) one.label = isAsked ? 'real' : 'unasked';
    if (isAsked) continue;
    for (const other of clicks) {
      const isNear = other.startS > timeS - WITHIN_S && other.startS < timeS + RELEASE_S;
      if (isNear) other.label ??= 'unasked';
    }
  }
  const asked = truth.whistles.filter(({ inBandSnrDb }) => inBandSnrDb >= lowestDb).length;
  return {
    asked,
    tones: tones.map(
      ({ candidate, all, label, startS }): LabelledTone => ({
        candidate,
        all,
        label: label ?? 'none',
        kinds: soundingAt(disturbed, startS),
      }),
    ),
    clicks: clicks
      .filter(({ label }) => label !== 'unasked')
      .map(({ figures, label }): Labelled => ({ figures, isReal: label === 'real' })),
  };
}

import { createBlastHearing } from '../../packages/engine/src/sound/blast-hearing.ts';
import { createClickHearing } from '../../packages/engine/src/sound/click-hearing.ts';
import { FrameStore } from '../../packages/engine/src/sound/frame-store.ts';
import { bandTopHz } from '../../packages/engine/src/sound/listening-grid.ts';
import { createResampler } from '../../packages/engine/src/sound/resampler.ts';
import type { Recording } from '../sound/recording.ts';
import { WITHIN_S } from '../sound/score.ts';

/** One candidate as the detector measured it, and whether it is what is looked for. */
export interface Labelled {
  figures: Float64Array;
  isReal: boolean;
}

interface Found {
  startS: number;
  pitchHz: number;
  figures: Float64Array;
  label: 'real' | 'none' | 'unasked' | null;
}

/** A second chamber lies up to 11 % off the first. */
const SAME_PITCH = 0.15;
/** A release comes up to 0.3 s after its press. */
const RELEASE_S = 0.35;

function heardCandidates({ samples, sampleRateHz }: Recording) {
  const store = new FrameStore(bandTopHz(sampleRateHz));
  const blasts: Found[] = [];
  const clicks: Found[] = [];
  const blastHearing = createBlastHearing(store, ({ startS, pitchHz, own }, context) => {
    blasts.push({ startS, pitchHz, figures: Float64Array.of(...own, ...context), label: null });
  });
  const clickHearing = createClickHearing(store, ({ timeS, own }, company) => {
    clicks.push({ startS: timeS, pitchHz: 0, figures: Float64Array.of(...own, ...company), label: null });
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
  return { blasts, clicks };
}

/** The nearest candidate without a label within the judged tolerance. */
function nearest(found: readonly Found[], atS: number, fits: (one: Found) => boolean): Found | undefined {
  return found
    .filter((one) => one.label === null && Math.abs(one.startS - atS) <= WITHIN_S && fits(one))
    .sort((a, b) => Math.abs(a.startS - atS) - Math.abs(b.startS - atS))[0];
}

const labelled = (found: readonly Found[]): Labelled[] =>
  found
    .filter(({ label }) => label !== 'unasked')
    .map(({ figures, label }) => ({ figures, isReal: label === 'real' }));

/** All that the detector measures in a recording, labelled by its truth; what lies below the judged ratio teaches neither way. */
export function gatherCandidates(recording: Recording, lowestDb: number) {
  const { blasts, clicks } = heardCandidates(recording);
  const { truth } = recording;
  for (const { startS, pitchHz, inBandSnrDb } of truth.whistles) {
    const isPitch = (one: Found) => Math.abs(Math.log(one.pitchHz / pitchHz)) < SAME_PITCH;
    const one = nearest(blasts, startS, isPitch);
    if (one !== undefined) one.label = inBandSnrDb >= lowestDb ? 'real' : 'unasked';
  }
  for (const one of blasts) {
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
  return { blasts: labelled(blasts), clicks: labelled(clicks) };
}

import type { BlastCandidate } from '../../packages/engine/src/sound/blast-context.ts';
import { createBlastHearing } from '../../packages/engine/src/sound/blast-hearing.ts';
import { createClickHearing } from '../../packages/engine/src/sound/click-hearing.ts';
import { FrameStore } from '../../packages/engine/src/sound/frame-store.ts';
import { bandTopHz } from '../../packages/engine/src/sound/listening-grid.ts';
import { createResampler } from '../../packages/engine/src/sound/resampler.ts';
import type { Recording } from '../sound/recording.ts';
import { type FoundClick, type Labelled, labelClicks, labelTones } from './label-candidates.ts';

/** All tones and clicks that the ear measures, before any is judged. */
function heardCandidates({ samples, sampleRateHz }: Recording) {
  const store = new FrameStore(bandTopHz(sampleRateHz));
  const tones: BlastCandidate[] = [];
  const clicks: FoundClick[] = [];
  const blastHearing = createBlastHearing(
    store,
    () => 0,
    (ready) => {
      tones.push(...ready);
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

/** All that the detector measures in a recording, labelled by its truth. */
export function gatherCandidates(recording: Recording, lowestDb: number) {
  const { tones, clicks } = heardCandidates(recording);
  const { truth } = recording;
  labelClicks(clicks, truth, lowestDb);
  return {
    asked: truth.whistles.filter(({ inBandSnrDb }) => inBandSnrDb >= lowestDb).length,
    tones: labelTones(tones, recording, lowestDb),
    clicks: clicks
      .filter(({ label }) => label !== 'unasked')
      .map(({ figures, label }): Labelled => ({ figures, isReal: label === 'real' })),
  };
}

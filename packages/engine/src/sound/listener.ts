import { BLAST_ALONE_NUMBERS } from './blast-alone-numbers.ts';
import { createBlastChoice } from './blast-choice.ts';
import { createBlastHearing } from './blast-hearing.ts';
import { BLAST_NUMBERS } from './blast-numbers.ts';
import { BLAST_WHOLE_NUMBERS } from './blast-whole-numbers.ts';
import { createClickHearing, RELEASE_S } from './click-hearing.ts';
import { CLICK_NUMBERS } from './click-numbers.ts';
import { FrameStore } from './frame-store.ts';
import { createScore } from './learned-score.ts';
import { bandTopHz } from './listening-grid.ts';
import { isOwn, type OwnWhistle } from './own-whistle.ts';
import { createResampler } from './resampler.ts';

/** One blast that was heard; times are of half height, from the beginning of the sound. */
export interface HeardBlast {
  startS: number;
  endS: number;
  kind: 'long' | 'pip';
  pitchHz: number;
  /** How surely it is a blast, 0.5 to 1, as the score says; on made sound. */
  sureness: number;
  /** Null when the own whistle is not known. */
  whose: 'own' | 'other' | null;
}

/** One click that was heard, at the press. */
export interface HeardClick {
  timeS: number;
  sureness: number;
}

/** What was decided since the last time, each list by time. */
export interface HeardSounds {
  whistles: HeardBlast[];
  clicks: HeardClick[];
}

/** A blast of 0.35 s and longer is a long one (common practice, no source). */
const LONG_FROM_S = 0.35;

const aloneScore = createScore(BLAST_ALONE_NUMBERS);
const clickScore = createScore(CLICK_NUMBERS);
const sureness = (logOdds: number) => 1 / (1 + Math.exp(-logOdds));
/** Likelier than not: on recordings left out F is near its highest there, with the false blasts that are asked for (`studies/sound-detector.ts --judge`). */
const BLAST_LOG_ODDS = 0;
const CLICK_LOG_ODDS = 0;

/**
 * Hears whistle blasts and clicks in a stream of samples. What is heard comes five to six seconds late, when its company is known; the memory does
 * not grow with the sound. However the stream is cut, the same is heard. Where it holds and where not is told in docs/listening.md.
 * @throws RangeError unless the rate is a whole number from 8,000 to 192,000
 */
export function createListener({
  sampleRateHz,
  own = null,
}: {
  sampleRateHz: number;
  own?: OwnWhistle | null;
}) {
  const store = new FrameStore(bandTopHz(sampleRateHz));
  let heard: HeardSounds = { whistles: [], clicks: [] };
  let lastClickS = Number.NEGATIVE_INFINITY;

  const scores = { score: createScore(BLAST_NUMBERS), wholeScore: createScore(BLAST_WHOLE_NUMBERS) };
  const choose = createBlastChoice(scores, own, BLAST_LOG_ODDS);
  const blasts = createBlastHearing(store, aloneScore, (ready, all) => {
    for (const { startS, endS, pitchHz, logOdds } of choose(ready, all)) {
      heard.whistles.push({
        startS: Math.max(0, startS),
        endS,
        kind: endS - startS >= LONG_FROM_S ? 'long' : 'pip',
        pitchHz,
        sureness: sureness(logOdds),
        whose: own === null ? null : isOwn(own, pitchHz) ? 'own' : 'other',
      });
    }
  });
  const clicks = createClickHearing(store, ({ timeS, own: figures }, company) => {
    // What comes within a release's time of a press is its release.
    if (timeS - lastClickS < RELEASE_S[1]) return;
    const logOdds = clickScore(Float64Array.of(...figures, ...company));
    if (!(logOdds > CLICK_LOG_ODDS)) return;
    lastClickS = timeS;
    heard.clicks.push({ timeS, sureness: sureness(logOdds) });
  });
  const resampler = createResampler(sampleRateHz, (samples) => {
    for (const sample of samples) {
      // What is no number is silence: one such sample must not silence all that follows.
      const value = Number.isFinite(sample) ? sample : 0;
      clicks.take(value);
      if (store.take(value)) blasts.step(store.made - 1);
    }
  });

  function taken(): HeardSounds {
    const found = heard;
    heard = { whistles: [], clicks: [] };
    found.whistles.sort((a, b) => a.startS - b.startS);
    return found;
  }

  return {
    /** Takes the next samples, any number of them, full scale at 1. */
    push(samples: Float32Array): HeardSounds {
      resampler.push(samples);
      return taken();
    },
    /** Says what was still waiting; nothing is pushed after it. */
    finish(): HeardSounds {
      resampler.finish();
      blasts.finish();
      clicks.finish();
      return taken();
    },
  };
}

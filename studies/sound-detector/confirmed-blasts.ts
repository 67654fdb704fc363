import { learnOwnWhistle, type OwnWhistle } from '@sedgeline/engine/sound';
import { diceNamed } from '../careers/dice.ts';
import type { Recording, Truth } from '../sound/recording.ts';
import { WITHIN_S } from '../sound/score.ts';
import { engineEar } from './engine-ear.ts';
import type { LabelledTone } from './label-candidates.ts';

/** How many blasts a handler is taken to confirm before a recording is heard again. */
const CONFIRMED = 3;
/** One whistle's blasts lie some thousandths apart. */
const APART = 0.005;
const PITCH_HZ = [2000, 5800] as const;

/**
 * The own whistle of a recording as its handler would teach it: the pitches of the first three blasts that the ear heard and that were the
 * handler's. Where the handler blew none, a whistle of some pitch, confirmed elsewhere.
 */
export function confirmedWhistle({ samples, sampleRateHz, truth }: Recording): OwnWhistle | null {
  if (truth.whistles.length === 0) {
    const hz = diceNamed(`own whistle ${samples.length} ${samples[1000]}`).between(...PITCH_HZ);
    return learnOwnWhistle([hz * (1 - APART), hz, hz * (1 + APART)]);
  }
  const own = truth.whistles.filter(({ whose }) => whose === 'own');
  const isOwn = (startS: number) => own.some((blast) => Math.abs(blast.startS - startS) < WITHIN_S);
  const heard = engineEar(samples, sampleRateHz).whistles.filter(({ startS }) => isOwn(startS));
  return learnOwnWhistle(heard.slice(0, CONFIRMED).map(({ pitchHz }) => pitchHz));
}

/** The own whistle that a handler would confirm of these tones, for teaching: its first three, or one of some pitch. */
export function taughtWhistle(tones: readonly LabelledTone[], name: string): OwnWhistle {
  const own = tones
    .filter(({ label, isOthers }) => label === 'real' && !isOthers)
    .map(({ candidate }) => candidate)
    .sort((a, b) => a.startS - b.startS)
    .slice(0, CONFIRMED)
    .map(({ pitchHz }) => pitchHz);
  return learnOwnWhistle(own.length > 0 ? own : [diceNamed(`own whistle ${name}`).between(...PITCH_HZ)])!;
}

/** The truth where only the handler's own blasts are asked for: another's counts neither way. */
export const onlyOwn = ({ whistles, clicks }: Truth): Truth => ({
  whistles: whistles.map((blast) =>
    blast.whose === 'own' ? blast : { ...blast, inBandSnrDb: Number.NEGATIVE_INFINITY },
  ),
  clicks,
});

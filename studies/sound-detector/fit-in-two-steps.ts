import { likeliestReadings } from '../../packages/engine/src/sound/alternatives.ts';
import { blastFigures } from '../../packages/engine/src/sound/blast-choice.ts';
import { createScore, type ScoreNumbers } from '../../packages/engine/src/sound/learned-score.ts';
import type { OwnWhistle } from '../../packages/engine/src/sound/own-whistle.ts';
import { diceNamed } from '../careers/dice.ts';
import { fitScore } from './fit-score.ts';
import type { Labelled, LabelledTone } from './label-candidates.ts';

/** The tones of one recording, and the whistle that its handler may have confirmed. */
export interface TaughtRecording {
  tones: readonly LabelledTone[];
  own: OwnWhistle;
}
export type Taught = readonly TaughtRecording[];

const HIDDEN = { alone: 12, together: 24, whole: 8 };
/** The score of a tone alone is told to the second step by numbers from other recordings, a quarter being left out each time. */
const PARTS = 4;
/** Of the tones that are plainly none when heard alone, the second step is taught some only. */
const PLAINLY_NONE = -5;
const SHARE_OF_PLAIN = 0.08;

/**
 * What begins with a blast and ends elsewhere teaches neither way whether there is one: taught as none it takes from what is right, taught as one it
 * teaches what comes after. Nor does what lies below the judged ratio.
 */
const isBlast = ({ label }: LabelledTone) => label === 'real' || label === 'double';
const isAsked = (tone: LabelledTone) => isBlast(tone) || tone.label === 'none';

/** Sets how like a blast each tone looks alone. */
export function tellAlone(tones: Iterable<LabelledTone>, numbers: ScoreNumbers): void {
  const score = createScore(numbers);
  for (const { candidate } of tones) candidate.alone = score(candidate.own);
}

/** The figures of some tones of a recording with their company, heard by someone who knows the own whistle or does not. */
function figuresTogether(
  { tones, own }: TaughtRecording,
  isKnown: boolean,
  isTaught: (tone: LabelledTone) => boolean,
) {
  const all = tones.map(({ candidate }) => candidate);
  const likeliest = likeliestReadings(all);
  return tones
    .filter(isTaught)
    .map((tone) => ({ tone, figures: blastFigures(tone.candidate, all, likeliest, isKnown ? own : null) }));
}

/**
 * Fits the scores of a blast: from a tone alone, and from a tone with its company, which is told how like blasts they look alone. What the
 * first step says of what it was fitted to flatters, so the second is taught by what it says of recordings that it has not seen. Both ask whether
 * a blast begins there; a third score tells among those that do which is the whole of one. `teaches` leaves single tones out; those stay company.
 */
export function fitInTwoSteps(
  taught: Taught,
  name: string,
  teaches: (tone: LabelledTone) => boolean = () => true,
) {
  const alone = (recordings: Taught, part: string) =>
    fitScore(
      recordings
        .flatMap(({ tones }) => tones)
        .filter((tone) => isAsked(tone) && teaches(tone))
        .map((tone) => ({ figures: tone.candidate.own, isReal: isBlast(tone) })),
      HIDDEN.alone,
      diceNamed(`${name} alone ${part}`),
    );
  for (let part = 0; part < PARTS; part++) {
    const numbers = alone(
      taught.filter((_, k) => k % PARTS !== part),
      `${part}`,
    );
    taught.forEach(({ tones }, k) => {
      if (k % PARTS === part) tellAlone(tones, numbers);
    });
  }
  const dice = diceNamed(`${name} plainly none`);
  const isTaught = (tone: LabelledTone) =>
    tone.label !== 'unasked' &&
    teaches(tone) &&
    (tone.label !== 'none' || tone.candidate.alone > PLAINLY_NONE || dice.chance(SHARE_OF_PLAIN));
  const rows = taught.flatMap((recording) =>
    [false, true].flatMap((isKnown) => figuresTogether(recording, isKnown, isTaught)),
  );
  const together = fitScore(
    rows
      .filter(({ tone }) => isAsked(tone))
      .map(({ tone, figures }): Labelled => ({ figures, isReal: isBlast(tone) })),
    HIDDEN.together,
    diceNamed(`${name} together`),
  );
  const whole = fitScore(
    rows
      .filter(({ tone }) => tone.label === 'real' || tone.label === 'begun')
      .map(({ tone, figures }): Labelled => ({ figures, isReal: tone.label === 'real' })),
    HIDDEN.whole,
    diceNamed(`${name} whole`),
  );
  return { alone: alone(taught, 'all'), together, whole };
}

import { likeliestReadings } from '../../packages/engine/src/sound/alternatives.ts';
import { blastFigures } from '../../packages/engine/src/sound/blast-choice.ts';
import { createScore, type ScoreNumbers } from '../../packages/engine/src/sound/learned-score.ts';
import type { OwnWhistle } from '../../packages/engine/src/sound/own-whistle.ts';
import { type Dice, diceNamed } from '../careers/dice.ts';
import { fitScore } from './fit-score.ts';
import type { Labelled, LabelledTone } from './gather-candidates.ts';

/** The tones of one recording, and the whistle that its handler may have confirmed. */
export interface TaughtRecording {
  tones: readonly LabelledTone[];
  own: OwnWhistle;
}
export type Taught = readonly TaughtRecording[];

const HIDDEN = { alone: 12, together: 24 };
/** The score of a tone alone is told to the second step by numbers from other recordings, a quarter being left out each time. */
const PARTS = 4;
/** Of the tones that are plainly none when heard alone, the second step is taught some only. */
const PLAINLY_NONE = -5;
const SHARE_OF_PLAIN = 0.15;

/** Sets how like a blast each tone looks alone. */
export function tellAlone(tones: Iterable<LabelledTone>, numbers: ScoreNumbers): void {
  const score = createScore(numbers);
  for (const { candidate } of tones) candidate.alone = score(candidate.own);
}

/** The second step's rows of one recording, heard by someone who knows the own whistle or does not. */
function rowsTogether(
  { tones, own }: TaughtRecording,
  isKnown: boolean,
  teaches: (tone: LabelledTone) => boolean,
  dice: Dice,
): Labelled[] {
  const likeliest = likeliestReadings(tones.map(({ candidate }) => candidate));
  const isTaught = (tone: LabelledTone) =>
    tone.label !== 'unasked' &&
    teaches(tone) &&
    (tone.label === 'real' || tone.candidate.alone > PLAINLY_NONE || dice.chance(SHARE_OF_PLAIN));
  return tones.filter(isTaught).map(({ candidate, label }) => ({
    figures: blastFigures(candidate, likeliest, isKnown ? own : null),
    isReal: label === 'real',
  }));
}

/**
 * Fits both scores of a blast: from a tone alone, and from a tone with its company, which is told how like blasts they look alone. What the
 * first step says of what it was fitted to flatters, so the second is taught by what it says of recordings that it has not seen. `teaches`
 * leaves single tones out; those stay company.
 */
export function fitInTwoSteps(
  taught: Taught,
  name: string,
  fits: number,
  teaches: (tone: LabelledTone) => boolean = () => true,
) {
  const alone = (recordings: Taught, part: string) =>
    fitScore(
      recordings
        .flatMap(({ tones }) => tones)
        .filter((tone) => tone.label !== 'unasked' && teaches(tone))
        .map(({ candidate, label }) => ({ figures: candidate.own, isReal: label === 'real' })),
      HIDDEN.alone,
      diceNamed(`${name} alone ${part}`),
      fits,
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
  const together = fitScore(
    taught.flatMap((recording) =>
      [false, true].flatMap((isKnown) => rowsTogether(recording, isKnown, teaches, dice)),
    ),
    HIDDEN.together,
    diceNamed(`${name} together`),
    fits,
  );
  return { alone: alone(taught, 'all'), together };
}

import { contextFeatures } from '../../packages/engine/src/sound/blast-context.ts';
import { memoryFeatures } from '../../packages/engine/src/sound/blast-memory.ts';
import { createScore, type ScoreNumbers } from '../../packages/engine/src/sound/learned-score.ts';
import { diceNamed } from '../careers/dice.ts';
import { fitScore } from './fit-score.ts';
import type { LabelledTone } from './gather-candidates.ts';

/** The tones of the recordings, recording by recording. */
export type Taught = readonly (readonly LabelledTone[])[];

const HIDDEN = { alone: 12, together: 12 };
/** The score of a tone alone is told to the second step by numbers from other recordings, a quarter being left out each time. */
const PARTS = 4;

/** The figures by which a tone is judged when all about it is known. */
export const figuresTogether = ({ candidate, all }: LabelledTone) =>
  Float64Array.of(...candidate.own, ...contextFeatures(candidate, all), ...memoryFeatures(candidate, all));

const isTaught = ({ label }: LabelledTone) => label !== 'unasked';

/** Sets how like a blast each tone looks alone. */
export function tellAlone(tones: Iterable<LabelledTone>, numbers: ScoreNumbers): void {
  const score = createScore(numbers);
  for (const { candidate } of tones) candidate.alone = score(candidate.own);
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
  const rowsOf = (recordings: Taught) => recordings.flat().filter((tone) => isTaught(tone) && teaches(tone));
  const alone = (recordings: Taught, part: string) =>
    fitScore(
      rowsOf(recordings).map(({ candidate, label }) => ({
        figures: candidate.own,
        isReal: label === 'real',
      })),
      HIDDEN.alone,
      diceNamed(`${name} alone ${part}`),
      fits,
    );
  for (let part = 0; part < PARTS; part++) {
    const numbers = alone(
      taught.filter((_, k) => k % PARTS !== part),
      `${part}`,
    );
    tellAlone(taught.filter((_, k) => k % PARTS === part).flat(), numbers);
  }
  const together = fitScore(
    rowsOf(taught).map((tone) => ({ figures: figuresTogether(tone), isReal: tone.label === 'real' })),
    HIDDEN.together,
    diceNamed(`${name} together`),
    fits,
  );
  return { alone: alone(taught, 'all'), together };
}

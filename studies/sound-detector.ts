/**
 * Which numbers tell a blast or a click from what is none? Fits the two scores of the engine's ear to made recordings of the set `tune`, and to
 * them alone, and writes `blast-numbers.ts` and `click-numbers.ts` beside it; everything is drawn from names, so the same numbers come out.
 * Run: `npx tsx studies/sound-detector.ts` (about a quarter of an hour; the coded recordings need an FFmpeg, see studies/sound.ts). What the
 * detector then hears is judged by `npx tsx studies/listening.ts`.
 */

import { diceNamed } from './careers/dice.ts';
import { ffmpegCoder } from './sound/coders.ts';
import { makeRecording } from './sound/make-recording.ts';
import { type Condition, judgedSnrDb, sceneOf } from './sound/sets.ts';
import { fitScore } from './sound-detector/fit-score.ts';
import { gatherCandidates, type Labelled } from './sound-detector/gather-candidates.ts';
import { writeNumbers } from './sound-detector/numbers-file.ts';
import { variedBlasts } from './sound-detector/vary-blasts.ts';

/** Which recordings of each condition teach: from one index to before another. */
const TEACHING: readonly (readonly [Condition, number, number])[] = [
  ['field', 0, 20],
  ['field', 200, 380],
  ['fair', 0, 8],
  ['fair', 200, 240],
  ['nothing', 0, 12],
  ['nothing', 200, 280],
  ['weak', 0, 6],
  ['coded-opus', 200, 216],
  ['coded-aac', 200, 210],
];
const HIDDEN = { blasts: 10, clicks: 6 };

const blasts: Labelled[] = [];
const clicks: Labelled[] = [];
for (const [condition, from, to] of TEACHING) {
  for (let index = from; index < to; index++) {
    const made = makeRecording(sceneOf('tune', condition, index));
    const isCoded = condition === 'coded-aac' || condition === 'coded-opus';
    const recording = isCoded ? { ...made, ...ffmpegCoder(condition)(made) } : made;
    const found = gatherCandidates(recording, judgedSnrDb(condition, index)[0]);
    blasts.push(...found.blasts);
    clicks.push(...found.clicks);
  }
  console.log(`${condition}: ${blasts.length} tones and ${clicks.length} sudden sounds so far`);
}
const blastNumbers = fitScore(
  variedBlasts(blasts, diceNamed('varied blasts')),
  HIDDEN.blasts,
  diceNamed('score of a blast'),
);
writeNumbers('blast-numbers.ts', 'BLAST_NUMBERS', 'a whistle blast', blastNumbers);
const clickNumbers = fitScore(clicks, HIDDEN.clicks, diceNamed('score of a click'));
writeNumbers('click-numbers.ts', 'CLICK_NUMBERS', 'a click', clickNumbers);

/**
 * Which numbers tell a blast or a click from what is none? Fits the scores of the engine's ear to made recordings of the sets that teach, and
 * writes `blast-alone-numbers.ts`, `blast-numbers.ts`, `blast-whole-numbers.ts` and `click-numbers.ts`; everything is drawn from names, so the same numbers come out.
 * With `--judge` the same fit is then judged by recordings, and by families of sounds, that were left out of it.
 * Run: `npx tsx studies/sound-detector.ts [--judge] [--few]` (about an hour; the coded recordings need an FFmpeg, see studies/sound.ts; `--few`
 * takes a tenth, to try the script), then `npm run format`. What the detector then hears is judged by `npx tsx studies/listening.ts`.
 */

import { diceNamed } from './careers/dice.ts';
import { ffmpegCoder } from './sound/coders.ts';
import { makeRecording } from './sound/make-recording.ts';
import { type Condition, judgedSnrDb, type SetName, sceneOf } from './sound/sets.ts';
import { taughtWhistle } from './sound-detector/confirmed-blasts.ts';
import { fitInTwoSteps } from './sound-detector/fit-in-two-steps.ts';
import { fitScore } from './sound-detector/fit-score.ts';
import { gatherCandidates } from './sound-detector/gather-candidates.ts';
import { type JudgedRecording, judgeLeftOut } from './sound-detector/judge-left-out.ts';
import type { Labelled } from './sound-detector/label-candidates.ts';
import { writeNumbers } from './sound-detector/numbers-file.ts';

/** Which recordings teach: from one index to before another. Those below 100 of every set are left to be listened to. */
const TEACHING: readonly (readonly [SetName, Condition, number, number])[] = [
  ['wide', 'field', 100, 420],
  ['wide', 'nothing', 100, 360],
  ['wide', 'fair', 100, 300],
  ['wide', 'coded-aac', 200, 235],
  ['wide', 'coded-opus', 200, 235],
  ['unheard', 'field', 100, 420],
  ['unheard', 'nothing', 100, 360],
  ['unheard', 'fair', 100, 300],
  ['unheard', 'coded-aac', 200, 250],
  ['unheard', 'coded-opus', 200, 240],
  ['broad', 'fair', 100, 500],
  ['broad', 'field', 100, 700],
  ['broad', 'nothing', 100, 300],
  ['broad', 'coded-aac', 100, 160],
  ['broad', 'coded-opus', 100, 160],
  ['apart', 'fair', 100, 400],
  ['apart', 'field', 100, 300],
  ['apart', 'nothing', 100, 200],
  ['rhythms', 'field', 100, 280],
  ['rhythms', 'fair', 100, 180],
  ['rhythms', 'coded-aac', 100, 120],
  ['rhythms', 'coded-opus', 100, 120],
  ['held-out', 'field', 100, 320],
  ['held-out', 'nothing', 100, 280],
  ['held-out', 'fair', 100, 150],
  ['held-out', 'coded-aac', 200, 215],
  ['held-out', 'coded-opus', 200, 215],
  ['tune', 'field', 100, 150],
  ['tune', 'nothing', 100, 108],
  ['tune', 'fair', 100, 104],
];
/** What is not coded is made at the rate that the ear works at: it costs a third. */
const WORK_RATE_HZ = 16_000;
const HIDDEN_CLICK = 6;
const FEW = 10;

const words = process.argv.slice(2);
const recordings: JudgedRecording[] = [];
const clicks: Labelled[][] = [];
for (const [set, condition, from, to] of TEACHING) {
  for (let index = from; index < (words.includes('--few') ? from + (to - from) / FEW : to); index++) {
    const scene = sceneOf(set, condition, index);
    const isCoded = condition === 'coded-aac' || condition === 'coded-opus';
    const made = makeRecording(isCoded ? scene : { ...scene, sampleRateHz: WORK_RATE_HZ });
    const recording = isCoded ? { ...made, ...ffmpegCoder(condition)(made) } : made;
    const found = gatherCandidates(recording, judgedSnrDb(condition, index)[0]);
    const lastsS = recording.samples.length / recording.sampleRateHz;
    const own = taughtWhistle(found.tones, scene.name);
    recordings.push({ set, condition, lastsS, asked: found.asked, tones: found.tones, own });
    clicks.push(found.clicks);
  }
  console.log(`${set} ${condition}: ${recordings.length} recordings so far`);
}
const { alone, together, whole } = fitInTwoSteps(recordings, 'blast');
writeNumbers('blast-alone-numbers.ts', 'BLAST_ALONE_NUMBERS', 'a whistle blast, from its tone alone', alone);
writeNumbers('blast-numbers.ts', 'BLAST_NUMBERS', 'a whistle blast, its company known', together);
writeNumbers(
  'blast-whole-numbers.ts',
  'BLAST_WHOLE_NUMBERS',
  'the whole of a blast that begins there',
  whole,
);
const click = fitScore(clicks.flat(), HIDDEN_CLICK, diceNamed('score of a click'));
writeNumbers('click-numbers.ts', 'CLICK_NUMBERS', 'a click', click);
if (words.includes('--judge')) {
  for (const line of judgeLeftOut(recordings)) console.log(line);
}

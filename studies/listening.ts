/**
 * How well does the engine hear whistle blasts and clicks? Its figures on the made recordings of `studies/sound`, beside the aims, as
 * docs/listening.md prints them. Run: `npx tsx studies/listening.ts [SET] [condition ...] [--recordings N] [--own | --limits]`, of set `unmet`
 * unless another is named; with `--own` three blasts of the handler's are confirmed first, and only the handler's own are asked for; with
 * `--limits` the ear is made stricter step by step. The scores were fitted to recordings from 100 up of all sets but `unmet`, whose
 * sounds come of other mechanisms. With `--packages FOLDER` really recorded sounds without whistle or click are heard, for false alarms
 * (`studies/sound/real-sounds.ts` tells which). Both those and the coded conditions need an FFmpeg, as in `studies/sound.ts`.
 */

import { ffmpegCoder, hasFfmpeg } from './sound/coders.ts';
import { packageRows } from './sound/folder-row.ts';
import type { Detector, Recording, Truth } from './sound/recording.ts';
import { judgeCondition, TABLE_HEAD, tableRow } from './sound/run-sets.ts';
import type { Condition, SetName } from './sound/sets.ts';
import { confirmedWhistle, onlyOwn } from './sound-detector/confirmed-blasts.ts';
import { engineEar, engineEarOf, stricterEar } from './sound-detector/engine-ear.ts';

/** A way of hearing that is judged, and which blasts are asked for then. */
interface Way {
  name: string;
  detectorFor: (recording: Recording) => Detector;
  askedOf?: (truth: Truth) => Truth;
}

const PLAIN: Way = { name: '', detectorFor: () => engineEar };
const OWN_KNOWN: Way = {
  name: ', own known',
  detectorFor: (recording) => engineEarOf(confirmedWhistle(recording)),
  askedOf: onlyOwn,
};
const STRICTER = [0, 0.5, 1, 2].map(
  (least): Way => ({ name: `, from ${least}`, detectorFor: () => stricterEar(least) }),
);

const SETS: readonly SetName[] = [
  'tune',
  'held-out',
  'wide',
  'unheard',
  'rhythms',
  'apart',
  'broad',
  'unmet',
];
const RECORDINGS: Record<Condition, number> = {
  fair: 12,
  field: 24,
  weak: 8,
  nothing: 24,
  'coded-aac': 8,
  'coded-opus': 8,
};

const words = process.argv.slice(2);
const set = SETS.find((name) => words.includes(name)) ?? 'unmet';
const conditions = Object.keys(RECORDINGS) as Condition[];
const named = conditions.filter((condition) => words.includes(condition));
const ways = words.includes('--own') ? [OWN_KNOWN] : words.includes('--limits') ? STRICTER : [PLAIN];
const numberAt = words.indexOf('--recordings');
const packagesAt = words.indexOf('--packages');

function printCondition(condition: Condition): void {
  const isCoded = condition === 'coded-aac' || condition === 'coded-opus';
  if (isCoded && !hasFfmpeg()) {
    console.log(`| ${condition} | not measured: no FFmpeg |`);
    return;
  }
  const recordings = numberAt < 0 ? RECORDINGS[condition] : Number(words[numberAt + 1]);
  const coder = isCoded ? ffmpegCoder(condition) : null;
  for (const { name, detectorFor, askedOf } of ways) {
    const counts = judgeCondition(detectorFor, set, condition, recordings, coder, askedOf);
    console.log(tableRow(`${set} ${condition}${name}`, condition, counts));
  }
}

console.log(TABLE_HEAD);
if (packagesAt < 0) (named.length > 0 ? named : conditions).forEach(printCondition);
else for (const row of packageRows(engineEar, words[packagesAt + 1] ?? '.')) console.log(row);

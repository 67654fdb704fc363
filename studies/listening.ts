/**
 * How well does the engine hear whistle blasts and clicks? Its figures on the made recordings of `studies/sound`, beside the aims, as
 * docs/listening.md prints them. Run: `npx tsx studies/listening.ts [tune|held-out|unheard] [condition ...] [--recordings N] [--own]`; with
 * `--own` three blasts of the handler's are confirmed first, and only the handler's own are asked for. The scores were fitted to recordings
 * from 100 up of all sets but `unheard`, whose sounds come of other mechanisms. The coded conditions need an FFmpeg, as in `studies/sound.ts`.
 */

import { ffmpegCoder, hasFfmpeg } from './sound/coders.ts';
import { judgeCondition, TABLE_HEAD, tableRow } from './sound/run-sets.ts';
import type { Condition } from './sound/sets.ts';
import { confirmedWhistle, onlyOwn } from './sound-detector/confirmed-blasts.ts';
import { engineEar, engineEarOf } from './sound-detector/engine-ear.ts';

const RECORDINGS: Record<Condition, number> = {
  fair: 12,
  field: 24,
  weak: 8,
  nothing: 24,
  'coded-aac': 8,
  'coded-opus': 8,
};

const words = process.argv.slice(2);
const set = (['tune', 'held-out'] as const).find((name) => words.includes(name)) ?? 'unheard';
const conditions = Object.keys(RECORDINGS) as Condition[];
const named = conditions.filter((condition) => words.includes(condition));
const knowsOwn = words.includes('--own');
const numberAt = words.indexOf('--recordings');
console.log(TABLE_HEAD);
for (const condition of named.length > 0 ? named : conditions) {
  const isCoded = condition === 'coded-aac' || condition === 'coded-opus';
  if (isCoded && !hasFfmpeg()) {
    console.log(`| ${condition} | not measured: no FFmpeg |`);
    continue;
  }
  const recordings = numberAt < 0 ? RECORDINGS[condition] : Number(words[numberAt + 1]);
  const coder = isCoded ? ffmpegCoder(condition) : null;
  const counts = knowsOwn
    ? judgeCondition((one) => engineEarOf(confirmedWhistle(one)), set, condition, recordings, coder, onlyOwn)
    : judgeCondition(() => engineEar, set, condition, recordings, coder);
  console.log(tableRow(`${set} ${condition}${knowsOwn ? ', own known' : ''}`, condition, counts));
}

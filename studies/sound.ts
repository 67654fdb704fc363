/**
 * How well is a detector of whistle blasts and clicks? Made recordings with their truth, `tune` and `held-out`, and what a plain detector of
 * thresholds finds in them, beside the aims. Run: `npx tsx studies/sound.ts [tune|held-out]`; with `--long` on some seventy minutes of sound
 * in place of twelve. The coded recordings need an FFmpeg on the path, or named by the variable FFMPEG; without one they are left out, and
 * the page says so.
 */

import { ffmpegCoder, hasFfmpeg } from './sound/coders.ts';
import { ridgeAndRules } from './sound/ridge-and-rules.ts';
import { judgeCondition, TABLE_HEAD, tableRow } from './sound/run-sets.ts';
import type { Condition } from './sound/sets.ts';

/** Recordings of 30 s each, in the short and the long form. */
const RECORDINGS: Record<Condition, readonly [number, number]> = {
  fair: [4, 24],
  field: [6, 40],
  weak: [4, 12],
  nothing: [6, 40],
  'coded-aac': [4, 16],
  'coded-opus': [4, 16],
};

const words = process.argv.slice(2);
const set = words.includes('held-out') ? 'held-out' : 'tune';
const isLong = words.includes('--long');
const canCode = hasFfmpeg();
console.log(TABLE_HEAD);
for (const condition of Object.keys(RECORDINGS) as Condition[]) {
  const isCoded = condition === 'coded-aac' || condition === 'coded-opus';
  if (isCoded && !canCode) {
    console.log(`| ${condition} | not measured: no FFmpeg |`);
    continue;
  }
  const coder = isCoded ? ffmpegCoder(condition) : null;
  const counts = judgeCondition(
    () => ridgeAndRules,
    set,
    condition,
    RECORDINGS[condition][isLong ? 1 : 0],
    coder,
  );
  console.log(tableRow(condition, condition, counts));
}

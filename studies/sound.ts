/**
 * How well is a detector of whistle blasts and clicks? Made recordings with their truth, `tune` and `held-out`, and what a plain detector of
 * thresholds finds in them, beside the aims. Run: `npx tsx studies/sound.ts [tune|held-out|unheard|unmet] [condition ...]`; with `--long` on two hours of
 * sound in place of twelve minutes; with `--folder PATH` on recordings that are known to hold neither whistle nor click, for false alarms, and with
 * `--packages FOLDER` on those that `sound/real-sounds.ts` lists. The coded conditions and folders need an FFmpeg on the path, or named by the
 * variable FFMPEG; without one the coded are left out, and the page says so.
 */

import { ffmpegCoder, hasFfmpeg } from './sound/coders.ts';
import { folderRow, packageRows } from './sound/folder-row.ts';
import { ridgeAndRules } from './sound/ridge-and-rules.ts';
import { judgeCondition, TABLE_HEAD, tableRow } from './sound/run-sets.ts';
import type { Condition } from './sound/sets.ts';

/** Recordings of 30 s each, in the short and the long form; of nothing there is an hour. */
const RECORDINGS: Record<Condition, readonly [number, number]> = {
  fair: [4, 24],
  field: [6, 40],
  weak: [4, 12],
  nothing: [6, 120],
  'coded-aac': [4, 20],
  'coded-opus': [4, 20],
};

const words = process.argv.slice(2);
const folderAt = words.indexOf('--folder');
const packagesAt = words.indexOf('--packages');
const set = (['held-out', 'unheard', 'unmet'] as const).find((name) => words.includes(name)) ?? 'tune';
const conditions = Object.keys(RECORDINGS) as Condition[];
const named = conditions.filter((condition) => words.includes(condition));
const canCode = hasFfmpeg();
console.log(TABLE_HEAD);
if (folderAt >= 0) console.log(folderRow(ridgeAndRules, words[folderAt + 1] ?? '.'));
else if (packagesAt >= 0)
  for (const row of packageRows(ridgeAndRules, words[packagesAt + 1] ?? '.')) console.log(row);
else {
  for (const condition of named.length > 0 ? named : conditions) {
    const isCoded = condition === 'coded-aac' || condition === 'coded-opus';
    if (isCoded && !canCode) {
      console.log(`| ${condition} | not measured: no FFmpeg |`);
      continue;
    }
    const coder = isCoded ? ffmpegCoder(condition) : null;
    const recordings = RECORDINGS[condition][words.includes('--long') ? 1 : 0];
    const counts = judgeCondition(() => ridgeAndRules, set, condition, recordings, coder);
    console.log(tableRow(`${set} ${condition}`, condition, counts));
  }
}

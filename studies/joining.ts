/**
 * Are blasts joined to the reps they were blown for, and are wrong joins hardly ever made for sure? Made sessions with taps that
 * are late, reps that nobody tapped, other people's whistles and a clock of their own. Run: `npx tsx studies/joining.ts
 * [sessions] [seed]`; writes docs/joining.md. With `--long` ten times the sessions, and nothing is written.
 */

import { writeFileSync } from 'node:fs';
import { engineJoiner } from './joining/engine-joiner.ts';
import { joiningPage } from './joining/joining-page.ts';
import { judgeJoiners } from './joining/judge-joiner.ts';
import { inOrder, lastBeforeTap, neverSure } from './joining/wrong-joiners.ts';

const isLong = process.argv.includes('--long');
const [sessions = 200, seed = 1] = process.argv
  .slice(2)
  .filter((word) => word !== '--long')
  .map(Number);
const joiners = [engineJoiner, inOrder, lastBeforeTap, neverSure];
const count = isLong ? 10 * sessions : sessions;
const page = joiningPage(joiners, judgeJoiners(joiners, count, seed), count, seed);
if (!isLong) writeFileSync(new URL('../docs/joining.md', import.meta.url), page);
console.log(page);

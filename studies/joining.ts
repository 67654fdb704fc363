/**
 * Are blasts joined to the reps they were blown for, and are wrong joins hardly ever made for sure? Made sessions with taps that
 * are late, reps that nobody tapped, other people's whistles and a clock of their own. Run: `npx tsx studies/joining.ts
 * [sessions] [seed]`; with `--long` ten times the sessions.
 */

import { conditionsTable, joiningTable } from './joining/joining-page.ts';
import { judgeJoiners } from './joining/judge-joiner.ts';
import { inOrder, lastBeforeTap, neverSure } from './joining/wrong-joiners.ts';

const isLong = process.argv.includes('--long');
const [sessions = 200, seed = 1] = process.argv
  .slice(2)
  .filter((word) => word !== '--long')
  .map(Number);
const joiners = [inOrder, lastBeforeTap, neverSure];
const scores = judgeJoiners(joiners, isLong ? 10 * sessions : sessions, seed);
console.log(
  [conditionsTable(), ...joiners.map(({ name }, n) => joiningTable(name, scores[n]!))].join('\n\n'),
);

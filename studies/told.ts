/**
 * What is a handler's word of a new dog worth, and what does a wild one spoil? Dogs with a reach in metres, handlers who remember, boast or
 * guess; the engine's first twenty legs with and without what was told. Writes `docs/told.md`.
 * Run: `npx tsx studies/told.ts [dogs] [seed]`; some seconds for 2000. With `--long` 10,000 dogs, and nothing is written.
 */

import { writeFileSync } from 'node:fs';
import { TOLD } from '@sedgeline/engine/ability';
import type { Start } from './told/first-legs.ts';
import { toldFigures } from './told/told-figures.ts';
import { toldPage } from './told/told-page.ts';

const isLong = process.argv.includes('--long');
const words = process.argv.slice(2).filter((word) => word !== '--long');
const dogs = Number(words[0] ?? (isLong ? 10_000 : 2000));
const seed = Number(words[1] ?? 1);
/** The start in use. */
const USED: Start = TOLD;
const starts: readonly Start[] = [
  ...[0.7, 1, 1.4, 2, 3].map((errorSd) => ({ stoodAt: 0.8, errorSd })),
  ...[0.2, 1.4].map((stoodAt) => ({ stoodAt, errorSd: 2 })),
];
const page = toldPage(toldFigures(dogs, seed, starts), USED, dogs, seed);
if (!isLong) writeFileSync(new URL('../docs/told.md', import.meta.url), page);
process.stdout.write(page);

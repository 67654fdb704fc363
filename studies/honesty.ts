/**
 * Are the stated chances worth what they claim? Replays invented careers of four mechanisms that are not the engine's model
 * (`careers/`) through the whole program, beside baselines and engines that are wrong on purpose, and prints
 * `docs/honesty.md`. Run: `npx tsx studies/honesty.ts [long|short] [seed]`; some minutes in the long form.
 */

import { writeFileSync } from 'node:fs';
import { judgingKennels } from './careers/kennels.ts';
import { playCareer } from './careers/play-career.ts';
import { honestyPage } from './honesty/honesty-page.ts';
import { judgeCareer } from './honesty/judge.ts';
import {
  LESSER_ENGINES,
  priorAlone,
  SLIGHTLY_WRONG_ENGINES,
  truthItself,
  WRONG_ENGINES,
} from './honesty/wrong-engines.ts';

const form = process.argv[2] === 'short' ? 'short' : 'long';
const seed = Number(process.argv[3] ?? 1);
const specs = judgingKennels(form, seed);
const others = {
  'the priors alone': priorAlone,
  'the truth itself': truthItself,
  ...WRONG_ENGINES,
  ...SLIGHTLY_WRONG_ENGINES,
  ...LESSER_ENGINES,
};
const kennels = specs.map((spec, n) => {
  process.stderr.write(process.stderr.isTTY ? `\r${n + 1} of ${specs.length} kennels` : '');
  return judgeCareer(playCareer(spec), others);
});
if (process.stderr.isTTY) process.stderr.write('\n');
const page = honestyPage(kennels, specs, form, seed);
if (form === 'long') writeFileSync(new URL('../docs/honesty.md', import.meta.url), page);
process.stdout.write(page);

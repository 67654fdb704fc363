/**
 * Is a dog ready when the forecast says so? Dogs by the model's own law and by four mechanisms that are not the model, followed for
 * half a year; beside a forecaster that is overconfident on purpose. Writes `docs/season.md`.
 * Run: `npx tsx studies/season.ts [dogs of each kind] [seed]`; some minutes for 200.
 */

import { writeFileSync } from 'node:fs';
import { MECHANISMS } from './careers/career.ts';
import { diceNamed } from './careers/dice.ts';
import { careerOutcome } from './season/career-study.ts';
import { modelOutcomes, ourForecaster, overconfident } from './season/model-study.ts';
import { coverageOf, type ForecastOutcome } from './season/ready-week.ts';
import { type SeasonRow, seasonPage } from './season/season-page.ts';

const size = Number(process.argv[2] ?? 200);
const seed = Number(process.argv[3] ?? 1);
const FUTURES = 1000;
const { uniform } = diceNamed(`season places ${seed}`);
const row = (name: string, outcomes: readonly ForecastOutcome[]): SeasonRow => ({
  name,
  outcomes,
  coverage: coverageOf(outcomes, uniform),
});
const dogs = Array.from({ length: size }, (_, n) => 10_000 * seed + n);
const byModel = dogs.map((dog) => modelOutcomes(dog, [ourForecaster, overconfident(0.05)], FUTURES));
const rows = [
  row(
    "the model's law",
    byModel.map((one) => one[0]!),
  ),
  row(
    'the same, overconfident on purpose',
    byModel.map((one) => one[1]!),
  ),
  ...MECHANISMS.map((mechanism) =>
    row(
      mechanism,
      dogs.map((dog) => careerOutcome(mechanism, dog)),
    ),
  ),
];
const page = seasonPage(rows, size, seed);
writeFileSync(new URL('../docs/season.md', import.meta.url), page);
process.stdout.write(page);

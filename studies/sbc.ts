/**
 * Is the spread that the ability filter states the true one? Simulation-based calibration (Talts2018) with
 * 1,000 dogs drawn from the model itself; the suite runs 200. Run: `npx tsx studies/sbc.ts`.
 */

import {
  calibrationSample,
  rankChiSquare,
  rankOf,
  type StatedTruth,
} from '../packages/engine/src/ability/rank-check.ts';
import { seededRandom } from '../packages/engine/src/numeric/random.ts';

const DOGS = 1000;
const DRAWS = 99;
/** 99 % quantile of chi-square with 19 degrees. */
const LIMIT = 36.19;

const sample = calibrationSample(DOGS, 7);
const random = seededRandom(8);
for (const [quantity, pairs] of Object.entries<readonly StatedTruth[]>({ ...sample })) {
  const ranks = pairs.map(({ truth, stated }) => rankOf(truth, stated, DRAWS, random));
  const chiSquare = rankChiSquare(ranks, DRAWS, 20);
  const inside = pairs.filter(
    ({ truth, stated }) => Math.abs(truth - stated.mean) <= 1.645 * stated.sd,
  ).length;
  const error = pairs.reduce((sum, { truth, stated }) => sum + (truth - stated.mean) / stated.sd, 0) / DOGS;
  const verdict = chiSquare < LIMIT ? 'uniform' : 'NOT uniform';
  console.log(
    `${quantity}: chi-square ${chiSquare.toFixed(1)} of 19 degrees (limit ${LIMIT}): ${verdict}; ` +
      `90 % interval holds ${((100 * inside) / DOGS).toFixed(1)} %; mean error ${error.toFixed(3)} sd`,
  );
}

import { expect, test } from '../served-app.ts';
import { killRun } from './kill-run.ts';

/** In the long form (`npm run soak kill`) some hundreds of reps, in the short one some tens. */
const KILLS = process.env.SEDGELINE_LONG === '1' ? 80 : 8;
/** So that each killing may take its while on a busy machine, milliseconds. */
const KILL_LIMIT_MS = 45_000;
const given = process.env.SEDGELINE_KILL_SEED;
const seed = given === undefined ? Math.floor(Math.random() * 2 ** 31) : Number(given);

/** A linear congruential generator: which moments are hit is all it decides. */
function randomFrom(first: number): () => number {
  let state = first;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

test('the browser is killed at random moments: no acknowledged tap is lost, doubled or moved', async ({
  servedApp,
}) => {
  test.setTimeout((KILLS + 2) * KILL_LIMIT_MS);
  console.log(`seed of the killing: ${seed} (SEDGELINE_KILL_SEED=${seed} hits the same moments again)`);
  await servedApp.start();
  const run = await killRun(servedApp.url, KILLS, randomFrom(seed));
  console.log(`${run.kills} kills, ${run.taps} acknowledged taps, ${run.reps} reps`);
  expect(run.taps).toBeGreaterThanOrEqual(KILLS);
});

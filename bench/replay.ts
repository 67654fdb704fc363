/**
 * How much faster is the filter than fitting the whole record again after each session? Both in one run:
 * the filter on 100,000 legs; a batch fit (logistic regression of "not missed" with the same priors on
 * ability and weights, one for each dog and skill worked in a session, on all legs so far) on a record that is short enough
 * to wait for, whose cost is then carried to 100,000 legs by its law. And beside the same filter written plainly with arrays of
 * arrays, and a fit of the kennel's own priors. Run: `npx tsx bench/replay.ts`.
 */
import {
  createAbilityFilter,
  demandVector,
  fitKennel,
  type LegResult,
  shippedPriors,
} from '@sedgeline/engine/ability';
import { type LogisticRow, logisticMap, seededRandom } from '@sedgeline/engine/numeric';
import { DEMANDS } from '../packages/engine/src/ability/demands.ts';
import { simulateDog, simulateKennel } from '../packages/engine/src/ability/simulated-kennel.ts';
import { nestedFilter } from './replay/nested-filter.ts';

const DOGS = 10;
const LEGS_PER_SESSION = 20;

function record(sessions: number): LegResult[] {
  const random = seededRandom(1);
  const kennel = simulateKennel(random, shippedPriors);
  const dogs = Array.from({ length: DOGS }, (_, d) =>
    simulateDog(`dog ${d}`, kennel, random, shippedPriors, sessions, LEGS_PER_SESSION),
  );
  return dogs.flatMap(({ legs }) => legs).sort((a, b) => a.atMs - b.atMs);
}

/** Seconds of processor, best of three: on a busy machine the clock on the wall measures the others. */
function seconds(work: () => void, times = 3): number {
  let best = Infinity;
  for (let k = 0; k < times; k++) {
    const from = process.cpuUsage();
    work();
    best = Math.min(best, spent(from));
  }
  return best;
}

function spent(from: NodeJS.CpuUsage): number {
  const { user, system } = process.cpuUsage(from);
  return (user + system) / 1e6;
}

function filterSeconds(legs: readonly LegResult[]): number {
  return seconds(() => {
    const filter = createAbilityFilter();
    for (const leg of legs) filter.observe(leg);
  });
}

const p = shippedPriors;
const PRIOR_MEAN = [p.abilityMean, ...DEMANDS.map((name) => p.weightMean[name])];
const PRIOR_SD = [
  Math.hypot(p.kennelAbilitySd, p.dogAbilitySd, p.generalSd),
  ...DEMANDS.map(() => Math.hypot(p.kennelWeightSd, p.dogWeightSd)),
];

/** A fit of the whole record so far, whenever a session ends, of each skill worked in it. */
function refitSeconds(legs: readonly LegResult[]): number {
  const rowsOf = new Map<string, LogisticRow[]>();
  const worked = new Map<string, Set<string>>();
  const leftInSession = new Map<string, number>();
  for (const { session } of legs) leftInSession.set(session, (leftInSession.get(session) ?? 0) + 1);
  const from = process.cpuUsage();
  for (const leg of legs) {
    const key = `${leg.dog} ${leg.skill}`;
    const x = [1, ...demandVector(leg.skill, leg.ask, leg.context).map((value) => -value)];
    const rows = rowsOf.get(key) ?? [];
    rows.push({ x, y: leg.grade === 'missed' ? 0 : 1, n: 1 });
    rowsOf.set(key, rows);
    const keys = worked.get(leg.session) ?? new Set();
    worked.set(leg.session, keys.add(key));
    const left = leftInSession.get(leg.session)! - 1;
    leftInSession.set(leg.session, left);
    if (left === 0) for (const done of keys) logisticMap(rowsOf.get(done)!, PRIOR_MEAN, PRIOR_SD);
  }
  return spent(from);
}

const long = record(500);
const short = record(20);
const shorter = record(10);
const filterLong = filterSeconds(long);
const filterShort = filterSeconds(short);
const refitShort = refitSeconds(short);
const refitShorter = refitSeconds(shorter);
// Sessions times the legs behind each: the cost grows with the square of the record. The power is measured
// between the two short records; the smaller of it and 2 carries it on, so that the ratio is not flattered.
const power = Math.min(2, Math.log2(refitShort / refitShorter));
const refitLong = refitShort * (long.length / short.length) ** power;
const show = (s: number) => (s < 10 ? s.toFixed(3) : s.toFixed(0));
console.log(
  `filter, ${long.length} legs: ${show(filterLong)} s, ${((filterLong / long.length) * 1e6).toFixed(2)} us a leg`,
);
console.log(
  `refit after each session, ${short.length} legs: ${show(refitShort)} s (filter ${show(filterShort)} s), ratio ${(refitShort / filterShort).toFixed(0)}`,
);
console.log(
  `refit grows with power ${power.toFixed(2)}; at ${long.length} legs about ${show(refitLong)} s, ratio about ${(refitLong / filterLong).toFixed(0)} (extrapolated)`,
);

const nested = seconds(() => {
  const filter = nestedFilter();
  for (const leg of short) filter(leg);
});
console.log(
  `the same with arrays of arrays, ${short.length} legs: ${show(nested)} s, ratio ${(nested / filterShort).toFixed(1)}`,
);

const forFit = short.slice(0, 1200);
let steps = 0;
const from = process.cpuUsage();
fitKennel(forFit, (progress) => {
  steps = progress.steps;
  return true;
});
const fitSeconds = spent(from);
console.log(
  `the kennel's own priors from ${forFit.length} legs: ${show(fitSeconds)} s, ${steps} evaluations, ` +
    `longest between two taps ${((1000 * fitSeconds) / steps).toFixed(0)} ms`,
);

import { describe, expect, it } from 'vitest';
import { seededRandom } from '../numeric/random.ts';
import type { Grade } from './ask.ts';
import { EASY_CONTEXT } from './ask-range.ts';
import { createAbilityFilter } from './filter.ts';
import type { LogitEstimate } from './forecaster.ts';
import { shippedPriors } from './priors.ts';

/**
 * The model written a second time, by brute force: 400,000 dogs drawn from the priors' table, each weighed by
 * the likelihood of the whole record. One skill, one sitting in time (no walk; the gain of a first session
 * is in the later ones), three sessions, three asks. Nothing of the filter is used but the table's figures.
 */
const DRAWS = 400_000;
const SESSIONS = 3;
// distance, late: the doublings of 5 m, and steps of 0.3 of the way, of the three asks.
const ASKS = [
  { ask: { distanceM: 10 }, distance: 1, late: 0 },
  { ask: { distanceM: 40, wayFraction: 0.4 }, distance: 3, late: 1 },
  { ask: { distanceM: 80, wayFraction: 0.7 }, distance: 4, late: 2 },
] as const;
const NEXT = { ask: { distanceM: 160, wayFraction: 0.4 }, distance: 5, late: 1 } as const;
const RECORD: readonly (readonly [session: number, ask: number, grade: Grade])[] = [
  [0, 0, 'good'],
  [0, 0, 'fair'],
  [0, 1, 'good'],
  [0, 1, 'good'],
  [0, 2, 'missed'],
  [0, 1, 'fair'],
  [1, 0, 'good'],
  [1, 1, 'good'],
  [1, 2, 'fair'],
  [1, 2, 'missed'],
  [1, 1, 'missed'],
  [1, 0, 'good'],
  [2, 0, 'good'],
  [2, 1, 'good'],
  [2, 2, 'good'],
  [2, 2, 'fair'],
  [2, 1, 'good'],
  [2, 2, 'missed'],
];

/** Sds of the blocks that are drawn: kennel ability and weight, dog ability and weight, general, form, odd. */
type Spreads = readonly [number, number, number, number, number, number, number];

function sample([kA, kW, dA, dW, general, day, oddity]: Spreads) {
  const random = seededRandom(42);
  const z = (mean: number, sd: number) => mean + sd * random.normal();
  const s = (x: number) => 1 / (1 + Math.exp(-x));
  const sums = {
    weight: 0,
    square: 0,
    ability: 0,
    ability2: 0,
    eta: 0,
    eta2: 0,
    good: 0,
    notMissed: 0,
    form: 0,
  };
  for (let k = 0; k < DRAWS; k++) {
    const ability = z(1.8, kA) + z(0, dA) + z(0, general);
    const wDistance = z(0.5, kW) + z(0, dW);
    const wLate = z(0.45, kW) + z(0, dW);
    const gap = z(z(1.2, 0.3), 0.35);
    if (gap < 0.45 || gap > 2.45) continue;
    const form = Array.from({ length: SESSIONS }, () => z(0, day));
    const odd = ASKS.map(() => z(0, oddity));
    let weight = 1;
    for (const [session, a, grade] of RECORD) {
      const { distance, late } = ASKS[a]!;
      const gain = session === 0 ? 0 : session === 1 ? 0.05 : 0.05 + 0.05 * 0.985;
      const eta = ability + gain - wDistance * distance - wLate * late + form[session]! + odd[a]!;
      const notMissed = s(eta);
      const good = s(eta - gap);
      weight *= grade === 'good' ? good : grade === 'fair' ? notMissed - good : 1 - notMissed;
    }
    const now = ability + 0.05 * (1 + 0.985 + 0.985 ** 2);
    const eta = now - wDistance * NEXT.distance - wLate * NEXT.late + z(0, day) + z(0, oddity);
    sums.weight += weight;
    sums.square += weight * weight;
    sums.ability += weight * now;
    sums.ability2 += weight * now * now;
    sums.eta += weight * eta;
    sums.eta2 += weight * eta * eta;
    sums.good += weight * s(eta - gap);
    sums.notMissed += weight * s(eta);
    sums.form += weight * form[2]!;
  }
  const mean = (total: number) => total / sums.weight;
  return {
    effective: sums.weight ** 2 / sums.square,
    ability: { mean: mean(sums.ability), sd: Math.sqrt(mean(sums.ability2) - mean(sums.ability) ** 2) },
    eta: { mean: mean(sums.eta), sd: Math.sqrt(mean(sums.eta2) - mean(sums.eta) ** 2) },
    good: mean(sums.good),
    notMissed: mean(sums.notMissed),
    form: mean(sums.form),
  };
}

function filtered(spreads: Spreads) {
  const [kennelAbilitySd, kennelWeightSd, dogAbilitySd, dogWeightSd, generalSd, formSd, oddSd] = spreads;
  const sds = { kennelAbilitySd, kennelWeightSd, dogAbilitySd, dogWeightSd, generalSd, formSd, oddSd };
  const filter = createAbilityFilter({ ...shippedPriors, ...sds });
  const about = { dog: 'a', skill: 'stop', atMs: 0, context: EASY_CONTEXT } as const;
  for (const [session, a, grade] of RECORD) {
    filter.observe({ ...about, session: `${session}`, ask: ASKS[a]!.ask, grade, weight: 1 });
  }
  const { chance, logOdds } = filter.forecast({ ...about, session: null, ask: NEXT.ask });
  const ability = filter.ability('a', 'stop', 0);
  return { chance, logOdds, ability, form: filter.form('a', '2').mean };
}

// The sampler's own error is 1/sqrt(effective draws) in sds: under 0.01.
describe.each<[string, Spreads, number, number]>([
  // One block: what is left is keeping only a normal after each leg, and learning the gap beside the state,
  // which costs up to 0.07 of the spread and 0.02 in the chance of good after so short a record.
  ['the dog alone', [0, 0, 0.93, 0.25, 0, 0, 0], 0.05, 0.02],
  // Five blocks held apart, as designed: negative correlations between them are let go, so spreads come out up
  // to a fifth too wide after a short record, means up to a third of an sd off. Keeping the whole covariance
  // (tried here once) brings them within 0.03 sd, but was found to make no difference to chances' worth.
  ['the shipped priors', [0.5, 0.15, 0.6, 0.2, 0.5, 0.4, 0.25], 0.35, 0.04],
])('filter against importance sampling: %s', (_, spreads, tolerance, chanceTolerance) => {
  const want = sample(spreads);
  const got = filtered(spreads);
  const meanError = (stated: LogitEstimate, truth: LogitEstimate) =>
    Math.abs(stated.mean - truth.mean) / truth.sd;
  it('has enough draws to judge', () => expect(want.effective).toBeGreaterThan(10_000));
  it('ability and log-odds of an ask beyond the record', () => {
    expect(meanError(got.ability, want.ability)).toBeLessThan(tolerance);
    expect(meanError(got.logOdds, want.eta)).toBeLessThan(tolerance);
    for (const ratio of [got.ability.sd / want.ability.sd, got.logOdds.sd / want.eta.sd]) {
      expect(ratio).toBeGreaterThan(0.93);
      expect(ratio).toBeLessThan(1 + Math.max(0.05, 0.7 * tolerance));
    }
  });
  it('its chances', () => {
    expect(Math.abs(got.chance.good - want.good)).toBeLessThan(chanceTolerance);
    expect(Math.abs(1 - got.chance.missed - want.notMissed)).toBeLessThan(chanceTolerance);
  });
  it('form of the last day', () => expect(Math.abs(got.form - want.form)).toBeLessThan(0.05));
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { seededRandom } from '../numeric/random.ts';
import { GRADES } from './ask.ts';
import { EASY_CONTEXT } from './ask-range.ts';
import { createAbilityFilter, restoreAbilityFilter } from './filter.ts';
import { isAbilitySnapshot } from './filter-snapshot.ts';
import type { AbilityFilter } from './forecaster.ts';
import { packedAt } from './gaussian-block.ts';
import type { LegQuestion, LegResult } from './leg.ts';
import { shippedPriors } from './priors.ts';
import { simulateDog, simulateKennel } from './simulated-kennel.ts';

const DAY = 86_400_000;

/** Dogs of one kennel, their sessions running through one another, in time order. */
function kennelCareer(seed: number, dogs = 3, sessions = 4, legs = 8): LegResult[] {
  const random = seededRandom(seed);
  const kennel = simulateKennel(random, shippedPriors);
  const all = Array.from(
    { length: dogs },
    (_, d) => simulateDog(`dog ${d}`, kennel, random, shippedPriors, sessions, legs).legs,
  ).flat();
  return all.sort((a, b) => a.atMs - b.atMs);
}

function run(legs: readonly LegResult[], filter: AbilityFilter = createAbilityFilter()) {
  return legs.map((leg) => filter.observe(leg));
}

const question = (dog: string, change: Partial<LegQuestion> = {}): LegQuestion => ({
  dog,
  skill: 'stop',
  session: null,
  atMs: Date.UTC(2026, 5, 1),
  ask: { distanceM: 40, wayFraction: 0.4, handlerPlace: 'beside' },
  context: EASY_CONTEXT,
  ...change,
});

describe('a dog nobody has seen', () => {
  const filter = createAbilityFilter();
  it('stands where the table of priors puts it', () => {
    // Worked by hand: 1.8 - 0.5 x 3 - 0.45 x 1 - 0.4 x 1 = -0.55; variances: ability 0.25 + 0.36 + 0.49 + form
    // 0.16 + odd 0.0625, weights (0.0225 + 0.0196)(9 + 1 + 1).
    const { logOdds } = filter.forecast(question('new'));
    expect(logOdds.mean).toBeCloseTo(-0.55, 12);
    expect(logOdds.sd ** 2).toBeCloseTo(1.3225 + 0.0421 * 11, 12);
    const ability = filter.ability('new', 'stop', 0);
    expect(ability.mean).toBeCloseTo(1.8, 12);
    expect(ability.sd ** 2).toBeCloseTo(1.1, 12);
  });
});

describe('what is stated', () => {
  it('chances add up to 1, parts to the mean, and the interval is around the chance', () => {
    const filter = createAbilityFilter();
    run(kennelCareer(1), filter);
    for (const dog of ['dog 0', 'dog 2', 'new']) {
      for (const session of [null, `${dog} 3`]) {
        const asked = question(dog, { session });
        const { chance, interval90, logOdds } = filter.forecast(asked);
        expect(chance.missed + chance.fair + chance.good).toBeCloseTo(1, 14);
        expect(Math.min(chance.missed, chance.fair, chance.good)).toBeGreaterThan(0);
        expect(interval90.notMissed[0]).toBeLessThan(1 - chance.missed);
        expect(interval90.notMissed[1]).toBeGreaterThan(1 - chance.missed);
        const sum = filter.because(asked).reduce((total, { logit }) => total + logit, 0);
        // Sums of a dozen terms in another order.
        expect(Math.abs(sum - logOdds.mean)).toBeLessThan(1e-12);
      }
    }
  });
  it('observe states what forecast stated, and forecast changes nothing', () => {
    const watched = createAbilityFilter();
    const plain = createAbilityFilter();
    for (const leg of kennelCareer(2)) {
      const stated = watched.forecast(leg);
      watched.chain([leg, { ...leg, skill: 'recall' }]);
      watched.because(leg);
      watched.stretch(leg, { ...leg, ask: {} });
      expect(watched.observe(leg)).toEqual(stated);
      expect(plain.observe(leg)).toEqual(stated);
    }
    expect(watched.snapshot()).toEqual(plain.snapshot());
  });
});

describe('the state', () => {
  it('no variance grows when a leg is learned', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 1e6 }),
        fc.constantFrom(...GRADES),
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        (seed, grade, weight) => {
          const filter = createAbilityFilter();
          const legs = kennelCareer(seed, 2, 2, 5);
          run(legs, filter);
          // At the very moment of the last leg nothing has walked.
          const leg = { ...legs.at(-1)!, grade, weight };
          const before = variances(filter);
          filter.observe(leg);
          const after = variances(filter);
          before.forEach((variance, i) => {
            expect(after[i]!).toBeLessThanOrEqual(variance);
            expect(after[i]!).toBeGreaterThan(0);
          });
        },
      ),
      { numRuns: 60 },
    );
  });
  function variances(filter: AbilityFilter): number[] {
    const snapshot: unknown = filter.snapshot();
    if (!isAbilitySnapshot(snapshot)) throw new Error('not a snapshot');
    const { kennel, dogs } = snapshot.state;
    const diagonal = (cov: Float64Array) => Array.from({ length: 22 }, (_, i) => cov[packedAt(i, i)]!);
    return [
      ...kennel.flatMap((block) => diagonal(block.cov)),
      ...[...dogs.values()].flatMap((dog) => [
        dog.general.variance,
        ...dog.skills.flatMap((skill) => (skill === null ? [] : diagonal(skill.cov))),
        ...[...dog.form.values(), ...dog.odd.values()].map(({ variance }) => variance),
      ]),
    ];
  }
  it('goes on from a snapshot to the bit, through cloning', () => {
    const legs = kennelCareer(3);
    const half = legs.length / 2;
    const first = createAbilityFilter();
    run(legs.slice(0, half), first);
    const second = restoreAbilityFilter(structuredClone(first.snapshot()));
    expect(run(legs.slice(half), second)).toEqual(run(legs.slice(half), first));
    expect(second.snapshot()).toEqual(first.snapshot());
  });
  it('refuses a snapshot of other priors or of something else', () => {
    const snapshot = createAbilityFilter({ ...shippedPriors, formSd: 0.3 }).snapshot();
    expect(isAbilitySnapshot(snapshot)).toBe(false);
    expect(() => restoreAbilityFilter(snapshot)).toThrow(TypeError);
    expect(() => restoreAbilityFilter({ form: 'ability-2' })).toThrow(TypeError);
  });
  it('a leg of weight 0 leaves the ability as it was, to the bit', () => {
    const legs = kennelCareer(4);
    const filter = createAbilityFilter();
    run(legs, filter);
    const last = legs.at(-1)!;
    const stand = () => [
      filter.forecast(question(last.dog)),
      filter.ability(last.dog, last.skill, last.atMs),
    ];
    const before = stand();
    for (const grade of GRADES) filter.observe({ ...last, grade, weight: 0 });
    expect(stand()).toEqual(before);
  });
  it('a leg of weight 0 counts for the gain of its session', () => {
    const filter = createAbilityFilter();
    const leg: LegResult = { ...question('a'), session: 's', grade: 'missed', weight: 0 };
    filter.observe(leg);
    // The table's gain, 0.05 for the first session, paid to what comes later; nothing within the session.
    const later = filter.forecast(question('a')).logOdds.mean;
    expect(later - filter.forecast({ ...leg }).logOdds.mean).toBeCloseTo(0.05, 12);
    filter.observe({ ...leg, session: 't', atMs: leg.atMs + DAY });
    const second = filter.forecast(question('a', { atMs: leg.atMs + 2 * DAY })).logOdds.mean;
    expect(second - later).toBeCloseTo(0.05 * 0.985, 12);
  });
  it('walks with time, 60 days at most', () => {
    const filter = createAbilityFilter();
    const leg: LegResult = { ...question('a'), ask: {}, session: 's', grade: 'good', weight: 1 };
    filter.observe(leg);
    const variance = (days: number) => filter.ability('a', 'stop', leg.atMs + days * DAY).sd ** 2;
    // Table: 0.0015 a day of the skill, 0.0005 of the dog.
    expect(variance(10) - variance(0)).toBeCloseTo(10 * 0.002, 12);
    expect(variance(60) - variance(0)).toBeCloseTo(60 * 0.002, 12);
    expect(variance(900)).toBe(variance(60));
  });
  it('never breaks, however absurd the priors', () => {
    for (const abilityMean of [-1e9, 1e9]) {
      for (const kennelAbilitySd of [1e-3, 1, 1e9]) {
        const filter = createAbilityFilter({ ...shippedPriors, abilityMean, kennelAbilitySd });
        for (const leg of kennelCareer(5, 2, 2, 6)) {
          const { chance, interval90, logOdds } = filter.observe(leg);
          const figures = [...Object.values(chance), ...interval90.good, ...interval90.notMissed];
          expect(figures.every((p) => p >= 0 && p <= 1)).toBe(true);
          expect(Number.isFinite(logOdds.mean) && Number.isFinite(logOdds.sd)).toBe(true);
        }
      }
    }
  });
});

describe('time and names', () => {
  it('a leg altered, added or removed later changes no earlier statement', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 1e6 }),
        fc.nat(95),
        fc.constantFrom('alter', 'add', 'remove'),
        (seed, place, how) => {
          const legs = kennelCareer(seed);
          const k = place % legs.length;
          const leg = legs[k]!;
          const altered = { ...leg, grade: leg.grade === 'good' ? 'missed' : 'good' } as const;
          const put = how === 'alter' ? [altered] : how === 'add' ? [leg, altered] : [];
          const changed = [...legs.slice(0, k), ...put, ...legs.slice(k + 1)];
          expect(run(changed).slice(0, k)).toEqual(run(legs).slice(0, k));
        },
      ),
      { numRuns: 30 },
    );
  });
  it('what dogs and sessions are called does not matter', () => {
    const legs = kennelCareer(6);
    const renamed = legs.map((leg) => ({
      ...leg,
      dog: `x${leg.dog}`.slice(0, 3) + leg.dog.at(-1),
      session: `!${leg.session}`,
    }));
    expect(run(renamed)).toEqual(run(legs));
  });
  it('legs of two dogs that share no kennel learning may be swapped', () => {
    // Weight 0 teaches the kennel nothing: then the dogs are strangers, and order between them can't matter.
    const legs = kennelCareer(7).map((leg) => ({ ...leg, weight: 0 }));
    const one = createAbilityFilter();
    const other = createAbilityFilter();
    run(legs, one);
    run(
      [...legs].sort((a, b) => (a.dog < b.dog ? -1 : a.dog > b.dog ? 1 : a.atMs - b.atMs)),
      other,
    );
    for (const dog of ['dog 0', 'dog 1', 'dog 2'])
      expect(one.forecast(question(dog))).toEqual(other.forecast(question(dog)));
  });
  it('one dog learns from the others of the kennel, a stranger too', () => {
    const filter = createAbilityFilter();
    const fresh = filter.ability('new', 'stop', 0);
    for (let k = 0; k < 30; k++) {
      filter.observe({ ...question(`dog ${k % 3}`), session: `s ${k % 3}`, grade: 'good', weight: 1 });
    }
    expect(filter.ability('new', 'stop', 0).mean).toBeGreaterThan(fresh.mean);
    expect(filter.ability('new', 'stop', 0).sd).toBeLessThan(fresh.sd);
  });
  it('names what is wrong', () => {
    const filter = createAbilityFilter();
    const leg: LegResult = { ...question('a'), session: 's', grade: 'good', weight: 1 };
    expect(() => filter.observe({ ...leg, weight: 1.5 })).toThrow(/^weight: /);
    expect(() => filter.observe({ ...leg, atMs: Number.NaN })).toThrow(/^atMs: /);
    expect(() => filter.observe({ ...leg, ask: { distanceM: -3 } })).toThrow(/^distanceM: /);
    expect(() => filter.chain([])).toThrow(/^questions: /);
    expect(() => filter.chain([leg, { ...leg, dog: 'b' }])).toThrow(/^questions: /);
    expect(() => filter.stretch(leg, { ...leg, skill: 'line' })).toThrow(/^skill: /);
    expect(filter.snapshot()).toEqual(createAbilityFilter().snapshot());
  });
});

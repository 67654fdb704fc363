import { logistic, seededRandom } from '@sedgeline/engine/numeric';
import type { Fact } from '@sedgeline/journal';
import { describe, expect, it } from 'vitest';
import { createKennel } from '../kennel-of-facts.ts';
import { usualAsk } from '../standing/reference-asks.ts';
import { busyKennel } from '../timeline/busy-kennel.fixture.ts';
import { progressOfDog } from './progress-of-dog.ts';

function kennelOf(facts: readonly Fact[]) {
  const kennel = createKennel();
  kennel.add(facts);
  return kennel;
}
type Kennel = ReturnType<typeof kennelOf>;
const progress = (kennel: Kennel, dog: string, skill: 'stop' | 'recall') =>
  progressOfDog(kennel.record, kennel.timeline(), dog, skill);

describe('progress in a busy kennel, its own priors fitted', () => {
  // 3 dogs, 14 sessions each, 10 legs a session: 420 legs, past the 300 at which priors are fitted.
  const kennel = kennelOf(busyKennel(11, 3, 14));
  const view = progress(kennel, 'dog-1', 'stop')!;
  const stated = kennel
    .timeline()
    .stated.filter(({ result }) => result.dog === 'dog-1' && result.skill === 'stop');

  it('has every leg of that dog and skill as a dot, in order, at the chance stated before it', () => {
    expect(kennel.timeline().own.fits).toHaveLength(1);
    expect(view.legs.map(({ rep, chance, weight }) => ({ rep, chance, weight }))).toEqual(
      stated.map(({ rep, forecast, result }) => ({
        rep,
        chance: forecast.chance.good,
        weight: result.weight,
      })),
    );
    expect(view.known).toBe(true);
  });

  it('has a point a session, and counts every leg once', () => {
    expect(view.points.map(({ session }) => session)).toEqual([
      ...new Set(view.legs.map(({ session }) => session)),
    ]);
    const counted = view.points.map(
      ({ counts }) => counts.good + counts.fair + counts.missed + counts.excused,
    );
    expect(counted.reduce((a, b) => a + b)).toBe(stated.length);
    const excused = view.points.reduce((sum, { counts }) => sum + counts.excused, 0);
    expect(excused).toBe(view.legs.filter(({ cause }) => cause === 'handler').length);
    expect(excused).toBeGreaterThan(0);
  });

  it('ends at what is known now, and is never less sure looking back than it was', () => {
    const last = view.points.at(-1)!;
    // The same figures by two ways: rounding alone.
    expect(last.smoothed.chance).toBeCloseTo(last.filtered.chance, 12);
    for (const { filtered, smoothed } of view.points) {
      for (const { chance, interval90 } of [filtered, smoothed]) {
        expect(interval90[0]).toBeLessThan(chance);
        expect(interval90[1]).toBeGreaterThan(chance);
      }
    }
    const width = ({ interval90: [low, high] }: typeof last.filtered) =>
      Math.log(high / (1 - high)) - Math.log(low / (1 - low));
    // In logits, where a width does not depend on its place.
    for (const { filtered, smoothed } of view.points)
      expect(width(smoothed)).toBeLessThan(width(filtered) + 1e-9);
    expect(width(view.points[0]!.smoothed)).toBeLessThan(0.9 * width(view.points[0]!.filtered));
  });

  it('ends at the chance that the program states at the usual ask, had the record ended with that leg', () => {
    const facts = busyKennel(11, 3, 14);
    const lastStop = stated.at(-1)!;
    const until = kennelOf(facts.slice(0, 1 + facts.findIndex(({ body }) => body.rep === lastStop.rep)));
    const timeline = until.timeline();
    expect(timeline.own.fits).toHaveLength(1);
    const { atMs, filtered } = progress(until, 'dog-1', 'stop')!.points.at(-1)!;
    const at = { session: null, ground: null, atMs, repsSinceBreak: 0 };
    const question = timeline.question('dog-1', 'stop', usualAsk('stop'), at, until.record);
    const { chance, interval90 } = timeline.filter.forecast(question);
    // The same sums in another order: rounding alone.
    expect(filtered.chance).toBeCloseTo(chance.good, 10);
    expect(filtered.interval90[0]).toBeCloseTo(interval90.good[0], 10);
    expect(filtered.interval90[1]).toBeCloseTo(interval90.good[1], 10);
  });
});

const day = (n: number, minute = 0) =>
  new Date(Date.parse('2026-01-05T09:00:00Z') + n * 86_400_000 + minute * 60_000).toISOString();

/** A dog asked the same every other day, eight legs a session; `logOdds` is that of good, and 1.2 more of not missed. */
function learner(sessions: number, logOdds: (session: number) => number): readonly Fact[] {
  const random = seededRandom(20);
  const facts: Fact[] = [{ id: 'd', kind: 'dog-added', at: day(-1), body: { dog: 'd', name: 'Teal' } }];
  for (let s = 0; s < sessions; s++) {
    facts.push({ id: `s${s}`, kind: 'session-opened', at: day(2 * s), body: { session: `s${s}`, dog: 'd' } });
    for (let r = 0; r < 8; r++) {
      const u = random.uniform();
      const eta = logOdds(s);
      const grade = u < logistic(eta) ? 'good' : u < logistic(eta + 1.2) ? 'fair' : 'missed';
      facts.push({
        id: `${s}-${r}`,
        kind: 'rep-recorded',
        at: day(2 * s, r + 1),
        body: {
          rep: `${s}-${r}`,
          session: `s${s}`,
          legs: [{ skill: 'stop', ask: usualAsk('stop'), grade }],
        },
      });
    }
  }
  return facts;
}

describe('what the picture shows', () => {
  it('a dog that comes on in two months: rises by month, and the band holds the chance that was planted', () => {
    // 1.2 logits in thirty sessions: what the priors expect of training (0.05 a session, fading by 0.985).
    const planted = (session: number) => -0.6 + (1.2 * session) / 29;
    const view = progress(kennelOf(learner(30, planted)), 'd', 'stop')!;
    const chances = view.points.map(({ smoothed }) => smoothed.chance);
    const mean = (of: readonly number[]) => of.reduce((a, b) => a + b) / of.length;
    const [early, middle, late] = [0, 10, 20].map((from) => mean(chances.slice(from, from + 10)));
    expect(middle!).toBeGreaterThan(early!);
    expect(late!).toBeGreaterThan(middle!);
    // Bands of 90 %, whose errors go together: some may miss, most must hold their chance.
    const held = view.points.filter(({ smoothed: { interval90 } }, n) => {
      const share = logistic(planted(n));
      return interval90[0] <= share && share <= interval90[1];
    });
    expect(held.length).toBeGreaterThanOrEqual(24);
  });

  it('nothing held against the dog: nothing learnt, so looking back is what was known then, gain by gain', () => {
    const excused = learner(9, () => 0).map((fact) => {
      if (fact.kind !== 'rep-recorded') return fact;
      const legs = [{ skill: 'stop', ask: usualAsk('stop'), grade: 'missed', cause: 'setup' }];
      return { ...fact, body: { ...fact.body, legs } };
    });
    const { points } = progress(kennelOf(excused), 'd', 'stop')!;
    expect(points.map(({ counts }) => counts)).toEqual(
      points.map(() => ({ good: 0, fair: 0, missed: 0, excused: 8 })),
    );
    // The filter books the gains of nine sessions, the path books them again: rounding alone between the two.
    for (const { filtered, smoothed } of points) expect(smoothed.chance).toBeCloseTo(filtered.chance, 12);
    expect(points[8]!.filtered.chance).toBeGreaterThan(points[0]!.filtered.chance);
  });

  it('one session: a single point, known as it was', () => {
    const view = progress(kennelOf(learner(1, () => 0)), 'd', 'stop')!;
    expect(view.points).toHaveLength(1);
    expect(view.known).toBe(false);
    expect(view.points[0]!.smoothed.chance).toBeCloseTo(view.points[0]!.filtered.chance, 12);
  });

  it('a skill never worked, and a dog that no fact names', () => {
    const kennel = kennelOf(learner(1, () => 0));
    expect(progress(kennel, 'd', 'recall')).toMatchObject({ points: [], legs: [], known: false });
    expect(progress(kennel, 'nobody', 'stop')).toBeNull();
  });

  it('sessions side by side, and all legs in one minute', () => {
    const facts = learner(2, () => 0).map((fact) => ({ ...fact, at: day(0) }));
    const mixed = [...facts].sort((a, b) => a.id.slice(2).localeCompare(b.id.slice(2)));
    const view = progress(kennelOf(mixed), 'd', 'stop')!;
    expect(view.points).toHaveLength(2);
    for (const { smoothed } of view.points) {
      expect(Number.isFinite(smoothed.chance + smoothed.interval90[0] + smoothed.interval90[1])).toBe(true);
    }
  });

  it('a puppy grows: with the same legs its later chance is higher for its age alone', () => {
    const facts = learner(8, () => 0);
    const born = (date: string) =>
      facts.map((fact) =>
        fact.kind === 'dog-added' ? { ...fact, body: { ...fact.body, born: date } } : fact,
      );
    // Six months old at the first session, and more than a year: under 12 months each six cost 0.4 logits (priors, our judgement).
    const puppy = progress(kennelOf(born('2025-07-05')), 'd', 'stop')!;
    const grown = progress(kennelOf(born('2023-07-05')), 'd', 'stop')!;
    const rise = ({ points }: typeof puppy) => points.at(-1)!.smoothed.chance - points[0]!.smoothed.chance;
    expect(rise(puppy)).toBeGreaterThan(rise(grown));
  });
});

import { createAbilityFilter, easyAsk, harderFields } from '@sedgeline/engine/ability';
import { type Plan, planSession, type RuleName } from '@sedgeline/engine/session';
import { describe, expect, it } from 'vitest';
import { TrainingDay } from '../work/training-day.fixture.ts';
import { inputOf, planOf, trainedDog } from './trained-dog.fixture.ts';

/** What a handler would check on paper. Limits: the plan's contract (common practice, no source), unless said otherwise. */
const codes = (plan: Plan) => plan.cautions.map(({ code }) => code);
const rule = (plan: Plan, name: RuleName) => plan.rules.find((one) => one.rule === name);
const isKept = (plan: Plan, name: RuleName) => rule(plan, name)?.kept;
const legs = (plan: Plan) => plan.reps.flatMap((rep) => rep.legs);
const skills = (plan: Plan) => new Set<string>(legs(plan).map(({ skill }) => skill));
const sides = (plan: Plan) => plan.reps.map(({ side }) => side).filter((side) => side !== 'none');
const things = (plan: Plan) => plan.reps.flatMap(({ layout }) => layout.things);
const SEEDS = Array.from({ length: 8 }, (_, n) => n);
/** The dog of most scenarios, by itself so that it is folded once. */
const WREN = trainedDog();
const WORRIED = trainedDog({ hangsBack: true });
const mean = (list: readonly number[]) => list.reduce((so, one) => so + one, 0) / list.length;
const pup = (born: string) => new TrainingDay('2026-03-01T09:00:00Z').dog('wren', { born });

describe('a session as a handler would check it', () => {
  it('an ordinary fifteen minutes: known first, a good finish, every rule kept, and near the time asked for', () => {
    for (const seed of SEEDS) {
      const plan = planOf(WREN, {}, { seed });
      expect(plan.rules.filter(({ kept }) => !kept)).toEqual([]);
      expect(plan.reps[0]?.purpose).toBe('check');
      expect(plan.reps.at(-1)?.purpose).toBe('finish');
      expect(plan.reps.length).toBeGreaterThanOrEqual(5);
      expect(plan.minutesExpected.p50).toBeLessThanOrEqual(15);
      // Two reps short of the time would be a session cut short: a rep takes some two minutes.
      expect(plan.minutesExpected.p50).toBeGreaterThan(10);
      expect(plan.reps.some(({ purpose }) => purpose === 'build')).toBe(true);
    }
  });

  it('a new puppy: easy ends alone, short, and says that nothing is known', () => {
    const plan = planOf(pup('2025-12-20'), { ground: undefined });
    expect(plan.reps.length).toBeGreaterThan(1);
    // The first rep is the easy end; nothing that never went well is asked harder (contract, "Details").
    for (const { skill, ask } of plan.reps[0]?.legs ?? []) {
      expect(harderFields(ask, easyAsk(skill), skill)).toEqual([]);
    }
    expect(plan.minutesExpected.p50).toBeLessThanOrEqual(12);
    expect(codes(plan)).toEqual(expect.arrayContaining(['joints', 'nothing-known-yet']));
    expect(rule(plan, 'known-first')).toMatchObject({ kept: false, why: { code: 'nothing-known-yet' } });
    expect(isKept(plan, 'safe')).toBe(true);
    // A little of several things, a few of each, and nothing raised on what has yet to go well once.
    expect(skills(plan).size).toBeGreaterThanOrEqual(3);
    expect(plan.reps.length).toBeLessThanOrEqual(8);
    expect(plan.reps.map(({ purpose }) => purpose)).not.toContain('build');
  });

  it('a dog that expects the whistle is let run straight through more often, and in no fixed order', () => {
    const cleans = (hangsBack: boolean) =>
      SEEDS.map((seed) => {
        const plan = planOf(hangsBack ? WORRIED : WREN, { skills: ['stop'], minutes: 25 }, { seed });
        const sends = plan.reps.slice(1, -1);
        return sends.filter(({ clean }) => clean).length / sends.length;
      });
    // Hanging back at every clean send drives the wanted share to its bound of 3 in 5; a dog that never does stays near 1 in 4.
    expect(mean(cleans(true))).toBeGreaterThan(mean(cleans(false)) + 0.15);
    const orders = SEEDS.map((seed) =>
      planOf(WORRIED, { skills: ['stop'], minutes: 25 }, { seed })
        .reps.map(({ clean }) => (clean ? 'c' : 's'))
        .join(''),
    );
    expect(new Set(orders).size).toBeGreaterThan(SEEDS.length / 2);
  });

  it('a one-sided dog: both sides even, the weak one named, and asked what it can do', () => {
    const dog = trainedDog({ missEvery: { 'cast-right': 2 } });
    for (const seed of SEEDS) {
      const plan = planOf(dog, { skills: ['cast-left', 'cast-right'], minutes: 20 }, { seed });
      const left = sides(plan).filter((side) => side === 'left').length;
      expect(Math.abs(2 * left - sides(plan).length)).toBeLessThanOrEqual(1);
      expect(sides(plan)).toContain('right');
      const weak = plan.reps.filter(({ side }) => side === 'right');
      expect(weak.flatMap(({ reasons }) => reasons)).toContainEqual({
        code: 'weaker-side',
        skill: 'cast-right',
      });
      for (const leg of weak.flatMap((rep) => rep.legs))
        expect(1 - leg.chance.missed).toBeGreaterThanOrEqual(0.65);
      // Begun and ended with what is sure, whichever side that is.
      for (const rep of [plan.reps[0], plan.reps.at(-1)])
        for (const leg of rep?.legs ?? []) expect(1 - leg.chance.missed).toBeGreaterThanOrEqual(0.85);
    }
  });

  it('one side asked for: the other is worked with it, since both sides stay even', () => {
    const plan = planOf(WREN, { skills: ['cast-left'], minutes: 20 });
    expect(skills(plan)).toContain('cast-right');
    expect(isKept(plan, 'even-sides')).toBe(true);
  });

  it('a long lay-off: says so, and asks no more than before it', () => {
    const fresh = planOf(WREN);
    const rusty = planOf(WREN, {}, { days: 60 });
    expect(codes(rusty)).toContain('long-lay-off');
    expect(codes(fresh)).not.toContain('long-lay-off');
    expect(isKept(rusty, 'within-reach')).toBe(true);
    expect(rusty.reps.map(({ purpose }) => purpose)).not.toContain('build');
    expect(rusty.reps.length).toBeGreaterThan(5);
    const stretched = (plan: Plan) => mean(legs(plan).map(({ stretch }) => stretch ?? 0));
    expect(mean(SEEDS.map((seed) => stretched(planOf(WREN, {}, { seed, days: 60 }))))).toBeLessThanOrEqual(
      mean(SEEDS.map((seed) => stretched(planOf(WREN, {}, { seed })))) + 0.05,
    );
  });

  it('eight minutes: fewer reps, no break, a check and a finish all the same', () => {
    const plan = planOf(WREN, { minutes: 8 });
    expect(plan.minutesExpected.p50).toBeLessThanOrEqual(8);
    expect(plan.reps.length).toBeLessThan(planOf(WREN, { minutes: 20 }).reps.length);
    expect(plan.breaks).toEqual([]);
    expect(plan.reps[0]?.purpose).toBe('check');
    expect(isKept(plan, 'finish-well')).toBe(true);
  });

  it('three minutes: one or two good ones, and says that there is little time', () => {
    const plan = planOf(WREN, { minutes: 3 });
    expect(plan.reps.length).toBeGreaterThanOrEqual(1);
    expect(plan.reps.length).toBeLessThanOrEqual(3);
    expect(plan.minutesExpected.p50).toBeLessThanOrEqual(3);
    expect(plan.reps.at(-1)?.purpose).toBe('finish');
    expect(codes(plan)).toContain('little-time');
  });

  it('half an hour: a break before twelve minutes or twelve reps have gone by', () => {
    for (const seed of SEEDS) {
      const plan = planOf(WREN, { minutes: 30 }, { seed });
      expect(plan.breaks.length).toBeGreaterThanOrEqual(1);
      const ends = [0, ...plan.breaks.map(({ afterRep }) => afterRep), plan.reps.length];
      const worked = plan.minutesExpected.p50 - plan.breaks.reduce((so, { minutes }) => so + minutes, 0);
      for (let n = 1; n < ends.length; n++) {
        const reps = (ends[n] ?? 0) - (ends[n - 1] ?? 0);
        expect(reps).toBeLessThanOrEqual(12);
        expect((reps * worked) / plan.reps.length).toBeLessThanOrEqual(12);
      }
    }
  });

  it('a hot day: at most eight reps and ten minutes, with a word on heat; hotter still, none', () => {
    for (const weather of [{ airC: 30 }, { airC: 27.5, humidityPct: 75 }]) {
      const plan = planOf(WREN, { minutes: 25, weather });
      expect(plan.reps.length).toBeGreaterThan(0);
      expect(plan.reps.length).toBeLessThanOrEqual(8);
      expect(plan.minutesExpected.p50).toBeLessThanOrEqual(10);
      expect(codes(plan)[0]).toBe('heat');
      expect(isKept(plan, 'safe')).toBe(true);
    }
    const none = planOf(WREN, { minutes: 25, weather: { airC: 35 } });
    expect(none.reps).toEqual([]);
    expect(codes(none)[0]).toBe('too-hot-to-work');
    expect(none.minutesExpected).toEqual({ p50: 0, p90: 0 });
    // Dry and 27.5 is no heat by the contract.
    expect(planOf(WREN, { minutes: 25, weather: { airC: 27.5 } }).minutesExpected.p50).toBeGreaterThan(10);
  });

  it('new ground: says so, takes a step down, and stays within reach', () => {
    const hardest = (ground: string) =>
      mean(
        SEEDS.map((seed) => {
          const input = inputOf(WREN, { ground }, { seed });
          // Asked at home, so that the two plans are measured by one rule.
          const home = inputOf(WREN);
          return mean(
            planSession(input).reps.map((rep) =>
              Math.max(
                ...rep.legs.map(
                  (leg) => home.known.filter.forecast(home.known.question(leg.skill, leg.ask)).chance.missed,
                ),
              ),
            ),
          );
        }),
      );
    expect(hardest('moor')).toBeLessThan(hardest('home'));
    const plan = planOf(WREN, { ground: 'moor' });
    expect(codes(plan)).toContain('new-ground');
    expect(isKept(plan, 'within-reach')).toBe(true);
  });

  it('no kit: nothing is laid out, whatever was asked for, and says so', () => {
    for (const request of [
      {},
      { skills: ['mark', 'line'] as const },
      { focus: { skill: 'delivery' as const } },
    ]) {
      const plan = planOf(WREN, { ...request, kit: { posts: 0, dummies: 0 } });
      expect(plan.reps.length).toBeGreaterThan(0);
      expect(things(plan)).toEqual([]);
      expect(plan.reps.flatMap(({ before }) => before).filter((errand) => errand.do !== 'walk')).toEqual([]);
      expect(codes(plan)).toContain('little-kit');
      // Nor does a dummy draw the dog that nobody has.
      for (const { ask } of legs(plan)) expect(['none', 'game']).toContain(ask.temptation ?? 'none');
    }
  });

  it('a dog under a year: no way over 80 m, however far it has gone, and fifteen minutes at most', () => {
    const day = pup('2025-06-01');
    for (let session = 0; session < 5; session++) {
      day.wait(2 * 24 * 60).open(`s${session}`, 'wren', { ground: 'home' });
      for (const distanceM of [60, 75, 80, 85, 100]) {
        day.rep([
          { skill: 'line', ask: { distanceM } },
          { skill: 'pickup' },
          { skill: 'delivery', ask: { distanceM } },
        ]);
      }
    }
    for (const seed of SEEDS) {
      const plan = planOf(day, { minutes: 25 }, { seed });
      expect(plan.reps.length).toBeGreaterThan(2);
      for (const { ask } of legs(plan)) expect(ask.distanceM ?? 0).toBeLessThanOrEqual(80);
      expect(codes(plan)).toContain('joints');
      expect(plan.minutesExpected.p50).toBeLessThanOrEqual(15);
    }
  });

  it('a focus with an ask: the work goes there, and what is raised lies that way', () => {
    const ask = { distanceM: 60 };
    const plan = planOf(WREN, { focus: { skill: 'line', ask }, minutes: 20 });
    const raised = plan.reps.filter(({ purpose }) => purpose === 'build').flatMap(({ reasons }) => reasons);
    expect(
      plan.reps.slice(1, -1).every(({ legs: chain }) => chain.some(({ skill }) => skill === 'line')),
    ).toBe(true);
    expect(raised.map(({ field }) => field)).toContain('distanceM');
  });
});

describe('where a plan comes from', () => {
  it('the same last session after different histories gives different plans, as the chances say', () => {
    const sure = trainedDog({ goodLast: true, missEvery: { stop: 40, 'cast-left': 40, 'cast-right': 40 } });
    const shaky = trainedDog({ goodLast: true, missEvery: { stop: 2, 'cast-left': 2, 'cast-right': 2 } });
    const request = { skills: ['stop' as const] };
    const lastOf = (day: TrainingDay) =>
      day.facts.slice(-6).map(({ body }) => ({ ...body, rep: '', session: '' }));
    expect(lastOf(shaky)).toEqual(lastOf(sure));
    const [one, other] = [planOf(sure, request), planOf(shaky, request)];
    expect(one.reps.map((rep) => rep.legs.map(({ ask }) => ask))).not.toEqual(
      other.reps.map((rep) => rep.legs.map(({ ask }) => ask)),
    );
    // Asked as the surer dog is asked, the other would fail more: the plans differ because the chances do.
    const shakyInput = inputOf(shaky, request);
    const missed = (plan: Plan) =>
      mean(
        legs(plan).map(
          ({ skill, ask }) =>
            shakyInput.known.filter.forecast(shakyInput.known.question(skill, ask)).chance.missed,
        ),
      );
    expect(missed(one)).toBeGreaterThan(missed(other));
  });

  it('with the estimates deleted the plan is another: a filter that has learnt nothing asks other things', () => {
    const input = inputOf(trainedDog({ missEvery: { stop: 3 } }));
    const unlearnt = { ...input, known: { ...input.known, filter: createAbilityFilter() } };
    const asks = (plan: Plan) => plan.reps.map((rep) => rep.legs.map(({ skill, ask }) => ({ skill, ask })));
    expect(asks(planSession(unlearnt))).not.toEqual(asks(planSession(input)));
  });

  it('another seed is another session of the same worth: "another like it"', () => {
    const plans = SEEDS.map((seed) => JSON.stringify(planOf(WREN, {}, { seed }).reps));
    expect(new Set(plans).size).toBeGreaterThan(SEEDS.length / 2);
  });

  it("no minutes at all is the caller's bug", () => {
    expect(() => planOf(WREN, { minutes: 0 })).toThrow(RangeError);
  });

  it('the way out of a rep stays on its side, and straight through where it was; it is easier', () => {
    for (const seed of SEEDS) {
      for (const rep of planOf(WREN, { minutes: 25 }, { seed }).reps) {
        const sidesOf = (chain: readonly { readonly skill: string }[]) =>
          chain.map(({ skill }) => skill).filter((skill) => /^cast-(left|right)$|^stop$/.test(skill));
        expect(sidesOf(rep.easier.legs)).toEqual(sidesOf(rep.legs));
      }
    }
  });

  it('asks for no cover, ditch or company that the ground has not had, unless a goal wants it', () => {
    const wanted = (plan: Plan) =>
      legs(plan).map(({ ask }) => [ask.cover ?? 0, ask.obstacle ?? 0, ask.distraction ?? 0]);
    for (const seed of SEEDS) {
      for (const found of wanted(planOf(WREN, { minutes: 25 }, { seed }))) expect(found).toEqual([0, 0, 0]);
    }
    const cover = { skill: 'line' as const, ask: { distanceM: 30, cover: 2 } };
    const focused = SEEDS.map((seed) => planOf(WREN, { minutes: 25, focus: cover }, { seed }));
    expect(Math.max(...focused.flatMap(wanted).map(([most = 0]) => most))).toBeGreaterThan(0);
    expect(Math.max(...focused.flatMap(wanted).map(([, ditch = 0]) => ditch))).toBe(0);
  });
});

import { ASK_RANGES, type Ask, SKILLS } from '@sedgeline/engine/ability';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chanceAnswer } from '../answers/answers.ts';
import { createKennel } from '../kennel-of-facts.ts';
import { TrainingDay } from '../work/training-day.fixture.ts';
import { forecastAnswer } from './forecast-answer.ts';
import { forecastOfGoal } from './forecast-of-goal.ts';
import { ownPace } from './own-pace.ts';

const DAY = '2026-03-01T06:00:00Z';
const STOP = { skill: 'stop', ask: { distanceM: 20 }, chance: 0.7 } as const;
const DAY_MINUTES = 24 * 60;

const goalOf = (asks: readonly object[], more: object = {}) => ({
  goal: 'g',
  dog: 'd',
  name: 'Aim',
  asks,
  ...more,
});

/** Sessions of a stop and a recall every third day. */
function trained(sessions: number): TrainingDay {
  const day = new TrainingDay(DAY).dog('d');
  for (let n = 0; n < sessions; n++) {
    day.open(`s${n}`, 'd');
    for (let k = 0; k < 6; k++)
      day.rep([
        {
          skill: k % 2 === 0 ? 'stop' : 'recall',
          ask: { distanceM: 10 + 5 * (k % 3) },
          grade: k === 4 ? 'missed' : 'good',
        },
      ]);
    day.wait(3 * DAY_MINUTES);
  }
  return day;
}

function forecast(day: TrainingDay, options: Partial<Parameters<typeof forecastOfGoal>[3]> = {}) {
  const kennel = createKennel();
  kennel.add(day.facts);
  const goal = kennel.record.goals.get('g')!;
  const view = forecastOfGoal(kennel.record, kennel.timeline(), goal, {
    atMs: day.atMs,
    seed: 0,
    perWeek: null,
    ...options,
  });
  return { kennel, view, answer: forecastAnswer(view) };
}

describe('forecast of a goal', () => {
  it('has the contract’s fields; one ask is now what `chance` states', () => {
    const day = trained(12).write('goal-set', goalOf([STOP], { by: '2026-06-30' }));
    const { kennel, answer } = forecast(day);
    const { dog, skill, ask } = { dog: 'd', ...STOP };
    const chance = chanceAnswer(kennel, { dog, skill, ask, ground: null, atMs: day.atMs });
    expect(answer.now).toEqual({ chance: chance.chance.good, interval90: chance.interval90.good });
    expect(answer.weeks).toHaveLength(27);
    expect(answer.weeks.map(({ week }) => week)).toEqual(Array.from({ length: 27 }, (_, week) => week));
    expect(Object.keys(answer.readyInWeeks)).toEqual(['p10', 'p50', 'p90']);
    expect(answer.first.map(({ skill: s, factor }) => `${s} ${factor}`)).toEqual(['stop distance']);
    // 12 sessions in 36 days, the last of them three days ago: six weeks.
    expect(answer.perWeek).toBe(2);
    const at = Math.floor((Date.parse('2026-06-30T00:00:00Z') - day.atMs) / (7 * 86_400_000));
    expect(answer.by).toEqual({
      date: '2026-06-30',
      week: at,
      probabilityReady: answer.weeks[at]!.probabilityReady,
    });
  });

  it('can’t say with no session, or with no ask', () => {
    const none = forecast(new TrainingDay(DAY).dog('d').write('goal-set', goalOf([STOP])));
    expect(none.answer).toMatchObject({ cantSay: 'no-session', now: null, weeks: [], first: [] });
    expect(none.answer.readyInWeeks).toEqual({ p10: null, p50: null, p90: null });
    const told = forecast(new TrainingDay(DAY).dog('d').write('goal-set', goalOf([STOP])), { perWeek: 3 });
    expect(told.view.kind).toBe('cant-say');
    const empty = forecast(trained(3).write('goal-set', goalOf([])));
    expect(empty.answer).toMatchObject({ cantSay: 'no-asks', weeks: [] });
    const onlyOpened = forecast(
      new TrainingDay(DAY)
        .dog('d')
        .open('s', 'd')
        .write('goal-set', goalOf([STOP])),
    );
    expect(onlyOpened.answer).toMatchObject({ cantSay: 'no-session' });
  });

  it('answers for a skill that was never worked, and says that it is not known', () => {
    const heel = { skill: 'heel', ask: { distraction: 1 }, chance: 0.8 };
    const { view } = forecast(trained(8).write('goal-set', goalOf([STOP, heel])));
    expect(view.asks.map(({ known, legs }) => ({ known, legs }))).toEqual([
      { known: true, legs: 24 },
      { known: false, legs: 0 },
    ]);
    expect(view.kind).toBe('forecast');
  });

  it('a goal already reached is ready in week 0', () => {
    const { answer } = forecast(trained(20).write('goal-set', goalOf([{ ...STOP, chance: 0.2 }])));
    expect(answer.readyInWeeks).toEqual({ p10: 0, p50: 0, p90: 0 });
  });

  it('no session a week is a lay-off: nobody gets readier by it than with three', () => {
    const day = trained(12).write('goal-set', goalOf([{ ...STOP, chance: 0.9 }]));
    const [idle, busy] = [0, 3].map((perWeek) => forecast(day, { perWeek }).answer);
    expect(idle!.weeks[26]!.chance).toBeLessThan(idle!.now!.chance);
    expect(busy!.weeks[26]!.chance).toBeGreaterThan(busy!.now!.chance);
  });

  it('a date that has passed, or lies years off, is not told; one within the year is looked ahead to', () => {
    const by = (date: string) => forecast(trained(4).write('goal-set', goalOf([STOP], { by: date }))).answer;
    expect(by('2026-01-01').by).toBeNull();
    expect(by('2031-01-01').by).toBeNull();
    const far = by('2027-01-20');
    expect(far.by?.week).toBeGreaterThan(26);
    expect(far.weeks).toHaveLength(far.by!.week + 1);
  });

  const number = (field: keyof typeof ASK_RANGES) =>
    fc.option(fc.double({ min: ASK_RANGES[field][0], max: ASK_RANGES[field][1], noNaN: true }), {
      nil: undefined,
    });
  const anyAsk: fc.Arbitrary<Ask> = fc.record({
    distanceM: number('distanceM'),
    wayFraction: number('wayFraction'),
    cover: number('cover'),
    waitS: number('waitS'),
    castM: number('castM'),
    temptation: fc.constantFrom(undefined, 'none', 'post', 'game'),
  });
  const anyGoal = fc.array(
    fc.record({
      skill: fc.constantFrom(...SKILLS),
      ask: anyAsk,
      chance: fc.oneof(fc.constantFrom(0, 1), fc.double({ min: 0, max: 1, noNaN: true })),
    }),
    { minLength: 1, maxLength: 4 },
  );

  it('any goal at any pace: numbers, in their ranges, readiness never falling, quantiles as the weeks have them', () => {
    const day = trained(5);
    fc.assert(
      fc.property(
        anyGoal,
        fc.option(fc.double({ min: 0, max: 21, noNaN: true }), { nil: null }),
        fc.nat(),
        (asks, perWeek, seed) => {
          const record = new TrainingDay(DAY);
          record.facts.push(...day.facts, {
            id: 'goal',
            kind: 'goal-set',
            at: new Date(day.atMs).toISOString(),
            body: goalOf(asks),
          });
          const kennel = createKennel();
          kennel.add(record.facts);
          const view = forecastOfGoal(kennel.record, kennel.timeline(), kennel.record.goals.get('g')!, {
            atMs: day.atMs,
            seed,
            perWeek,
          });
          const { now, weeks, readyInWeeks, first } = forecastAnswer(view);
          const chances = [now!, ...weeks].flatMap(({ chance, interval90 }) => [chance, ...interval90]);
          expect(chances.filter((chance) => !(chance >= 0 && chance <= 1))).toEqual([]);
          expect(weeks.filter(({ interval90: [low, high] }) => low > high)).toEqual([]);
          const ready = weeks.map(({ probabilityReady }) => probabilityReady);
          expect(ready.filter((p, n) => !(p >= (ready[n - 1] ?? 0) && p <= 1))).toEqual([]);
          for (const [name, share] of [
            ['p10', 0.1],
            ['p50', 0.5],
            ['p90', 0.9],
          ] as const) {
            const week = ready.findIndex((p) => p >= share);
            expect(readyInWeeks[name]).toBe(week < 0 ? null : week);
          }
          expect(first.filter(({ gain }) => !(gain > 0 && gain <= 1))).toEqual([]);
        },
      ),
      { numRuns: 25 },
    );
  });
});

describe('a dog’s own pace', () => {
  it('counts its own sessions with a rep by weeks back from the moment, oldest first', () => {
    const kennel = createKennel();
    const day = new TrainingDay(DAY).dog('d').dog('other');
    const hold = (name: string, dog: string) => day.open(name, dog).rep([{ skill: 'stop' }]);
    hold('a', 'd').wait(2 * DAY_MINUTES);
    hold('b', 'd')
      .open('empty', 'd')
      .wait(21 * DAY_MINUTES);
    hold('c', 'other');
    day.open('last', 'd').rep([{ skill: 'recall' }]);
    kennel.add(day.facts);
    const pace = ownPace(kennel.record, 'd', day.atMs);
    // a and b 23 and 21 days before the last: both in the fourth week back.
    expect(pace.sessionsByWeek).toEqual([2, 0, 0, 1]);
    expect(pace.share('stop')).toBe(3 / 5);
    expect(pace.share('recall')).toBe(2 / 5);
    expect(pace.share('heel')).toBe(0.5);
    expect(ownPace(kennel.record, 'nobody', day.atMs).sessionsByWeek).toEqual([]);
  });
});

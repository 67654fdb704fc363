import { castSide, type Plan, type PlanEdit, planFaults } from '@sedgeline/engine/session';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createKennel } from '../kennel-of-facts.ts';
import { editedPlan, planFor } from './plan-answer.ts';
import { planFacts } from './plan-facts.ts';
import { planInput } from './plan-input.ts';
import { DAY_MS, trainedDog } from './trained-dog.fixture.ts';

const DAY = trainedDog();
const KENNEL = createKennel();
KENNEL.add(DAY.facts);
const REQUEST = { dog: 'wren', minutes: 20, ground: 'home' } as const;
const AT_MS = DAY.atMs + DAY_MS;
const planned = (seed = 3) => planFor(KENNEL, REQUEST, { atMs: AT_MS, seed });
const edited = (plan: Plan, edit: PlanEdit) => editedPlan(KENNEL, REQUEST, plan, edit, AT_MS);
const facts = planFacts(planInput(KENNEL.record, KENNEL.timeline(), REQUEST, AT_MS, 3));
const asks = (plan: Plan | null) =>
  (plan?.reps ?? []).map(({ legs }) => JSON.stringify(legs.map(({ skill, ask }) => [skill, ask])));
const verdict = (plan: Plan | null, rule: string) => plan?.rules.find((one) => one.rule === rule);

describe('a plan with a change of the handler', () => {
  it('drops a rep and leaves the others as they are asked, numbered anew', () => {
    const plan = planned();
    const left = edited(plan, { do: 'drop', n: 3 });
    expect(asks(left)).toEqual(asks(plan).filter((_, n) => n !== 2));
    expect(left?.reps.map(({ n }) => n)).toEqual(plan.reps.slice(1).map((_, n) => n + 1));
    expect(left?.minutesExpected.p50).toBeLessThan(plan.minutesExpected.p50);
  });

  it('moves a rep, and back again gives the plan as it was', () => {
    const plan = planned();
    const there = edited(plan, { do: 'move', n: 2, to: 4 });
    const [first, second, third, fourth, ...rest] = asks(plan);
    expect(asks(there)).toEqual([first, third, fourth, second, ...rest]);
    if (there === null) throw new Error('expected the rep to move');
    const back = edited(there, { do: 'move', n: 4, to: 2 });
    expect(asks(back)).toEqual(asks(plan));
    expect(back?.reps.map(({ legs }) => legs)).toEqual(plan.reps.map(({ legs }) => legs));
    expect(back?.minutesExpected).toEqual(plan.minutesExpected);
  });

  it('asks something else in a place, each turn another thing, all else as it was', () => {
    const plan = planned();
    const others = [0, 1, 2].map((turn) => edited(plan, { do: 'swap', n: 3, turn }));
    const asked = others.map((other) => asks(other)[2]);
    expect(new Set([...asked, asks(plan)[2]]).size).toBe(4);
    for (const other of others) expect(asks(other).toSpliced(2, 1)).toEqual(asks(plan).toSpliced(2, 1));
  });

  it('adds a rep where it is told to', () => {
    const plan = planned();
    const more = edited(plan, { do: 'add', after: 2, turn: 0 });
    expect(asks(more).toSpliced(2, 1)).toEqual(asks(plan));
    expect(more?.minutesExpected.p50).toBeGreaterThan(plan.minutesExpected.p50);
  });

  it('says at once which rule an edit breaks, and what would mend it', () => {
    const plan = planned();
    const isSided = ({ legs }: Plan['reps'][number]) =>
      legs.some(({ skill }) => ['left', 'right'].includes(castSide(skill) ?? ''));
    const sided = plan.reps.filter(isSided);
    const oneWay = sided.filter(({ side }) => side === 'left').map(({ n }) => n);
    expect(oneWay.length).toBeGreaterThan(0);
    let now: Plan = plan;
    for (const n of oneWay.toReversed()) now = edited(now, { do: 'drop', n }) ?? now;
    const twice = edited(now, {
      do: 'ask',
      n: 2,
      legs: sided.find(({ side }) => side === 'right')?.legs ?? [],
    });
    expect(verdict(twice, 'even-sides')).toMatchObject({
      kept: false,
      why: { code: 'sides-uneven', left: 0 },
      mend: { code: 'turn-to-the-other-side', side: 'left' },
    });
    const unfinished = edited(plan, { do: 'drop', n: plan.reps.length });
    const tooFar = edited(unfinished ?? plan, {
      do: 'ask',
      n: (unfinished ?? plan).reps.length,
      legs: [{ skill: 'recall', ask: { distanceM: 390, distraction: 3 } }],
    });
    expect(verdict(tooFar, 'finish-well')).toMatchObject({ kept: false, why: { code: 'last-is-no-finish' } });
  });

  it('puts in a break and takes it out', () => {
    const plan = planFor(KENNEL, { ...REQUEST, minutes: 10 }, { atMs: AT_MS, seed: 1 });
    expect(plan.breaks).toEqual([]);
    const rested = edited(plan, { do: 'break', after: 2, takes: true });
    expect(rested?.breaks).toEqual([{ afterRep: 2, minutes: 3 }]);
    expect(rested === null ? null : edited(rested, { do: 'break', after: 2, takes: false })?.breaks).toEqual(
      [],
    );
  });

  it('knows no such rep, and no such ask', () => {
    expect(() => edited(planned(), { do: 'drop', n: 99 })).toThrow(/n: expected a rep's number/);
    const legs = [{ skill: 'recall' as const, ask: { distanceM: -4 } }];
    expect(() => edited(planned(), { do: 'ask', n: 1, legs })).toThrow(RangeError);
  });

  it('can be believed and walked after any edits', () => {
    const edit: fc.Arbitrary<PlanEdit> = fc.oneof(
      fc.record({ do: fc.constant('drop' as const), n: fc.integer({ min: 1, max: 6 }) }),
      fc.record({
        do: fc.constant('move' as const),
        n: fc.integer({ min: 1, max: 6 }),
        to: fc.integer({ min: 1, max: 6 }),
      }),
      fc.record({ do: fc.constant('swap' as const), n: fc.integer({ min: 1, max: 6 }), turn: fc.nat(9) }),
      fc.record({ do: fc.constant('add' as const), after: fc.integer({ min: 0, max: 6 }), turn: fc.nat(9) }),
      fc.record({
        do: fc.constant('break' as const),
        after: fc.integer({ min: 1, max: 6 }),
        takes: fc.boolean(),
      }),
    );
    fc.assert(
      fc.property(fc.nat(40), fc.array(edit, { maxLength: 5 }), (seed, edits) => {
        let plan = planned(seed);
        for (const one of edits) {
          const numbers = Object.entries(one).filter(([key]) => ['n', 'to', 'after'].includes(key));
          if (numbers.some(([, n]) => typeof n === 'number' && n > plan.reps.length)) continue;
          plan = edited(plan, one) ?? plan;
        }
        expect(planFaults(plan, facts)).toEqual([]);
      }),
      { numRuns: 30 },
    );
  }, 120_000);
});

describe('reps that are locked', () => {
  it('stay where they are in another plan like it', () => {
    const plan = planned(3);
    const kept = [2, 4].map((n) => ({ n, legs: plan.reps[n - 1]?.legs ?? [] }));
    for (const seed of [11, 12, 13, 14]) {
      const other = planFor(KENNEL, REQUEST, { atMs: AT_MS, seed }, kept);
      expect(asks(other)[1]).toBe(asks(plan)[1]);
      expect(asks(other)[3]).toBe(asks(plan)[3]);
      expect(asks(other)).not.toEqual(asks(plan));
      expect(planFaults(other, facts)).toEqual([]);
    }
  });

  it('are let go from the last where they cannot be had, and the plan says how many', () => {
    const plan = planned(3);
    const kept = plan.reps.map(({ n, legs }) => ({ n, legs }));
    const short = planFor(KENNEL, { ...REQUEST, minutes: 6 }, { atMs: AT_MS, seed: 3 }, kept);
    expect(short.reps.length).toBeGreaterThan(0);
    expect(short.minutesExpected.p50).toBeLessThanOrEqual(6);
    const caution = short.cautions.find(({ code }) => code === 'locks-let-go');
    expect(caution?.count).toBeGreaterThan(0);
    const held = kept.length - (caution?.count ?? 0);
    expect(asks(short)).toEqual(expect.arrayContaining(asks(plan).slice(0, held)));
  });
});

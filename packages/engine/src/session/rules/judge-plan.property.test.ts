import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { PURPOSES } from '../next/next-answer.ts';
import type { Plan } from '../plan/plan.ts';
import { RULES } from '../plan/rule-verdict.ts';
import {
  cast,
  facts,
  finish,
  goodPlan,
  leg,
  planOf,
  rep,
  stopped,
  straight,
} from './hand-made-plan.fixture.ts';
import { judgePlan } from './judge-plan.ts';
import { falseClaims } from './own-rules.ts';

/** Any figure that a document may hold where a chance or minutes should be. */
const figure = fc.oneof(
  fc.double({ min: -1, max: 2, noNaN: true }),
  fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, 0, 0.15, 0.35),
);
const legs = fc.oneof(
  fc.constant(straight()),
  fc.double({ min: 0, max: 1, noNaN: true }).map((way) => stopped(way)),
  fc.constantFrom(cast('left'), cast('right'), []),
  fc.tuple(figure, fc.nat(3)).map(([missed, cover]) => [leg('line', { cover, distanceM: 90 }, missed)]),
);
const anyPlan: fc.Arbitrary<Plan> = fc
  .tuple(
    fc.array(fc.tuple(fc.constantFrom(...PURPOSES), legs), { maxLength: 16 }),
    figure.map((each) => each * 20),
    fc.array(fc.record({ afterRep: fc.integer({ min: -1, max: 20 }), minutes: figure }), { maxLength: 3 }),
  )
  .map(([reps, p50, breaks]) =>
    planOf(
      reps.map(([purpose, chain], at) => rep(at + 1, purpose, chain)),
      { minutesExpected: { p50, p90: p50 }, breaks },
    ),
  );
const anyFacts = fc
  .record({
    ageMonths: fc.option(fc.double({ min: 0, max: 120, noNaN: true })),
    airC: fc.double({ min: -10, max: 45, noNaN: true }),
    cleanShareWanted: fc.double({ min: 0.2, max: 0.6, noNaN: true }),
  })
  .map(({ ageMonths, airC, cleanShareWanted }) => facts({ ageMonths, cleanShareWanted, weather: { airC } }));

/** Every number anywhere in a value. */
function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  return value !== null && typeof value === 'object' ? Object.values(value).flatMap(numbersIn) : [];
}

describe('verdicts: laws', () => {
  it('are ten, in order, each kept or told why; every figure a number, every rep one of the plan', () => {
    fc.assert(
      fc.property(anyPlan, anyFacts, (plan, about) => {
        const verdicts = judgePlan(plan, about);
        expect(verdicts.map(({ rule }) => rule)).toEqual(RULES);
        expect(numbersIn(verdicts).every(Number.isFinite)).toBe(true);
        const numbers = plan.reps.map(({ n }) => n);
        for (const { kept, why, mend, couldHaveBeenKept } of verdicts) {
          expect(kept).toBe(why === undefined);
          if (kept) expect([mend, couldHaveBeenKept]).toEqual([undefined, undefined]);
          for (const n of [...(why?.reps ?? []), ...(mend?.reps ?? [])]) expect(numbers).toContain(n);
        }
      }),
    );
  });

  it('depend on nothing that the plan says of itself', () => {
    const claims = fc.constantFrom(...RULES).map((rule) => [{ rule, kept: true }]);
    fc.assert(
      fc.property(anyPlan, anyFacts, claims, fc.nat(), (plan, about, rules, seed) => {
        const reps = plan.reps.map((each) => ({ ...each, reasons: [{ code: 'hold-here' as const }] }));
        const other: Plan = { ...plan, reps, rules, seed, dog: 'teasel', cautions: [{ code: 'heat' }] };
        expect(judgePlan(other, about)).toEqual(judgePlan(plan, about));
        expect(judgePlan(plan, about)).toEqual(judgePlan(plan, about));
      }),
    );
  });

  it('say the same of a plan that went through a file', () => {
    const plan = goodPlan();
    expect(judgePlan(JSON.parse(JSON.stringify(plan)), facts())).toEqual(judgePlan(plan, facts()));
  });
});

describe('odd plans', () => {
  const kept = (plan: Plan) =>
    judgePlan(plan, facts())
      .filter((verdict) => !verdict.kept)
      .map(({ rule, why }) => [rule, why?.code]);

  it('an empty plan neither begins with something known nor finishes well', () => {
    expect(kept(planOf([]))).toEqual([
      ['known-first', 'no-reps'],
      ['finish-well', 'no-reps'],
    ]);
  });

  it('one rep may be the known first and the finish at once', () => {
    expect(kept(planOf([finish(1)]))).toEqual([]);
  });

  it('a rep without legs is no known thing, no finish and not within reach', () => {
    expect(kept(planOf([rep(1, 'finish', [])]))).toEqual([
      ['known-first', 'chance-not-stated'],
      ['finish-well', 'chance-not-stated'],
      ['within-reach', 'chance-not-stated'],
    ]);
  });

  it('facts that are none are the caller’s fault', () => {
    expect(() => judgePlan(goodPlan(), facts({ ageMonths: Number.NaN }))).toThrow('ageMonths');
    expect(() => judgePlan(goodPlan(), facts({ cleanShareWanted: 2 }))).toThrow(RangeError);
  });
});

describe('what a plan says of its own rules', () => {
  const plan = goodPlan();
  const all = RULES.map((rule) => ({ rule, kept: true }));
  const verdicts = judgePlan(plan, facts());

  it('may be the truth', () => {
    expect(falseClaims({ ...plan, rules: verdicts }, verdicts)).toEqual([]);
  });

  it('may not claim what it breaks, own up to what it keeps or could have kept, or be silent', () => {
    const late = { ...plan, minutes: 1 };
    const broken = judgePlan(late, facts());
    expect(falseClaims({ ...late, rules: all }, broken)).toEqual([
      { rule: 'fits-the-time', code: 'claims-what-it-breaks' },
    ]);
    expect(falseClaims({ ...late, rules: broken }, broken)).toEqual([
      { rule: 'fits-the-time', code: 'could-have-been-kept' },
    ]);
    const owned = all.map((row) => (row.rule === 'safe' ? { ...row, kept: false } : row));
    expect(falseClaims({ ...plan, rules: owned }, verdicts)).toEqual([
      { rule: 'safe', code: 'owns-up-to-what-it-keeps' },
    ]);
    expect(falseClaims({ ...plan, rules: all.slice(1) }, verdicts)).toEqual([
      { rule: 'known-first', code: 'says-nothing' },
    ]);
  });
});

import type { Ask, GradeChances, Skill } from '../../ability/index.ts';
import type { PlannedLeg, PlannedRep, Purpose } from '../next/next-answer.ts';
import type { Plan } from '../plan/plan.ts';
import type { PlanFacts } from './plan-facts.ts';

/** Chances with so much missed; what is left is mostly good. */
export const missing = (missed: number): GradeChances => ({
  missed,
  fair: (1 - missed) * 0.25,
  good: (1 - missed) * 0.75,
});

/** A leg with a chance of being missed. */
export function leg(skill: Skill, ask: Ask = {}, missed = 0.1): PlannedLeg {
  return {
    skill,
    ask,
    chance: missing(missed),
    interval90: { good: [0.1, 0.9], notMissed: [0.2, 0.99] },
    stretch: 0,
  };
}

/** A rep on empty ground, marked clean by its legs (a send without a stop). */
export function rep(n: number, purpose: Purpose, legs: readonly PlannedLeg[]): PlannedRep {
  const has = (skill: Skill) => legs.some((each) => each.skill === skill);
  return {
    n,
    purpose,
    clean: (has('line') || has('mark') || has('hunt')) && !has('stop'),
    side: has('cast-left') ? 'left' : has('cast-right') ? 'right' : 'none',
    legs,
    layout: { handlerAt: { eastM: 0, northM: 0 }, things: [] },
    before: [],
    easier: { legs: [leg('recall', { distanceM: 10 }, 0.05)] },
    reasons: [],
  };
}

/** A line of 40 m brought home, straight through. */
export const straight = () => [leg('line', { distanceM: 40 }), leg('pickup'), leg('delivery')];

/** A line of 40 m with a stop at a part of the way. */
export const stopped = (wayFraction: number, missed = 0.1) => [
  leg('line', { distanceM: 40 }),
  leg('stop', { distanceM: 40 * wayFraction, wayFraction }, missed),
];

/** A cast from a sit, brought home. */
export const cast = (side: 'left' | 'right') => [
  leg(`cast-${side}`, { distanceM: 20, castM: 10 }),
  leg('pickup'),
  leg('delivery'),
];

/** A finish that is sure. */
export const finish = (n: number) => rep(n, 'finish', [leg('recall', { distanceM: 20 }, 0.05)]);

const EVEN = {
  imbalance: 0,
  bestGuess: null,
  inHindsight: { by: 'win-stay', accuracy: 0.5, byChance: 1 },
} as const;

/** A plan of these reps, a minute and a half each, with as much time as it takes. */
export function planOf(reps: readonly PlannedRep[], more: Partial<Plan> = {}): Plan {
  const p50 = reps.length * 1.5;
  return {
    dog: 'bramble',
    seed: 1,
    minutes: Math.max(15, p50),
    reps,
    breaks: [],
    rules: [],
    cautions: [],
    minutesExpected: { p50, p90: p50 * 1.3 },
    order: { sides: EVEN, cleanSends: EVEN },
    ...more,
  };
}

/** A plan that keeps every rule: seven reps, hand-made. */
export const goodPlan = (): Plan =>
  planOf([
    rep(1, 'check', straight()),
    rep(2, 'vary', stopped(0.3)),
    rep(3, 'build', stopped(0.75, 0.25)),
    rep(4, 'clean', straight()),
    rep(5, 'vary', [...stopped(0.5), ...cast('left').slice(0, 1)]),
    rep(6, 'vary', cast('right')),
    finish(7),
  ]);

/** A grown dog's record, a mild day: all that `goodPlan` asks went well, but for the later stop. */
export const facts = (more: Partial<PlanFacts> = {}): PlanFacts => ({
  ageMonths: 24,
  weather: { airC: 15, humidityPct: 60 },
  successes: new Map<Skill, readonly Ask[]>([
    ['line', [{ distanceM: 40 }]],
    [
      'stop',
      [
        { distanceM: 12, wayFraction: 0.3 },
        { distanceM: 20, wayFraction: 0.5 },
      ],
    ],
    ['cast-left', [{ distanceM: 20, castM: 10 }]],
    ['cast-right', [{ distanceM: 20, castM: 10 }]],
    ['pickup', [{}]],
    ['delivery', [{}]],
    ['recall', [{ distanceM: 20 }]],
  ]),
  ...more,
});

/** The same plan with the rep of a number changed. */
export function changed(plan: Plan, n: number, edit: (rep: PlannedRep) => Partial<PlannedRep>): Plan {
  return { ...plan, reps: plan.reps.map((each) => (each.n === n ? { ...each, ...edit(each) } : each)) };
}

import { describe, expect, it } from 'vitest';
import type { Thing } from '../../ground/index.ts';
import type { PlannedRep } from '../next/next-answer.ts';
import type { Plan } from '../plan/plan.ts';
import { changed, facts, finish, leg, missing, planOf, rep } from './hand-made-plan.fixture.ts';
import type { PlanFacts } from './plan-facts.ts';
import type { PlanFaultCode } from './plan-fault.ts';
import { planFaults } from './plan-faults.ts';

const dummy = (thing: string, eastM: number, northM: number): Thing => ({
  thing,
  kind: 'dummy',
  eastM,
  northM,
});
const post = (thing: string, eastM: number, northM: number): Thing => ({
  thing,
  kind: 'post',
  eastM,
  northM,
});
const HOME = { eastM: 0, northM: 0 };
const laid = (things: readonly Thing[], sendFrom = HOME) => ({ handlerAt: HOME, sendFrom, things });
const memory = { distanceM: 40, temptation: 'placed-dummy' } as const;
const fetched = [leg('pickup'), leg('delivery')];

const red = dummy('red', 0, 40);
const blue = dummy('blue', -10, 20);
const put = (thing: string) => ({ do: 'place', thing, metres: 40 }) as const;
const walk = { do: 'walk', metres: 80 } as const;

/**
 * Four reps walked by hand: a memory at 40 m; the same line stopped half-way and cast 10 m left to another dummy; the memory
 * that still lies there; a recall over empty ground.
 */
const walked: Plan = planOf([
  { ...rep(1, 'check', [leg('line', memory), ...fetched]), layout: laid([red]), before: [walk, put('red')] },
  {
    ...rep(2, 'vary', [
      leg('line', memory),
      leg('stop', { distanceM: 20, wayFraction: 0.5 }),
      leg('cast-left', { distanceM: 20, castM: 10, otherDummies: 1 }),
      ...fetched,
    ]),
    layout: laid([red, blue]),
    before: [walk, put('blue'), put('red')],
  },
  { ...rep(3, 'clean', [leg('line', memory), ...fetched]), layout: laid([red]) },
  finish(4),
]);

const at = (n: number, edit: (rep: PlannedRep) => Partial<PlannedRep>) => changed(walked, n, edit);
const things = (n: number, list: readonly Thing[]) => at(n, () => ({ layout: laid(list) }));
const lineOf = (more: object) => () => ({ legs: [leg('line', { ...memory, ...more }), ...fetched] });

type Row = readonly [name: string, plan: Plan, codes: readonly PlanFaultCode[], about?: PlanFacts];
const ROWS: readonly Row[] = [
  ['a plan that can be walked', walked, []],
  ['within a kit of two', walked, [], facts({ kit: { posts: 0, dummies: 2 } })],
  ['a kit of one', walked, ['more-than-the-kit'], facts({ kit: { posts: 0, dummies: 1 } })],
  ['numbers that leave one out', at(2, () => ({ n: 5 })), ['numbers-out-of-order']],
  ['a rep without legs', at(4, () => ({ legs: [] })), ['no-legs']],
  [
    'an ask past its range',
    at(4, () => ({ legs: [leg('recall', { distanceM: 401 }, 0.05)] })),
    ['ask-out-of-range'],
  ],
  ['a chance that is none', at(4, () => ({ legs: [leg('recall', {}, Number.NaN)] })), ['chance-not-stated']],
  [
    'chances that do not add up',
    at(4, () => ({ legs: [{ ...leg('recall'), chance: { missed: 0.1, fair: 0.1, good: 0.1 } }] })),
    ['chance-not-stated'],
  ],
  ['a side it has no cast to', at(2, () => ({ side: 'right' })), ['side-differs']],
  [
    'a stop said half-way and lying at three quarters',
    at(2, ({ legs }) => ({
      legs: legs.map((each) =>
        each.skill === 'stop' ? leg('stop', { distanceM: 20, wayFraction: 0.75 }) : each,
      ),
    })),
    ['stop-off-its-line'],
  ],
  [
    'a fall-back that is no easier',
    at(4, () => ({ easier: { legs: [leg('recall', {}, 0.4)] } })),
    ['fall-back-not-easier'],
  ],
  [
    'a break after the last rep',
    { ...walked, breaks: [{ afterRep: 4, minutes: 3 }] },
    ['break-out-of-place'],
  ],
  ['p90 under p50', { ...walked, minutesExpected: { p50: 6, p90: 5 } }, ['minutes-not-stated']],
  ['nothing at the line’s end', things(3, []), ['nothing-lies-there', 'left-out-of-the-layout']],
  ['the cast’s dummy in the wrong place', things(2, [red, dummy('blue', -10, 30)]), ['nothing-lies-there']],
  [
    'a mark that never fell',
    at(3, () => ({ legs: [leg('mark', { distanceM: 60 })] })),
    ['nothing-lies-there'],
  ],
  ['an other dummy that is not out', at(3, lineOf({ otherDummies: 1 })), ['others-differ']],
  [
    'two lie out, and the ask says none',
    at(1, () => ({ layout: laid([red, dummy('green', 30, 0)]), before: [walk, put('red'), put('green')] })),
    ['others-differ', 'left-out-of-the-layout'],
  ],
  [
    'an other dummy at 45 degrees, said at 45; then lifted',
    changed(
      at(3, (each) => ({
        ...lineOf({ otherDummies: 1, gapDeg: 45 })(),
        layout: laid([red, dummy('green', 20, 20)]),
        before: [...each.before, walk, put('green')],
      })),
      4,
      () => ({ before: [{ do: 'lift', thing: 'green' }] }),
    ),
    [],
  ],
  [
    'the same said at 30',
    at(3, () => ({
      ...lineOf({ otherDummies: 1, gapDeg: 30 })(),
      layout: laid([red, dummy('green', 20, 20)]),
      before: [walk, put('green')],
    })),
    ['gap-differs', 'left-out-of-the-layout'],
  ],
  ['put out by nobody', at(1, () => ({ before: [walk] })), ['lies-out-unlaid']],
  ['taken up, and there again', at(2, () => ({ before: [walk, put('blue')] })), ['lies-out-unlaid']],
  ['put out where it lies', at(3, () => ({ before: [put('red')] })), ['put-out-twice']],
  [
    'lifted once more',
    at(4, () => ({ before: [{ do: 'lift', thing: 'red' }] })),
    ['lifts-what-is-not-there'],
  ],
  ['an errand with nothing', at(4, () => ({ before: [{ do: 'place' }] })), ['errand-without-thing']],
  [
    'the send point moved with a walk',
    at(3, (each) => ({ layout: { ...each.layout, sendFrom: { eastM: 40, northM: 40 } }, before: [walk] })),
    [],
  ],
  [
    'chances that the record does not give',
    walked,
    ['chance-differs'],
    facts({ chances: (_plan, place, legs) => legs.map(() => missing(place === 3 ? 0.056 : 0.1)) }),
  ],
  [
    'chances that it gives, but for rounding',
    walked,
    [],
    facts({ chances: (_plan, place, legs) => legs.map(() => missing(place === 3 ? 0.054 : 0.1)) }),
  ],
];

/** Three posts that stay from one rep to the next, and where they stand then. */
function posts(then: readonly Thing[], sendFrom = HOME, before: PlannedRep['before'] = [walk]): Plan {
  const three = [post('a', 0, 10), post('b', 20, 10), post('c', 0, 40)];
  const still = rep(1, 'check', [leg('heel')]);
  return planOf([
    { ...still, layout: laid(three), before: three.map(({ thing }) => put(thing)) },
    { ...still, n: 2, layout: laid(then, sendFrom), before },
  ]);
}

describe('what makes a plan no plan', () => {
  for (const [name, plan, codes, about = facts()] of ROWS) {
    it(name, () => {
      expect(planFaults(plan, about).map(({ code }) => code)).toEqual(codes);
    });
  }

  it('things that stay may be seen from elsewhere, not moved and not turned over', () => {
    const codes = (then: readonly Thing[]) => planFaults(posts(then), facts()).map(({ code }) => code);
    // A quarter turn about the send point: (east, north) becomes (north, -east).
    expect(codes([post('a', 10, 0), post('b', 10, -20), post('c', 40, 0)])).toEqual([]);
    expect(codes([post('a', 0, 10), post('b', 23, 10), post('c', 0, 40)])).toEqual(['moved-unsaid']);
    expect(codes([post('a', 0, 10), post('b', -20, 10), post('c', 0, 40)])).toEqual(['moved-unsaid']);
  });

  it('the send point moves with a walk alone', () => {
    const three = [post('a', 0, 10), post('b', 20, 10), post('c', 0, 40)];
    const codes = (before: PlannedRep['before']) =>
      planFaults(posts(three, { eastM: 5, northM: 0 }, before), facts()).map(({ code }) => code);
    expect(codes([walk])).toEqual([]);
    expect(codes([])).toEqual(['walk-unsaid']);
  });

  it('measures a cast by the law of cosines: 20 m out, 10 m square to the side lies at the root of 500', () => {
    const [fault] = planFaults(things(2, [red]), facts());
    expect(fault).toMatchObject({ code: 'nothing-lies-there', rep: 2, skill: 'cast-left' });
    expect(fault?.should).toBeCloseTo(Math.sqrt(500), 9);
  });
});

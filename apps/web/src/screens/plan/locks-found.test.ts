import { expect, it } from 'vitest';
import { locksFound } from './locks-found.ts';
import { madePlan } from './made-plan.fixture.ts';

it('a locked rep is found again where it stands, or nearest to it; one that is not there is let go', () => {
  const plan = madePlan();
  const [first, second, third] = plan.reps.map(({ legs }) => legs.map(({ skill, ask }) => ({ skill, ask })));
  const kept = (n: number, legs = first) => ({ n, legs: legs ?? [] });
  expect(locksFound([kept(1, first), kept(2, second)], plan)).toEqual([1, 2]);
  expect(locksFound([kept(1, third)], plan)).toEqual([3]);
  const other = [{ skill: 'heel' as const, ask: {} }];
  expect(locksFound([kept(1, other), kept(3, third)], plan)).toEqual([3]);
  // Two that are alike are two.
  const twice = { ...plan, reps: [...plan.reps, { ...plan.reps[0]!, n: 4 }] };
  expect(locksFound([kept(1), kept(4)], twice)).toEqual([1, 4]);
  expect(locksFound([], plan)).toEqual([]);
});

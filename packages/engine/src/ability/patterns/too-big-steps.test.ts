import { describe, expect, it } from 'vitest';
import type { Ask, Grade } from '../ask.ts';
import { madeLegs } from './made-legs.fixture.ts';
import type { PatternLeg } from './pattern.ts';
import { stepsUp, tooBigSteps } from './too-big-steps.ts';

const ONE = madeLegs(1, 1, { skills: ['line'], notMissed: () => 1 })[0]!;
const leg = (ask: Ask, grade: Grade = 'good'): PatternLeg => ({ ...ONE, ask, grade });
const at = (distanceM: number, grade: Grade = 'good') => leg({ distanceM }, grade);
const stretches = (legs: readonly PatternLeg[]) => stepsUp(legs).map(({ stretch }) => stretch);

describe('steps up, worked by hand with the shipped weights (distance 0.5 a doubling, cover 0.45, blind 0.7)', () => {
  it('one doubling is 0.5; nothing before the first success is a step', () => {
    expect(stretches([at(40, 'missed'), at(10), at(20)])).toEqual([0.5]);
  });

  it('is held against the hardest of the last eight successes, not the very last', () => {
    const easy = Array.from({ length: 7 }, () => at(5));
    expect(stretches([at(40), ...easy, at(40)])).toEqual([]);
    // An eighth easy one pushes the far one out: three doublings.
    expect(stretches([at(40), ...easy, at(5), at(40)])).toEqual([1.5]);
  });

  it('adds up what is raised together, and leaves out what the handler does not set', () => {
    const [stretch] = stretches([at(10), leg({ distanceM: 20, cover: 1, blind: true })]);
    expect(stretch).toBeCloseTo(0.5 + 0.45 + 0.7, 12);
    const tired = { ...at(10), context: { ...ONE.context, repsSinceBreak: 40, daysSinceWorked: 300 } };
    expect(stretches([at(10), tired])).toEqual([]);
  });

  it('takes a fair leg for a success only while there is no good one', () => {
    expect(stretches([at(10, 'fair'), at(20)])).toEqual([0.5]);
    expect(stretches([at(10), at(40, 'fair'), at(20)])).toEqual([1, 0.5]);
  });

  it('tells the share of big ones, and what came of big and small', () => {
    // Twelve steps up from 5 m: four of three doublings (1.5), missed; eight of one, good. Each begins anew at another skill's worth of easy ones.
    const easy = Array.from({ length: 8 }, () => at(5));
    const legs = Array.from({ length: 12 }, (_, n) => [
      ...easy,
      n % 3 === 0 ? at(40, 'missed') : at(10),
    ]).flat();
    const found = tooBigSteps(legs);
    expect(found.evidence).toEqual([
      { of: 'steps', legs: 12, share: 4 / 12 },
      { of: 'big-steps', legs: 4, share: 1 },
      { of: 'smaller-steps', legs: 8, share: 0 },
    ]);
    // Beta(1, 2) and 4 of 12: (1 + 4)/(3 + 12).
    expect(found.strength.mean).toBeCloseTo(1 / 3, 12);
    expect(tooBigSteps(legs.slice(0, 50)).state).toBe('cant-say');
  });
});

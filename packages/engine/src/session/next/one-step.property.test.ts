import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Ask,
  checkAsk,
  demandVector,
  EASY_CONTEXT,
  harderFields,
  SKILLS,
  type Skill,
} from '../../ability/index.ts';
import { oneStep, RAISED_FIELDS } from './one-step.ts';

const ask: fc.Arbitrary<Ask> = fc.record(
  {
    distanceM: fc.double({ min: 0, max: 400, noNaN: true }),
    wayFraction: fc.double({ min: 0, max: 1, noNaN: true }),
    temptation: fc.constantFrom('none', 'post', 'placed-dummy', 'thrown-dummy', 'shot-and-dummy', 'game'),
    handlerPlace: fc.constantFrom('between', 'beside', 'apart'),
    cover: fc.double({ min: 0, max: 3, noNaN: true }),
    distraction: fc.double({ min: 0, max: 3, noNaN: true }),
    turnDeg: fc.double({ min: 0, max: 180, noNaN: true }),
    castM: fc.double({ min: 0, max: 150, noNaN: true }),
    otherDummies: fc.nat(6),
    gapDeg: fc.double({ min: 0, max: 180, noNaN: true }),
    blind: fc.boolean(),
    waitS: fc.double({ min: 0, max: 300, noNaN: true }),
    obstacle: fc.double({ min: 0, max: 3, noNaN: true }),
  },
  { requiredKeys: [] },
);
const skill = fc.constantFrom<Skill>(...SKILLS);

/** Demands added up: what the model sees of an ask, each step of the trade about 1. */
const demanded = (asked: Ask, of: Skill) =>
  demandVector(of, asked, EASY_CONTEXT).reduce((so, x) => so + x, 0);

describe('one step: laws', () => {
  it('stays within the ranges of the contract, whatever ask it starts from', () => {
    fc.assert(
      fc.property(ask, skill, fc.constantFrom('harder', 'easier'), (asked, of, way) => {
        for (const field of RAISED_FIELDS[of]) {
          const stepped = oneStep(asked, of, field, way);
          if (stepped !== null) checkAsk(stepped);
        }
      }),
    );
  });

  it('harder raises one thing and nothing else; easier raises nothing', () => {
    fc.assert(
      fc.property(ask, skill, (asked, of) => {
        for (const field of RAISED_FIELDS[of]) {
          const harder = oneStep(asked, of, field, 'harder');
          if (harder !== null) expect(harderFields(harder, asked, of).length).toBeLessThanOrEqual(1);
          const easier = oneStep(asked, of, field, 'easier');
          if (easier !== null) expect(harderFields(easier, asked, of)).toEqual([]);
        }
      }),
    );
  });

  it('harder never demands less, easier never more', () => {
    fc.assert(
      fc.property(ask, skill, (asked, of) => {
        for (const field of RAISED_FIELDS[of]) {
          const before = demanded(asked, of);
          const harder = oneStep(asked, of, field, 'harder');
          if (harder !== null) expect(demanded(harder, of)).toBeGreaterThanOrEqual(before - 1e-9);
          const easier = oneStep(asked, of, field, 'easier');
          if (easier !== null) expect(demanded(easier, of)).toBeLessThanOrEqual(before + 1e-9);
        }
      }),
    );
  });

  it('moves a stop along its own line, by hand: 20 m of 40 m goes to 26 m', () => {
    const later = oneStep({ distanceM: 20, wayFraction: 0.5 }, 'stop', 'wayFraction', 'harder');
    expect(later).toEqual({ distanceM: 26, wayFraction: 0.65 });
  });
});

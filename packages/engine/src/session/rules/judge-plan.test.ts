import { describe, expect, it } from 'vitest';
import { RULES } from '../plan/rule-verdict.ts';
import { ASKS_ROWS } from './asks-rows.fixture.ts';
import { facts, goodPlan } from './hand-made-plan.fixture.ts';
import { judgePlan } from './judge-plan.ts';
import { ORDER_ROWS } from './order-rows.fixture.ts';
import { TIME_ROWS } from './time-rows.fixture.ts';

const ROWS = [...ASKS_ROWS, ...ORDER_ROWS, ...TIME_ROWS];

describe('the rules of the trade, one broken at a time', () => {
  for (const [rule, name, plan, expected, about = facts()] of ROWS) {
    it(`${rule}: ${name}`, () => {
      const verdict = judgePlan(plan, about).find((each) => each.rule === rule);
      if (expected === null) {
        expect(verdict).toEqual({ rule, kept: true });
        return;
      }
      expect(verdict?.kept).toBe(false);
      expect(verdict?.why).toMatchObject(expected.why);
      if (expected.mend) expect(verdict?.mend).toMatchObject(expected.mend);
      if (expected.could !== undefined) expect(verdict?.couldHaveBeenKept).toBe(expected.could);
    });
  }

  it('has for every rule plans that keep it and plans that break it: no judge of one word passes', () => {
    for (const rule of RULES) {
      const rows = ROWS.filter((row) => row[0] === rule);
      expect(rows.filter((row) => row[3] === null).length, `${rule} kept`).toBeGreaterThan(0);
      expect(rows.filter((row) => row[3] !== null).length, `${rule} broken`).toBeGreaterThan(1);
    }
  });

  it('keeps all ten in the hand-made plan, in their order', () => {
    expect(judgePlan(goodPlan(), facts())).toEqual(RULES.map((rule) => ({ rule, kept: true })));
  });
});

import { describe, expect, it } from 'vitest';
import type { Ask } from '../ask.ts';
import { EASY_CONTEXT } from '../ask-range.ts';
import { createAbilityFilter } from '../filter.ts';
import type { LegQuestion } from '../leg.ts';
import { basedStep, type WellDone } from './base.ts';

const stop = (ask: Ask): LegQuestion => ({
  dog: 'wren',
  skill: 'stop',
  session: 's',
  atMs: 0,
  ask,
  context: EASY_CONTEXT,
});
const wentWell = (...asks: readonly Ask[]): WellDone[] =>
  asks.map((ask, n) => ({ rep: `r${n}`, leg: 0, question: stop(ask), grade: 'good' }));
/** A filter with no record: every weight stands at the table of the design (distance 0.5 a doubling, cover 0.45). */
const fresh = createAbilityFilter();
const baseOf = (now: Ask, successes: readonly WellDone[]) => basedStep(fresh, stop(now), successes);

// Histories made by hand from the contract: "among the last ten successes at that skill, the one from which the fewest
// fields are harder, then the one of least stretch"; a later stop on the same line is one thing.
describe('the base of an ask', () => {
  it('is none with no success before', () => {
    expect(baseOf({ distanceM: 20 }, [])).toBeNull();
  });

  it('is the one from which fewest things are harder, even where another is less of a stretch', () => {
    const now = { distanceM: 40, cover: 1 };
    const found = baseOf(now, wentWell({ distanceM: 40, cover: 0 }, { distanceM: 39, cover: 0.9 }));
    expect(found?.base.rep).toBe('r0');
    expect(found?.harder).toEqual([['cover']]);
    // One step of cover at 0.45 a step.
    expect(found?.stretch.mean).toBeCloseTo(0.45, 12);
  });

  it('of those, is the one of least stretch: 40 m from 30 m before 40 m from 20 m', () => {
    const found = baseOf({ distanceM: 40 }, wentWell({ distanceM: 30 }, { distanceM: 20 }));
    expect(found?.base.rep).toBe('r0');
    expect(found?.stretch.mean).toBeCloseTo(0.5 * Math.log2(40 / 30), 12);
  });

  it('of equals, is the newest', () => {
    expect(baseOf({ distanceM: 40 }, wentWell({ distanceM: 20 }, { distanceM: 20 }))?.base.rep).toBe('r1');
  });

  it('counts a later stop on the same line as one thing', () => {
    const now = { distanceM: 40, wayFraction: 0.5 };
    const later = { distanceM: 24, wayFraction: 0.3 };
    const twoThings = { distanceM: 38, wayFraction: 0.4 };
    expect(baseOf(now, wentWell(later, twoThings))?.base.rep).toBe('r0');
  });

  it('may be harder than the leg itself: then nothing is harder and the stretch is below 0', () => {
    const found = baseOf({ distanceM: 20 }, wentWell({ distanceM: 10 }, { distanceM: 40 }));
    expect(found?.base.rep).toBe('r1');
    expect(found?.harder).toEqual([]);
    expect(found?.stretch.mean).toBeCloseTo(-0.5, 12);
  });

  it('looks at the last ten alone', () => {
    const same = { distanceM: 40 };
    const easy = Array.from({ length: 10 }, () => ({ distanceM: 5 }));
    expect(baseOf(same, wentWell(same, ...easy.slice(1)))?.base.rep).toBe('r0');
    expect(baseOf(same, wentWell(same, ...easy))?.stretch.mean).toBeCloseTo(0.5 * 3, 12);
  });
});

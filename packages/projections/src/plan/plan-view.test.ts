import type { Skill } from '@sedgeline/engine/ability';
import type { PlannedLeg, PlannedRep } from '@sedgeline/engine/session';
import { describe, expect, it } from 'vitest';
import { createKennel } from '../kennel-of-facts.ts';
import { editedPlan, planFor } from './plan-answer.ts';
import { planStrip } from './plan-strip.ts';
import { lastGround, planView } from './plan-view.ts';
import { DAY_MS, trainedDog } from './trained-dog.fixture.ts';

const day = trainedDog();
const KENNEL = createKennel();
KENNEL.add(day.facts);
const AT_MS = day.atMs + DAY_MS;
const REQUEST = { dog: 'wren', minutes: 20, ground: 'home' };
const PLAN = planFor(KENNEL, REQUEST, { atMs: AT_MS, seed: 3 });

describe('planView', () => {
  const view = planView(KENNEL, REQUEST, PLAN, AT_MS);

  it('has a card a rep, drawn as its legs are asked', () => {
    expect(view.cards.map(({ rep }) => rep)).toEqual(PLAN.reps);
    for (const { rep, picture } of view.cards) {
      const stop = rep.legs.find(({ skill }) => skill === 'stop');
      const drawn = picture.strokes.find((stroke) => stroke.kind === 'stop');
      expect(drawn?.distanceM).toBe(stop?.ask.distanceM);
    }
  });

  /**
   * Law of probability: all legs together are no likelier than the least likely of them, and, where the day's form is shared
   * (good and bad days move all legs alike), no less likely than if they had nothing to do with each other.
   */
  it('states a chance for the whole rep between the product of its legs and the least of them', () => {
    for (const { rep, noneMissed, interval90 } of view.cards) {
      const each = rep.legs.map(({ chance }) => 1 - chance.missed);
      // 1e-4: two quadratures of one integral.
      expect(noneMissed).toBeLessThanOrEqual(Math.min(...each) + 1e-4);
      expect(noneMissed).toBeGreaterThanOrEqual(each.reduce((so, one) => so * one, 1) - 1e-4);
      expect(interval90[0]).toBeLessThanOrEqual(noneMissed);
      expect(interval90[1]).toBeGreaterThanOrEqual(noneMissed);
      if (each.length === 1) expect(Math.abs(noneMissed - (each[0] ?? 0))).toBeLessThan(1e-4);
    }
  });

  it('states an edited plan in its new order', () => {
    const edited = editedPlan(KENNEL, REQUEST, PLAN, { do: 'drop', n: 2 }, AT_MS);
    if (edited === null) throw new Error('drop: expected a plan with one rep fewer');
    const shown = planView(KENNEL, REQUEST, edited, AT_MS);
    expect(shown.cards).toHaveLength(view.cards.length - 1);
    expect(shown.cards.map(({ rep }) => rep.n)).toEqual(shown.cards.map((_, at) => at + 1));
  });

  it('names no ground that is not told, nor one that is not on record', () => {
    expect(planView(KENNEL, { dog: 'wren', minutes: 20 }, PLAN, AT_MS).groundName).toBeNull();
    expect(planView(KENNEL, { ...REQUEST, ground: 'nowhere' }, PLAN, AT_MS).groundName).toBeNull();
    expect(() => planView(KENNEL, { ...REQUEST, dog: 'nobody' }, PLAN, AT_MS)).toThrow(/^dog: /);
  });

  it('knows where the dog was worked last', () => {
    expect(lastGround(KENNEL, 'wren')).toBe('home');
    expect(lastGround(KENNEL, 'nobody')).toBeNull();
  });
});

const leg = (skill: Skill, stretch: number | null, ask: PlannedLeg['ask'] = {}): PlannedLeg => ({
  skill,
  ask,
  stretch,
  chance: { missed: 0.1, fair: 0.1, good: 0.8 },
  interval90: { good: [0.6, 0.9], notMissed: [0.8, 0.95] },
});
const rep = (n: number, legs: readonly PlannedLeg[], reasons: PlannedRep['reasons'] = []): PlannedRep => ({
  ...PLAN.reps[0]!,
  n,
  legs,
  reasons,
});

describe('planStrip', () => {
  it('counts what the eye would count on the cards', () => {
    const stop = (distanceM: number, wayFraction: number) => leg('stop', 0.1, { distanceM, wayFraction });
    const reps = [
      rep(1, [leg('recall', 0)]),
      rep(2, [leg('line', 0), stop(12, 0.3), leg('cast-left', 0.4)]),
      rep(3, [leg('line', 0)]),
      rep(4, [leg('mark', 0)], [{ code: 'weaker-side', skill: 'cast-left' }]),
      rep(5, [leg('line', 0), stop(30, 0.8), leg('cast-left', 0.7), leg('pickup', 0)]),
      rep(6, [leg('line', 0), stop(20, 0.5), leg('cast-right', 0.2)]),
    ];
    const strip = planStrip({ ...PLAN, reps, breaks: [{ afterRep: 3, minutes: 3 }] }, 0.25);
    expect(strip).toMatchObject({
      breaksAfter: [3],
      casts: { left: 2, right: 1 },
      weaker: 'left',
      // Reps 2 to 6 are sent; 3 and 4 without a stop.
      sends: { clean: 2, all: 5 },
      cleanShareWanted: 0.25,
      stops: { count: 3, distancesM: [12, 30, 20], ways: [0.3, 0.8, 0.5] },
      most: { n: 5, skill: 'cast-left', stretch: 0.7 },
    });
    // What never went well asks more than any step.
    const withNew = planStrip({ ...PLAN, reps: [...reps, rep(7, [leg('heel', null)])] }, 0.25);
    expect(withNew.most).toEqual({ n: 7, skill: 'heel', stretch: null });
  });

  it('has nothing to say of an empty plan', () => {
    expect(planStrip({ ...PLAN, reps: [], breaks: [] }, 0)).toMatchObject({
      casts: { left: 0, right: 0 },
      weaker: null,
      sends: { clean: 0, all: 0 },
      stops: { count: 0, distancesM: [], ways: [] },
      most: null,
    });
  });
});

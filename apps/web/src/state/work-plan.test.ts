import { validateFact } from '@sedgeline/journal';
import { describe, expect, it } from 'vitest';
import { madePlan } from '../screens/plan/made-plan.fixture.ts';
import { type PlanToWork, planFacts } from './work-plan.ts';

const IDS = { session: 's', plan: 'p', newGround: 'new' };
const toWork = (more: Partial<PlanToWork> = {}): PlanToWork => {
  const plan = madePlan();
  const request = { dog: 'd', minutes: 15, ground: 'g' };
  return {
    view: {
      dog: 'd',
      dogName: 'Wren',
      groundName: null,
      atMs: 0,
      request,
      plan,
      cards: [],
      strip: {
        minutes: { p50: 10, p90: 12, of: 15 },
        breaksAfter: [],
        casts: { left: 0, right: 0 },
        weaker: null,
        sends: { clean: 0, all: 0 },
        cleanShareWanted: 0,
        stops: { count: 0, distancesM: [], ways: [] },
        most: null,
      },
    },
    wishes: { where: { by: 'last' } },
    weather: {},
    locked: [2],
    ...more,
  };
};

describe('planFacts', () => {
  it('keeps the plan as it stands, and opens a session that names it', () => {
    const facts = planFacts(toWork(), IDS);
    expect(facts.map(({ kind }) => kind)).toEqual(['session-planned', 'session-opened']);
    const [planned, opened] = facts.map(({ body }) => body);
    expect(planned).toMatchObject({ plan: 'p', dog: 'd', ground: 'g', minutes: 15, seed: 7 });
    const reps = planned?.reps as { locked?: boolean; legs: object[] }[];
    expect(reps.map(({ locked }) => locked === true)).toEqual([false, true, false]);
    // The legs alone: what was said of them is the engine's, and is not in the record.
    for (const leg of reps.flatMap(({ legs }) => legs)) expect(Object.keys(leg)).toEqual(['skill', 'ask']);
    expect(opened).toEqual({ session: 's', dog: 'd', plan: 'p', ground: 'g' });
  });

  it('a new ground is added where it has a name, and not told where it has none', () => {
    const named = planFacts(toWork({ wishes: { where: { by: 'new', name: 'Far wood' } } }), IDS);
    expect(named[0]).toEqual({ kind: 'ground-added', body: { ground: 'new', name: 'Far wood' } });
    expect(named.slice(1).every(({ body }) => body.ground === 'new')).toBe(true);
    const bare = planFacts(toWork({ wishes: { where: { by: 'new', name: '' } } }), IDS);
    expect(bare).toHaveLength(2);
    expect(bare.some(({ body }) => 'ground' in body)).toBe(false);
  });

  it('writes the weather that is known, and every fact is one that the journal takes', () => {
    const facts = planFacts(toWork({ weather: { airC: 14, humidityPct: undefined, windMPerS: 3 } }), IDS);
    expect(facts[1]?.body.weather).toEqual({ airC: 14, windMPerS: 3 });
    for (const [at, { kind, body }] of facts.entries()) {
      const reading = validateFact({ id: `f${at}`, kind, at: '2026-11-25T10:00:00Z', body });
      expect(reading).toMatchObject({ ok: true });
    }
  });
});

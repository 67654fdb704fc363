import { falseClaims, judgePlan, planFaults, planSession, RULES } from '@sedgeline/engine/session';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createKennel } from '../kennel-of-facts.ts';
import { planFor } from './plan-answer.ts';
import { planFacts } from './plan-facts.ts';
import { planInput } from './plan-input.ts';
import { randomKennel, randomRequest } from './random-kennel.fixture.ts';

const seeds = fc.nat(1_000_000);
const RUNS = 60;

function planned(kennelSeed: number, requestSeed: number) {
  const day = randomKennel(kennelSeed);
  const kennel = createKennel();
  kennel.add(day.facts);
  const request = randomRequest(requestSeed);
  const input = planInput(kennel.record, kennel.timeline(), request, day.atMs + 86_400_000, requestSeed);
  return { input, plan: planSession(input), facts: planFacts(input) };
}

describe('plans: laws, any record and any request', () => {
  it('claims no rule that it breaks, owns up to none that it could have kept, and can be believed and walked', () => {
    fc.assert(
      fc.property(seeds, seeds, (kennelSeed, requestSeed) => {
        const { plan, facts } = planned(kennelSeed, requestSeed);
        const verdicts = judgePlan(plan, facts);
        expect(falseClaims(plan, verdicts)).toEqual([]);
        expect(planFaults(plan, facts)).toEqual([]);
        expect(plan.rules.map(({ rule }) => rule)).toEqual([...RULES]);
      }),
      { numRuns: RUNS },
    );
  }, 240_000);

  it('keeps what is locked in its order, from the first, and says how many it let go', () => {
    fc.assert(
      fc.property(seeds, seeds, fc.nat(0xffff), (kennelSeed, requestSeed, mask) => {
        const day = randomKennel(kennelSeed);
        const kennel = createKennel();
        kennel.add(day.facts);
        const request = randomRequest(requestSeed);
        const moment = { atMs: day.atMs + 86_400_000, seed: requestSeed };
        const kept = planFor(kennel, request, moment)
          .reps.filter((_, place) => (mask >> place) % 2 === 1)
          .map(({ n, legs }) => ({ n, legs: legs.map(({ skill, ask }) => ({ skill, ask })) }));
        const other = planFor(kennel, request, { ...moment, seed: requestSeed + 1 }, kept);
        const letGo = other.cautions.find(({ code }) => code === 'locks-let-go')?.count ?? 0;
        const asked = ({ legs }: { legs: readonly { skill: string; ask: object }[] }) =>
          JSON.stringify(legs.map(({ skill, ask }) => [skill, ask]));
        const left = other.reps.map(asked);
        for (const text of kept.slice(0, kept.length - letGo).map(asked)) {
          const place = left.indexOf(text);
          expect(place).toBeGreaterThanOrEqual(0);
          left.splice(0, place + 1);
        }
      }),
      { numRuns: RUNS },
    );
  }, 240_000);

  it('gives the same plan for the same seed, to the byte', () => {
    fc.assert(
      fc.property(seeds, seeds, (kennelSeed, requestSeed) => {
        const one = planned(kennelSeed, requestSeed).plan;
        expect(JSON.stringify(planned(kennelSeed, requestSeed).plan)).toBe(JSON.stringify(one));
      }),
      { numRuns: 8 },
    );
  }, 60_000);
});

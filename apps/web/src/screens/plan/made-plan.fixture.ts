import type { Skill } from '@sedgeline/engine/ability';
import {
  guessInHindsight,
  type Plan,
  type PlannedLeg,
  type PlannedRep,
  type Purpose,
  type RuleVerdict,
} from '@sedgeline/engine/session';

const madeLeg = (skill: Skill, ask: PlannedLeg['ask'] = {}, stretch: number | null = 0): PlannedLeg => ({
  skill,
  ask,
  stretch,
  chance: { missed: stretch === 0 ? 0.05 : 0.2, fair: 0.1, good: stretch === 0 ? 0.85 : 0.7 },
  interval90: { good: [0.5, 0.95], notMissed: [0.7, 0.99] },
});

const madeRep = (n: number, purpose: Purpose, legs: readonly PlannedLeg[]): PlannedRep => ({
  n,
  purpose,
  clean: false,
  side: 'none',
  legs,
  layout: { handlerAt: { eastM: 0, northM: 0 }, things: [] },
  before: [],
  easier: { legs: [madeLeg('recall', { distanceM: 5 })] },
  reasons: [],
});

/** What is said of an order of nothing. */
const UNTOLD: Plan['order']['sides'] = { imbalance: 0, bestGuess: null, inHindsight: guessInHindsight([]) };

/** A plan written by hand: a recall, a stop with a cast to the left that raises something, a recall to finish. */
export function madePlan(rules: readonly RuleVerdict[] = []): Plan {
  return {
    dog: 'd',
    seed: 7,
    minutes: 15,
    reps: [
      madeRep(1, 'check', [madeLeg('recall', { distanceM: 20 })]),
      madeRep(2, 'build', [
        madeLeg('line', { distanceM: 40 }),
        madeLeg('stop', { distanceM: 20, wayFraction: 0.5 }, 0.4),
        madeLeg('cast-left', { distanceM: 20, wayFraction: 0.5, castM: 15, obstacle: 1 }, 0.3),
      ]),
      madeRep(3, 'finish', [madeLeg('recall', { distanceM: 10 })]),
    ],
    breaks: [],
    rules,
    cautions: [],
    minutesExpected: { p50: 9, p90: 12 },
    order: { sides: UNTOLD, cleanSends: UNTOLD },
  };
}

import type { Chances } from '../../careers/mind.ts';
import type { Contestant, JudgedLeg } from '../judged-leg.ts';

const GRADES = ['missed', 'fair', 'good'] as const;
type Counts = Record<(typeof GRADES)[number], number>;

/** Add-one shares (Laplace's rule of succession): `(n_k + 1)/(n + 3)`. */
function sharesOf(counts: Counts): Chances {
  const all = counts.missed + counts.fair + counts.good + 3;
  return { missed: (counts.missed + 1) / all, fair: (counts.fair + 1) / all, good: (counts.good + 1) / all };
}

/** Counts under a key, each multiplied by `keep` before the next leg is counted. */
function shares(keyOf: (leg: JudgedLeg) => string, keep: number): Contestant {
  const known = new Map<string, Counts>();
  const of = (leg: JudgedLeg) => known.get(keyOf(leg)) ?? { missed: 0, fair: 0, good: 0 };
  return {
    states: (leg) => sharesOf(of(leg)),
    learns(leg) {
      const counts = of(leg);
      const next = { missed: counts.missed * keep, fair: counts.fair * keep, good: counts.good * keep };
      next[leg.grade] += 1;
      known.set(keyOf(leg), next);
    },
  };
}

const dogAndSkill = ({ dog, skill }: JudgedLeg) => `${dog} ${skill}`;

/** The dog's running share at the skill. */
export const alwaysAverage = (): Contestant => shares(dogAndSkill, 1);

/** The same, old legs fading: half after ten (our judgement, 2026). */
export const recentAverage = (): Contestant => shares(dogAndSkill, 2 ** (-1 / 10));

/** What followed the last grade of the dog at the skill, counted over the kennel. */
export function sameAsLastTime(): Contestant {
  const last = new Map<string, string>();
  const after = shares((leg) => last.get(dogAndSkill(leg)) ?? 'none', 1);
  return {
    states: (leg) => after.states(leg),
    learns(leg) {
      after.learns(leg);
      last.set(dogAndSkill(leg), leg.grade);
    },
  };
}

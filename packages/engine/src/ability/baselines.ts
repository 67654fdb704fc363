import type { Grade, Skill } from './ask.ts';
import type { GradeChances } from './leg.ts';

/** A forecaster too plain to be wrong in an interesting way: what the filter has to beat. */
export interface Baseline {
  /** Chances of the next leg of this dog at this skill, from what was counted before. */
  forecast(dog: string, skill: Skill): GradeChances;
  count(dog: string, skill: Skill, grade: Grade): void;
}

/** Legs after which an old one counts half in `recent-average` (our judgement, 2026). */
const HALF_LIFE_LEGS = 10;

/**
 * Share of each grade with add-one (Laplace's rule): `(n_k + 1)/(n + 3)`, counts multiplied by `keep` before
 * each new leg.
 */
function shareBaseline(keep: number): Baseline {
  const counts = new Map<string, { missed: number; fair: number; good: number }>();
  const of = (dog: string, skill: Skill) => counts.get(`${skill} ${dog}`) ?? { missed: 0, fair: 0, good: 0 };
  return {
    forecast(dog, skill) {
      const { missed, fair, good } = of(dog, skill);
      const all = missed + fair + good + 3;
      return { missed: (missed + 1) / all, fair: (fair + 1) / all, good: (good + 1) / all };
    },
    count(dog, skill, grade) {
      const { missed, fair, good } = of(dog, skill);
      const next = { missed: missed * keep, fair: fair * keep, good: good * keep };
      next[grade] += 1;
      counts.set(`${skill} ${dog}`, next);
    },
  };
}

/** The dog's running share at the skill, with add-one. */
export function alwaysAverage(): Baseline {
  return shareBaseline(1);
}

/** The same with old legs fading, half after ten legs. */
export function recentAverage(): Baseline {
  return shareBaseline(2 ** (-1 / HALF_LIFE_LEGS));
}

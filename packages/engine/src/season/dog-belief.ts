import type { FilterState, SkillState } from '../ability/filter-state.ts';
import { newSkillState } from '../ability/filter-state.ts';
import { GapLearner } from '../ability/gap-learner.ts';
import { packedAt } from '../ability/gaussian-block.ts';
import { type AbilityPriors, DEMANDS, demandVector, SKILLS, type Skill } from '../ability/index.ts';
import { waitingGain } from '../ability/leg-reading.ts';
import { oddKey } from '../ability/odd-key.ts';
import { MS_PER_DAY } from '../quantity/index.ts';
import { drawFactor } from './draw-factor.ts';
import type { GoalAsk } from './season-goal.ts';

/** What is known of one dog at one skill (kennel and departure together), as far as the goal's asks can feel it. */
export interface SkillBelief {
  readonly skill: Skill;
  /** Places of h that the asks touch, today or later: 0 the ability, then demands. */
  readonly support: readonly number[];
  readonly mean: Float64Array;
  /** Lower factor of the covariance today, walk included. */
  readonly factor: Float64Array;
  /** `null`: never worked. */
  readonly daysSinceLearned: number | null;
  /** Sessions whose gain is in the mean, the last one's with them. */
  readonly gained: number;
}

/** What is known of one dog, as a goal's futures are drawn from. */
export interface DogBelief {
  readonly skills: readonly SkillBelief[];
  readonly general: { readonly mean: number; readonly sd: number; readonly daysSinceLearned: number | null };
  /** What is odd about each exact ask; asks that are the same share one. */
  readonly odd: readonly { readonly mean: number; readonly sd: number }[];
  readonly gapWeights: Float64Array;
  /** Of each ask of the goal, which of `skills` and of `odd` are its own. */
  readonly asks: readonly { readonly skill: number; readonly odd: number }[];
}

/** Demands whose size changes as the weeks go by. */
const IN_TIME = [DEMANDS.indexOf('lapse'), DEMANDS.indexOf('young')] as const;

function supportOf(asks: readonly GoalAsk[]): number[] {
  const touched = new Set<number>([0, ...IN_TIME.map((j) => j + 1)]);
  for (const { skill, ask, context } of asks)
    demandVector(skill, ask, context).forEach((x, j) => {
      if (x !== 0) touched.add(j + 1);
    });
  return [...touched].sort((a, b) => a - b);
}

const daysSince = (atMs: number, sinceMs: number) => Math.max(0, atMs - sinceMs) / MS_PER_DAY;

/** What is left of what was told of a dog at a skill, in logits. */
function toldLogit(state: FilterState, dog: string, skill: Skill): number {
  const start = state.told.get(dog)?.[SKILLS.indexOf(skill)] ?? null;
  return start === null ? 0 : start.logit * start.left;
}

function skillBelief(
  state: FilterState,
  priors: AbilityPriors,
  known: SkillState | null,
  told: number,
  asks: readonly GoalAsk[],
  atMs: number,
): SkillBelief {
  const { skill } = asks[0]!;
  const kennel = state.kennel[SKILLS.indexOf(skill)]!;
  const departure = known ?? newSkillState(priors, atMs);
  const support = supportOf(asks);
  const n = support.length;
  const daysSinceLearned = known === null ? null : daysSince(atMs, known.atMs);
  const walkDays = Math.min(daysSinceLearned ?? 0, priors.walkDaysAtMost);
  const mean = Float64Array.from(support, (place) => kennel.mean[place]! + departure.mean[place]!);
  mean[0]! += waitingGain(known, null, priors) + told;
  const cov = new Float64Array(n * n);
  support.forEach((row, i) => {
    support.forEach((column, j) => {
      const at = packedAt(Math.max(row, column), Math.min(row, column));
      const walk = i === j ? walkDays * (i === 0 ? priors.abilityWalkPerDay : priors.weightWalkPerDay) : 0;
      cov[i * n + j] = kennel.cov[at]! + departure.cov[at]! + walk;
    });
  });
  const gained = (known?.gained ?? 0) + (known?.waiting == null ? 0 : 1);
  return { skill, support, mean, factor: drawFactor(cov, n), daysSinceLearned, gained };
}

/**
 * Reads from a filter's state what the futures of one dog are drawn from: the same five blocks, in the same places, with the walk
 * and the waiting gain to `atMs`, as a chance stated then would have them. Demands that no ask of the goal touches are left out:
 * in a Gaussian that is the same as drawing and never looking at them. A dog the state does not know stands where a new dog does.
 */
export function dogBelief(
  state: FilterState,
  priors: AbilityPriors,
  dog: string,
  asks: readonly GoalAsk[],
  atMs: number,
): DogBelief {
  const known = state.dogs.get(dog) ?? null;
  const skills = [...new Set(asks.map(({ skill }) => skill))];
  const keys = asks.map(({ skill, ask }) => oddKey(skill, ask));
  const distinct = [...new Set(keys)];
  const generalDays = known === null ? null : daysSince(atMs, known.generalAtMs);
  const generalVariance =
    (known?.general.variance ?? priors.generalSd ** 2) +
    Math.min(generalDays ?? 0, priors.walkDaysAtMost) * priors.generalWalkPerDay;
  return {
    skills: skills.map((skill) =>
      skillBelief(
        state,
        priors,
        known?.skills[SKILLS.indexOf(skill)] ?? null,
        toldLogit(state, dog, skill),
        asks.filter((one) => one.skill === skill),
        atMs,
      ),
    ),
    general: {
      mean: known?.general.mean ?? 0,
      sd: Math.sqrt(generalVariance),
      daysSinceLearned: generalDays,
    },
    odd: distinct.map((key) => {
      const odd = known?.odd.get(key);
      return { mean: odd?.mean ?? 0, sd: odd === undefined ? priors.oddSd : Math.sqrt(odd.variance) };
    }),
    gapWeights: (known?.gap ?? new GapLearner(priors, state.gapTotal).newcomer()).weights,
    asks: asks.map(({ skill }, n) => ({ skill: skills.indexOf(skill), odd: distinct.indexOf(keys[n]!) })),
  };
}

import { demandVector } from '@sedgeline/engine/ability';
import { createKennel, type StatedLeg } from '@sedgeline/projections';
import type { Career } from '../careers/career.ts';
import type { JudgedLeg, Stated } from './judged-leg.ts';

/** A career as the whole program replayed it: the legs to be judged and what it stated before each. */
export interface ReplayedCareer {
  readonly legs: readonly JudgedLeg[];
  readonly engine: readonly Stated[];
  /** The same legs as the engine's own results, for variants of it. */
  readonly stated: readonly StatedLeg[];
}

/** Puts a career's facts through the program and joins what it stated with what was true. */
export function replayCareer({ facts, truths }: Career): ReplayedCareer {
  const kennel = createKennel();
  kennel.add(facts);
  const { stated } = kennel.timeline();
  if (stated.length !== truths.size)
    throw new RangeError(`stated: expected ${truths.size} legs, got ${stated.length}`);
  const counts = new Map<string, number>();
  const count = (key: string, by: number) => {
    const before = counts.get(key) ?? 0;
    counts.set(key, before + by);
    return before;
  };
  const legs = stated.map(({ rep, leg, result }): JudgedLeg => {
    const { dog, skill, ask, context, grade, weight } = result;
    const truth = truths.get(`${rep}/${leg}`);
    if (truth === undefined) throw new RangeError(`truths: expected one of ${rep}/${leg}, got none`);
    const scored = weight > 0 ? 1 : 0;
    const veryAsk = JSON.stringify([dog, skill, { ...ask, windAcrossMPerS: 0 }]);
    return {
      dog,
      skill,
      demands: demandVector(skill, ask, context),
      grade,
      weight,
      truth: truth.given,
      earlier: count(dog, scored),
      earlierAtSkill: count(`${dog} ${skill}`, scored),
      isNewAsk: count(veryAsk, 1) === 0,
      rep: leg === 0 ? count(`reps ${dog}`, 1) : counts.get(`reps ${dog}`)! - 1,
    };
  });
  return { legs, engine: stated.map(({ forecast }) => forecast), stated };
}

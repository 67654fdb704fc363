import { DEMANDS, type DemandName, demandVector, type Skill } from '../ability/index.ts';
import type { GoalAsk } from './season-goal.ts';

/** A factor of a skill, and how much the goal's chance would gain if it cost the dog nothing. */
export interface ProofingGain {
  readonly skill: Skill;
  readonly factor: DemandName;
  readonly gain: number;
}

/** Demands that are the moment's or the dog's age, and no work takes away; and the product, which goes with either of its two. */
const NOT_PROOFED: ReadonlySet<DemandName> = new Set<DemandName>([
  'newness',
  'tired',
  'lapse',
  'stops-running',
  'young',
  'late-temptation',
]);
const LATE_TEMPTATION = DEMANDS.indexOf('late-temptation');

export interface Proofing {
  readonly skill: Skill;
  readonly factor: DemandName;
  /** Places in `DEMANDS` that stand at their easy end with it. */
  readonly demands: readonly number[];
}

/** Every single factor that a goal asks a dog to be proof against: one that some ask at the skill has above its easy end. */
export function proofings(asks: readonly GoalAsk[]): Proofing[] {
  const skills = [...new Set(asks.map(({ skill }) => skill))];
  return skills.flatMap((skill) => {
    const vectors = asks
      .filter((one) => one.skill === skill)
      .map(({ ask, context }) => demandVector(skill, ask, context));
    return DEMANDS.flatMap((factor, j) => {
      if (NOT_PROOFED.has(factor) || !vectors.some((x) => x[j]! > 0)) return [];
      const inProduct = factor === 'late' || factor === 'temptation';
      return [{ skill, factor, demands: inProduct ? [j, LATE_TEMPTATION] : [j] }];
    });
  });
}

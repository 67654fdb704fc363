import { SKILLS } from './ask.ts';
import { DEMANDS, demandVector } from './demands.ts';
import type { DogState, FilterState, SkillState } from './filter-state.ts';
import { newSkillState, WIDTH } from './filter-state.ts';
import { projectMean, projectVariance } from './gaussian-block.ts';
import type { LegQuestion, LogitPart } from './leg.ts';
import { oddKey } from './odd-key.ts';
import type { AbilityPriors } from './priors.ts';

const MS_PER_DAY = 86_400_000;

/** Everything one leg's chance is read from: where h is not zero, and mean and variance of every block. */
export interface LegReading {
  readonly skillIndex: number;
  readonly h: Float64Array;
  readonly support: number[];
  readonly dog: DogState | null;
  readonly skill: SkillState | null;
  readonly oddKey: string;
  /** Ability won by the last session, if this leg belongs to a later one. */
  readonly gain: number;
  readonly walkDays: number;
  readonly generalWalkDays: number;
  readonly formMean: number;
  readonly formVariance: number;
  readonly oddMean: number;
  /** Of eta. */
  readonly mean: number;
  readonly variance: number;
}

function daysSince(atMs: number, sinceMs: number, atMost: number): number {
  return Math.min(Math.max(0, atMs - sinceMs) / MS_PER_DAY, atMost);
}

/** Gain of the waiting session, if `session` is another (or yet to come): `gain x fading^(sessions gained)`. */
export function waitingGain(skill: SkillState | null, session: string | null, priors: AbilityPriors): number {
  if (skill === null || skill.waiting === null || skill.waiting === session) return 0;
  return priors.gainPerSession * priors.gainFading ** skill.gained;
}

/** Where a new dog stands: never changed. */
const unseen = new WeakMap<AbilityPriors, SkillState>();
function unseenSkill(priors: AbilityPriors): SkillState {
  let skill = unseen.get(priors);
  if (skill === undefined) {
    skill = newSkillState(priors, 0);
    unseen.set(priors, skill);
  }
  return skill;
}

/**
 * h = (1, -x) of a leg, into `h` (length 22), and the places where it is not zero.
 * @throws RangeError for a field of ask or context outside its range
 */
export function designOf(question: LegQuestion, h: Float64Array): number[] {
  demandVector(question.skill, question.ask, question.context, h.subarray(1));
  h[0] = 1;
  const support = [0];
  for (let j = 1; j < WIDTH; j++) {
    if (h[j] === 0) continue;
    h[j] = -h[j]!;
    support.push(j);
  }
  return support;
}

/**
 * Reads eta ~ N(mean, variance) of a leg as of its moment: the sum of the five blocks' means and variances,
 * with the walk since they last learned. Changes nothing.
 */
export function readLeg(state: FilterState, question: LegQuestion, priors: AbilityPriors): LegReading {
  const skillIndex = SKILLS.indexOf(question.skill);
  if (skillIndex < 0)
    throw new RangeError(`skill: expected one of the trade's skills, got ${question.skill}`);
  if (!Number.isFinite(question.atMs)) throw new RangeError(`atMs: expected a number, got ${question.atMs}`);
  const h = new Float64Array(WIDTH);
  const support = designOf(question, h);
  const dog = state.dogs.get(question.dog) ?? null;
  const skill = dog === null ? null : dog.skills[skillIndex]!;
  const departure = skill ?? unseenSkill(priors);
  const kennel = state.kennel[skillIndex]!;
  const key = oddKey(question.skill, question.ask);

  const gain = waitingGain(skill, question.session, priors);
  const walkDays = skill === null ? 0 : daysSince(question.atMs, skill.atMs, priors.walkDaysAtMost);
  const generalWalkDays = dog === null ? 0 : daysSince(question.atMs, dog.generalAtMs, priors.walkDaysAtMost);
  let walk = generalWalkDays * priors.generalWalkPerDay;
  if (walkDays > 0) {
    let squares = 0;
    for (const j of support) squares += j === 0 ? 0 : h[j]! * h[j]!;
    walk += walkDays * (priors.abilityWalkPerDay + priors.weightWalkPerDay * squares);
  }
  const form = dog === null || question.session === null ? undefined : dog.form.get(question.session);
  const odd = dog?.odd.get(key);
  const formMean = form?.mean ?? 0;
  const formVariance = form?.variance ?? priors.formSd ** 2;
  const oddMean = odd?.mean ?? 0;
  const generalVariance = dog === null ? priors.generalSd ** 2 : dog.general.variance;
  return {
    skillIndex,
    h,
    support,
    dog,
    skill,
    oddKey: key,
    gain,
    walkDays,
    generalWalkDays,
    formMean,
    formVariance,
    oddMean,
    mean:
      projectMean(kennel, h, support) +
      projectMean(departure, h, support) +
      gain +
      (dog?.general.mean ?? 0) +
      formMean +
      oddMean,
    variance:
      projectVariance(kennel, h, support) +
      projectVariance(departure, h, support) +
      walk +
      generalVariance +
      formVariance +
      (odd?.variance ?? priors.oddSd ** 2),
  };
}

/** The parts of a reading's mean; a demand at its easy end has no part. */
export function partsOf(state: FilterState, reading: LegReading): LogitPart[] {
  const kennel = state.kennel[reading.skillIndex]!.mean;
  const departure = reading.skill?.mean;
  const parts: LogitPart[] = [];
  for (const j of reading.support) {
    const logit = reading.h[j]! * (kennel[j]! + (departure?.[j] ?? 0));
    if (j === 0) parts.push({ factor: 'ability', logit: logit + reading.gain });
    else parts.push({ factor: DEMANDS[j - 1]!, logit });
  }
  parts.push({ factor: 'general', logit: reading.dog?.general.mean ?? 0 });
  parts.push({ factor: 'form', logit: reading.formMean });
  parts.push({ factor: 'odd', logit: reading.oddMean });
  return parts;
}

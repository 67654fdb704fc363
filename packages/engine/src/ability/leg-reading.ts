import { MS_PER_DAY } from '../quantity/time.ts';
import { SKILLS } from './ask.ts';
import { DEMANDS, demandVector } from './demands.ts';
import { type DogState, type FilterState, newSkillState, type SkillState, WIDTH } from './filter-state.ts';
import { append, projectMean, projectVariance, type SparseVector, sparseVector } from './gaussian-block.ts';
import type { LegQuestion, LogitPart } from './leg.ts';
import { oddKey } from './odd-key.ts';
import type { Moments } from './ordinal-update.ts';
import type { AbilityPriors } from './priors.ts';
import type { ToldStart } from './told-level.ts';

function daysSince(atMs: number, sinceMs: number, atMost: number): number {
  return Math.min(Math.max(0, atMs - sinceMs) / MS_PER_DAY, atMost);
}

/** Gain of the waiting session, if `session` is another (or yet to come): `gain x fading^(sessions gained)` (damped trend, Gardner1985). */
export function waitingGain(skill: SkillState | null, session: string | null, priors: AbilityPriors): number {
  if (skill === null || skill.waiting === null || skill.waiting === session) return 0;
  return priors.gainPerSession * priors.gainFading ** skill.gained;
}

const X = new Float64Array(DEMANDS.length);

/**
 * h = (1, -x) of a leg, into `h`.
 * @throws RangeError for a field of ask or context outside its range
 */
export function designOf(question: LegQuestion, h: SparseVector): SparseVector {
  demandVector(question.skill, question.ask, question.context, X);
  h.count = 0;
  append(h, 0, 1);
  for (let j = 1; j < WIDTH; j++) if (X[j - 1] !== 0) append(h, j, -X[j - 1]!);
  return h;
}

/** What of a leg depends on the leg alone. */
interface PreparedLeg {
  readonly h: SparseVector;
  readonly oddKey: string;
}

const PREPARED = new WeakMap<LegQuestion, PreparedLeg>();

/** Makes ready what of these very legs depends on them alone, for whoever reads them many times under other priors. */
export function prepareLegs(legs: readonly LegQuestion[]): void {
  for (const leg of legs) {
    const h = designOf(leg, sparseVector(WIDTH));
    PREPARED.set(leg, { h, oddKey: oddKey(leg.skill, leg.ask) });
  }
}

/**
 * Everything one leg's chance is read from, as of its moment: eta ~ N(mean, variance) is the sum of the five
 * blocks' means and variances, with the walk since they last learned. Made to be filled again and again.
 */
export class LegReading implements Moments {
  h: SparseVector = sparseVector(WIDTH);
  skillIndex = 0;
  dog: DogState | null = null;
  skill: SkillState | null = null;
  oddKey = '';
  /** Ability won by the last session, if this leg belongs to a later one. */
  gain = 0;
  walkDays = 0;
  generalWalkDays = 0;
  formMean = 0;
  formVariance = 0;
  oddMean = 0;
  oddVariance = 0;
  /** What was told of the dog at the skill, and the logits of it that are left: no part of `mean`, from which is learnt. */
  told: ToldStart | null = null;
  toldLogit = 0;
  mean = 0;
  variance = 0;
  readonly #priors: AbilityPriors;
  readonly #own: SparseVector;
  /** Where a new dog stands. */
  readonly #unseen: SkillState;

  constructor(priors: AbilityPriors) {
    this.#priors = priors;
    this.#own = this.h;
    this.#unseen = newSkillState(priors, 0);
  }

  /** The dog's departure at the skill, or that of a dog nobody has seen. */
  get departure(): SkillState {
    return this.skill ?? this.#unseen;
  }

  /**
   * Reads a leg. Changes nothing but this.
   * @throws RangeError for an unknown skill, a moment that is no number, or a field outside its range
   */
  fill(state: FilterState, question: LegQuestion): this {
    const priors = this.#priors;
    const skillIndex = SKILLS.indexOf(question.skill);
    if (skillIndex < 0) throw new RangeError(`skill: expected one of the trade's, got ${question.skill}`);
    if (!Number.isFinite(question.atMs))
      throw new RangeError(`atMs: expected a number, got ${question.atMs}`);
    const prepared = PREPARED.get(question);
    const h = prepared?.h ?? designOf(question, this.#own);
    this.h = h;
    const dog = state.dogs.get(question.dog) ?? null;
    const skill = dog === null ? null : dog.skills[skillIndex]!;
    this.skillIndex = skillIndex;
    this.dog = dog;
    this.skill = skill;
    this.oddKey = prepared?.oddKey ?? oddKey(question.skill, question.ask);
    this.gain = waitingGain(skill, question.session, priors);
    this.walkDays = skill === null ? 0 : daysSince(question.atMs, skill.atMs, priors.walkDaysAtMost);
    this.generalWalkDays =
      dog === null ? 0 : daysSince(question.atMs, dog.generalAtMs, priors.walkDaysAtMost);
    const form = dog === null || question.session === null ? undefined : dog.form.get(question.session);
    const odd = dog?.odd.get(this.oddKey);
    this.formMean = form?.mean ?? 0;
    this.formVariance = form?.variance ?? priors.formSd * priors.formSd;
    this.oddMean = odd?.mean ?? 0;
    this.oddVariance = odd?.variance ?? priors.oddSd * priors.oddSd;
    this.told = state.told.get(question.dog)?.[skillIndex] ?? null;
    this.toldLogit = this.told === null ? 0 : this.told.logit * this.told.left;
    const kennel = state.kennel[skillIndex]!;
    const departure = skill ?? this.#unseen;
    this.mean =
      projectMean(kennel.mean, h) +
      projectMean(departure.mean, h) +
      this.gain +
      (dog?.general.mean ?? 0) +
      this.formMean +
      this.oddMean;
    this.variance =
      projectVariance(kennel, h) +
      projectVariance(departure, h) +
      this.#walkVariance() +
      (dog?.general.variance ?? priors.generalSd * priors.generalSd) +
      this.formVariance +
      this.oddVariance;
    return this;
  }

  #walkVariance(): number {
    const priors = this.#priors;
    let variance = this.generalWalkDays * priors.generalWalkPerDay;
    if (this.walkDays > 0) {
      const { values, count } = this.h;
      let squares = 0;
      for (let k = 1; k < count; k++) squares += values[k]! * values[k]!;
      variance += this.walkDays * (priors.abilityWalkPerDay + priors.weightWalkPerDay * squares);
    }
    return variance;
  }

  /** The mean of eta where a chance is stated: what was told counts there. */
  get statedMean(): number {
    return this.mean + this.toldLogit;
  }

  /** The parts of the stated mean; a demand at its easy end has no part. */
  parts(state: FilterState): LogitPart[] {
    const kennel = state.kennel[this.skillIndex]!.mean;
    const departure = this.departure.mean;
    const parts: LogitPart[] = [{ factor: 'ability', logit: kennel[0]! + departure[0]! + this.gain }];
    if (this.told !== null) parts.push({ factor: 'told', logit: this.toldLogit });
    for (let k = 1; k < this.h.count; k++) {
      const j = this.h.support[k]!;
      parts.push({ factor: DEMANDS[j - 1]!, logit: this.h.values[k]! * (kennel[j]! + departure[j]!) });
    }
    parts.push({ factor: 'general', logit: this.dog?.general.mean ?? 0 });
    parts.push({ factor: 'form', logit: this.formMean });
    parts.push({ factor: 'odd', logit: this.oddMean });
    return parts;
  }
}

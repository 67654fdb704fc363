import { logistic } from '../numeric/logistic.ts';
import { meanLogistic } from '../numeric/logistic-normal.ts';
import { GRADES, SKILLS, type Skill } from './ask.ts';
import { EASY_CONTEXT } from './ask-range.ts';
import { sharedProduct, sharedProductInterval, Z90 } from './chain-chance.ts';
import { DEMANDS } from './demands.ts';
import {
  copyFilterState,
  type DogState,
  type FilterState,
  newDogState,
  newFilterState,
  newSkillState,
  type SkillState,
  WIDTH,
} from './filter-state.ts';
import type { AbilityFilter, LogitEstimate } from './forecaster.ts';
import { GapLearner } from './gap-learner.ts';
import { projectVariance, updateBlock, updateScalar, widen } from './gaussian-block.ts';
import type { LegForecast, LegQuestion, LegResult, LogitPart } from './leg.ts';
import { designOf, type LegReading, partsOf, readLeg, waitingGain } from './leg-reading.ts';
import { type Moments, ordinalUpdate } from './ordinal-update.ts';
import { type AbilityPriors, shippedPriors } from './priors.ts';

/** The filter's own form of a snapshot: a version, the priors it was made with, and the state. */
interface AbilitySnapshot {
  readonly form: 'ability-1';
  readonly priors: string;
  readonly state: FilterState;
}

/**
 * Assumed-density filter of every dog's abilities (Minka2001, Opper1998): five independent Gaussian blocks
 * (kennel, dog, general, form, odd), one cumulative-logit leg at a time (McCullagh1980), a random walk and a
 * fading gain in time, a gap learned for each dog. Legs must come in time order.
 */
class AssumedDensityFilter implements AbilityFilter {
  readonly #priors: AbilityPriors;
  readonly #state: FilterState;
  readonly #gaps: GapLearner;
  readonly #gap: Moments = { mean: 0, variance: 0 };
  readonly #eta: Moments = { mean: 0, variance: 0 };
  readonly #posterior: Moments = { mean: 0, variance: 0 };

  constructor(priors: AbilityPriors, state: FilterState | null) {
    this.#priors = priors;
    this.#gaps = new GapLearner(priors, state?.gapTotal);
    this.#state = state ?? newFilterState(priors, this.#gaps.total);
  }

  forecast(question: LegQuestion): LegForecast {
    return this.#stateOf(readLeg(this.#state, question, this.#priors));
  }

  #stateOf(reading: LegReading): LegForecast {
    const { mean, variance } = reading;
    const gap = this.#gaps.gap(reading.dog?.gap ?? null, this.#gap);
    const notMissed = meanLogistic(mean, variance);
    const goodMean = mean - gap.mean;
    const goodVariance = variance + gap.variance;
    const good = Math.min(notMissed, meanLogistic(goodMean, goodVariance));
    const half = Z90 * Math.sqrt(variance);
    const goodHalf = Z90 * Math.sqrt(goodVariance);
    return {
      chance: { missed: 1 - notMissed, fair: notMissed - good, good },
      interval90: {
        good: [logistic(goodMean - goodHalf), logistic(goodMean + goodHalf)],
        notMissed: [logistic(mean - half), logistic(mean + half)],
      },
      logOdds: { mean, sd: Math.sqrt(variance) },
    };
  }

  because(question: LegQuestion): readonly LogitPart[] {
    return partsOf(this.#state, readLeg(this.#state, question, this.#priors));
  }

  observe(leg: LegResult): LegForecast {
    if (!(leg.weight >= 0 && leg.weight <= 1))
      throw new RangeError(`weight: expected 0..1, got ${leg.weight}`);
    if (!GRADES.includes(leg.grade))
      throw new RangeError(`grade: expected ${GRADES.join(' / ')}, got ${leg.grade}`);
    const reading = readLeg(this.#state, leg, this.#priors);
    const forecast = this.#stateOf(reading);
    const dog = reading.dog ?? this.#addDog(leg);
    const skill = reading.skill ?? this.#addSkill(dog, leg, reading.skillIndex);
    this.#beginSession(dog, skill, leg, reading.skillIndex);
    if (leg.weight > 0) this.#learn(dog, skill, leg, reading);
    return forecast;
  }

  #addDog(leg: LegResult): DogState {
    const dog = newDogState(this.#priors, leg.atMs);
    this.#state.dogs.set(leg.dog, dog);
    return dog;
  }

  #addSkill(dog: DogState, leg: LegResult, skillIndex: number): SkillState {
    const skill = newSkillState(this.#priors, leg.atMs);
    dog.skills[skillIndex] = skill;
    return skill;
  }

  /** Pays out the gain of an earlier session, and books this one if the skill was not yet worked in it. */
  #beginSession(dog: DogState, skill: SkillState, leg: LegResult, skillIndex: number): void {
    const gain = waitingGain(skill, leg.session, this.#priors);
    if (skill.waiting !== null && skill.waiting !== leg.session) {
      skill.mean[0]! += gain;
      skill.gained += 1;
      skill.waiting = null;
    }
    let form = dog.form.get(leg.session);
    if (form === undefined) {
      form = { mean: 0, variance: this.#priors.formSd ** 2, worked: 0 };
      dog.form.set(leg.session, form);
    }
    const bit = 1 << skillIndex;
    if ((form.worked & bit) === 0) {
      form.worked |= bit;
      skill.waiting = leg.session;
    }
  }

  #learn(dog: DogState, skill: SkillState, leg: LegResult, reading: LegReading): void {
    const priors = this.#priors;
    const eta = this.#eta;
    eta.mean = reading.mean;
    eta.variance = reading.variance;
    if (!(eta.variance > 0)) return;
    const gap = this.#gaps.gap(dog.gap, this.#gap).mean;
    const posterior = ordinalUpdate(eta, leg.grade, gap, leg.weight, this.#posterior);
    const shift = (posterior.mean - eta.mean) / eta.variance;
    const shrink = (eta.variance - posterior.variance) / eta.variance / eta.variance;
    this.#gaps.learn(dog.gap, leg.grade, eta, leg.weight);

    if (reading.walkDays > 0) {
      widen(skill, reading.walkDays * priors.abilityWalkPerDay, reading.walkDays * priors.weightWalkPerDay);
    }
    skill.atMs = Math.max(skill.atMs, leg.atMs);
    dog.general.variance += reading.generalWalkDays * priors.generalWalkPerDay;
    dog.generalAtMs = Math.max(dog.generalAtMs, leg.atMs);
    let odd = dog.odd.get(reading.oddKey);
    if (odd === undefined) {
      odd = { mean: 0, variance: priors.oddSd ** 2 };
      dog.odd.set(reading.oddKey, odd);
    }
    updateBlock(this.#state.kennel[reading.skillIndex]!, reading.h, reading.support, shift, shrink);
    updateBlock(skill, reading.h, reading.support, shift, shrink);
    updateScalar(dog.general, shift, shrink);
    updateScalar(dog.form.get(leg.session)!, shift, shrink);
    updateScalar(odd, shift, shrink);
  }

  ability(dog: string, skill: Skill, atMs: number): LogitEstimate {
    const question = { dog, skill, session: null, atMs, ask: {}, context: EASY_CONTEXT };
    const reading = readLeg(this.#state, question, this.#priors);
    const odd = reading.dog?.odd.get(reading.oddKey);
    const beside = reading.formVariance + (odd?.variance ?? this.#priors.oddSd ** 2);
    return {
      mean: reading.mean - reading.oddMean - reading.formMean,
      sd: Math.sqrt(Math.max(0, reading.variance - beside)),
    };
  }

  form(dog: string, session: string): LogitEstimate {
    const form = this.#state.dogs.get(dog)?.form.get(session);
    return { mean: form?.mean ?? 0, sd: form === undefined ? this.#priors.formSd : Math.sqrt(form.variance) };
  }

  stretch(now: LegQuestion, then: LegQuestion): LogitEstimate & { readonly parts: readonly LogitPart[] } {
    if (now.dog !== then.dog)
      throw new RangeError(`dog: expected the same in both asks, got ${now.dog}, ${then.dog}`);
    if (now.skill !== then.skill) {
      throw new RangeError(`skill: expected the same in both asks, got ${now.skill}, ${then.skill}`);
    }
    const change = new Float64Array(WIDTH);
    const before = new Float64Array(WIDTH);
    designOf(now, change);
    designOf(then, before);
    const reading = readLeg(this.#state, now, this.#priors);
    const kennel = this.#state.kennel[reading.skillIndex]!;
    const departure = reading.skill ?? newSkillState(this.#priors, now.atMs);
    const support: number[] = [];
    const parts: LogitPart[] = [];
    let mean = 0;
    let squares = 0;
    for (let j = 1; j < WIDTH; j++) {
      change[j] = before[j]! - change[j]!;
      if (change[j] === 0) continue;
      support.push(j);
      squares += change[j]! ** 2;
      const logit = change[j]! * (kennel.mean[j]! + departure.mean[j]!);
      parts.push({ factor: DEMANDS[j - 1]!, logit });
      mean += logit;
    }
    const walk = reading.walkDays * this.#priors.weightWalkPerDay * squares;
    const variance =
      projectVariance(kennel, change, support) + projectVariance(departure, change, support) + walk;
    return { mean, sd: Math.sqrt(Math.max(0, variance)), parts };
  }

  chain(questions: readonly LegQuestion[]): ReturnType<AbilityFilter['chain']> {
    const first = questions[0];
    if (first === undefined) throw new RangeError('questions: expected one leg or more, got none');
    if (questions.some((q) => q.dog !== first.dog || q.session !== first.session)) {
      throw new RangeError('questions: expected one dog and one session');
    }
    const readings = questions.map((question) => readLeg(this.#state, question, this.#priors));
    const gap = this.#gaps.gap(readings[0]!.dog?.gap ?? null, this.#gap);
    const shared = readings[0]!.formVariance;
    const notMissed = readings.map(({ mean, variance }) => ({
      mean,
      variance: Math.max(0, variance - shared),
    }));
    const good = notMissed.map(({ mean, variance }) => ({ mean: mean - gap.mean, variance }));
    const noneMissed = sharedProduct(notMissed, shared);
    return {
      noneMissed,
      allGood: Math.min(noneMissed, sharedProduct(good, shared + gap.variance)),
      interval90: sharedProductInterval(notMissed, shared),
    };
  }

  snapshot(): AbilitySnapshot {
    return { form: 'ability-1', priors: JSON.stringify(this.#priors), state: copyFilterState(this.#state) };
  }
}

/** A filter that has seen nothing. */
export function createAbilityFilter(priors: AbilityPriors = shippedPriors): AbilityFilter {
  return new AssumedDensityFilter(priors, null);
}

/** Whether a stored value is a snapshot of this version's filter, made with these priors. */
export function isAbilitySnapshot(value: unknown, priors: AbilityPriors = shippedPriors): boolean {
  if (typeof value !== 'object' || value === null) return false;
  const { form, priors: made, state } = value as Partial<AbilitySnapshot>;
  return form === 'ability-1' && made === JSON.stringify(priors) && state?.kennel.length === SKILLS.length;
}

/**
 * A filter that goes on from a snapshot, to the bit as the one that made it.
 * @throws TypeError if the value is no snapshot of this version with these priors; ask `isAbilitySnapshot` first
 */
export function restoreAbilityFilter(
  snapshot: unknown,
  priors: AbilityPriors = shippedPriors,
): AbilityFilter {
  if (!isAbilitySnapshot(snapshot, priors)) {
    throw new TypeError('snapshot: expected one made by this version with the same priors');
  }
  return new AssumedDensityFilter(priors, copyFilterState((snapshot as AbilitySnapshot).state));
}

import { GRADES, SKILLS, type Skill } from './ask.ts';
import { EASY_CONTEXT } from './ask-range.ts';
import { sharedProduct, sharedProductInterval } from './chain-chance.ts';
import { type AbilitySnapshot, openSnapshot, sealSnapshot } from './filter-snapshot.ts';
import {
  type DogState,
  type FilterState,
  newDogState,
  newFilterState,
  newSkillState,
} from './filter-state.ts';
import type { AbilityFilter, LogitEstimate } from './forecaster.ts';
import { GapLearner, type GapState, gapMoments } from './gap-learner.ts';
import { updateBlock, updateScalar, widen } from './gaussian-block.ts';
import type { LegForecast, LegQuestion, LegResult, LogitPart } from './leg.ts';
import { LegReading, waitingGain } from './leg-reading.ts';
import { type Moments, ordinalUpdate } from './ordinal-update.ts';
import { type AbilityPriors, shippedPriors } from './priors.ts';
import { statedChances } from './stated-chances.ts';
import { type Stretch, stretchOf } from './stretch.ts';
import { leftByLeg, type ToldLevel, toldAbility, toldShift } from './told-level.ts';

/**
 * Assumed-density filter of every dog's abilities (Minka2001, Opper1998): five independent Gaussian blocks
 * (kennel, dog, general, form, odd), one cumulative-logit leg at a time (McCullagh1980), a random walk and a
 * fading gain in time, a gap learned for each dog. Legs must come in time order.
 */
class AssumedDensityFilter implements AbilityFilter {
  readonly #priors: AbilityPriors;
  readonly #state: FilterState;
  readonly #gaps: GapLearner;
  readonly #reading: LegReading;
  readonly #gap: Moments = { mean: 0, variance: 0 };
  readonly #posterior: Moments = { mean: 0, variance: 0 };

  constructor(priors: AbilityPriors, state: FilterState | null) {
    this.#priors = priors;
    this.#gaps = new GapLearner(priors, state?.gapTotal);
    this.#state = state ?? newFilterState(priors, this.#gaps.total);
    this.#reading = new LegReading(priors);
  }

  forecast(question: LegQuestion): LegForecast {
    return this.#statedOf(this.#reading.fill(this.#state, question));
  }

  because(question: LegQuestion): readonly LogitPart[] {
    return this.#reading.fill(this.#state, question).parts(this.#state);
  }

  observe(leg: LegResult): LegForecast {
    if (!(leg.weight >= 0 && leg.weight <= 1))
      throw new RangeError(`weight: expected 0..1, got ${leg.weight}`);
    if (!GRADES.includes(leg.grade))
      throw new RangeError(`grade: expected one of ${GRADES}, got ${leg.grade}`);
    const reading = this.#reading.fill(this.#state, leg);
    const forecast = this.#statedOf(reading);
    const dog = reading.dog ?? this.#addDog(leg);
    this.#beginSession(dog, leg, reading);
    if (leg.weight > 0 && reading.variance > 0) this.#learn(dog, leg, reading);
    return forecast;
  }

  tell(dog: string, skill: Skill, atMs: number, level: ToldLevel | null): void {
    const reading = this.#readEasy(dog, skill, atMs);
    const { skillIndex } = reading;
    const untold = { mean: reading.mean - reading.oddMean, variance: abilityVariance(reading) };
    const needed = level === null ? null : toldAbility(skill, level, this.#priors);
    const starts = this.#state.told.get(dog) ?? SKILLS.map(() => null);
    starts[skillIndex] = needed === null ? null : { logit: toldShift(needed, untold), left: 1 };
    if (starts.some((start) => start !== null)) this.#state.told.set(dog, starts);
    else this.#state.told.delete(dog);
  }

  toldLeft(dog: string, skill: Skill): number | null {
    return this.#state.told.get(dog)?.[SKILLS.indexOf(skill)]?.left ?? null;
  }

  ability(dog: string, skill: Skill, atMs: number): LogitEstimate {
    const reading = this.#readEasy(dog, skill, atMs);
    return { mean: reading.statedMean - reading.oddMean, sd: Math.sqrt(abilityVariance(reading)) };
  }

  form(dog: string, session: string): LogitEstimate {
    const form = this.#state.dogs.get(dog)?.form.get(session);
    return { mean: form?.mean ?? 0, sd: form === undefined ? this.#priors.formSd : Math.sqrt(form.variance) };
  }

  gap(dog: string): LogitEstimate {
    const { mean, variance } = gapMoments(this.#gapOf(this.#state.dogs.get(dog) ?? null), this.#gap);
    return { mean, sd: Math.sqrt(variance) };
  }

  stretch(now: LegQuestion, then: LegQuestion): Stretch {
    return stretchOf(this.#state, this.#reading, now, then, this.#priors);
  }

  chain(questions: readonly LegQuestion[]): ReturnType<AbilityFilter['chain']> {
    const first = questions[0];
    if (first === undefined) throw new RangeError('questions: expected one leg or more, got none');
    if (questions.some((q) => q.dog !== first.dog || q.session !== first.session)) {
      throw new RangeError('questions: expected one dog and one session');
    }
    let shared = 0;
    const notMissed = questions.map((question): Moments => {
      const { statedMean, variance, formVariance } = this.#reading.fill(this.#state, question);
      shared = formVariance;
      return { mean: statedMean, variance: Math.max(0, variance - formVariance) };
    });
    const gap = gapMoments(this.#gapOf(this.#reading.dog), this.#gap);
    const good = notMissed.map(({ mean, variance }) => ({ mean: mean - gap.mean, variance }));
    const noneMissed = sharedProduct(notMissed, shared);
    return {
      noneMissed,
      allGood: Math.min(noneMissed, sharedProduct(good, shared + gap.variance)),
      interval90: sharedProductInterval(notMissed, shared, noneMissed),
    };
  }

  snapshot(): AbilitySnapshot {
    return sealSnapshot(this.#state, this.#priors);
  }

  #readEasy(dog: string, skill: Skill, atMs: number): LegReading {
    const question = { dog, skill, session: null, atMs, ask: {}, context: EASY_CONTEXT };
    return this.#reading.fill(this.#state, question);
  }

  #gapOf(dog: DogState | null): GapState {
    return dog === null ? this.#gaps.newcomer() : dog.gap;
  }

  #statedOf(reading: LegReading): LegForecast {
    const eta = { mean: reading.statedMean, variance: reading.variance };
    return statedChances(eta, gapMoments(this.#gapOf(reading.dog), this.#gap));
  }

  #addDog(leg: LegResult): DogState {
    const dog = newDogState(this.#priors, this.#gaps.newcomer(), leg.atMs);
    this.#state.dogs.set(leg.dog, dog);
    return dog;
  }

  /** Opens the session's form, pays out the gain of an earlier session, and books this one for the skill. */
  #beginSession(dog: DogState, leg: LegResult, reading: LegReading): void {
    let form = dog.form.get(leg.session);
    if (form === undefined) {
      form = { mean: 0, variance: this.#priors.formSd ** 2, worked: 0 };
      dog.form.set(leg.session, form);
      this.#gaps.beginSession(dog.gap);
    }
    let skill = reading.skill;
    if (skill === null) {
      skill = newSkillState(this.#priors, leg.atMs);
      dog.skills[reading.skillIndex] = skill;
    }
    if (skill.waiting !== null && skill.waiting !== leg.session) {
      skill.mean[0]! += waitingGain(skill, leg.session, this.#priors);
      skill.gained += 1;
      skill.waiting = null;
    }
    const bit = 1 << reading.skillIndex;
    if ((form.worked & bit) === 0) {
      form.worked |= bit;
      skill.waiting = leg.session;
    }
  }

  #learn(dog: DogState, leg: LegResult, eta: LegReading): void {
    const priors = this.#priors;
    const gap = gapMoments(dog.gap, this.#gap).mean;
    const posterior = ordinalUpdate(eta, leg.grade, gap, leg.weight, this.#posterior);
    const shift = (posterior.mean - eta.mean) / eta.variance;
    const shrink = (eta.variance - posterior.variance) / eta.variance / eta.variance;
    this.#gaps.learn(dog.gap, leg.grade, eta, leg.weight);
    if (eta.told !== null) eta.told.left *= leftByLeg(abilityVariance(eta), eta.variance, posterior.variance);

    const skill = dog.skills[eta.skillIndex]!;
    if (eta.walkDays > 0) {
      widen(skill, eta.walkDays * priors.abilityWalkPerDay, eta.walkDays * priors.weightWalkPerDay);
    }
    skill.atMs = Math.max(skill.atMs, leg.atMs);
    dog.general.variance += eta.generalWalkDays * priors.generalWalkPerDay;
    dog.generalAtMs = Math.max(dog.generalAtMs, leg.atMs);
    let odd = dog.odd.get(eta.oddKey);
    if (odd === undefined) {
      odd = { mean: 0, variance: priors.oddSd ** 2 };
      dog.odd.set(eta.oddKey, odd);
    }
    updateBlock(this.#state.kennel[eta.skillIndex]!, eta.h, shift, shrink);
    updateBlock(skill, eta.h, shift, shrink);
    updateScalar(dog.general, shift, shrink);
    updateScalar(dog.form.get(leg.session)!, shift, shrink);
    updateScalar(odd, shift, shrink);
  }
}

/** Variance of an ability that was read: the day's form and what is odd about the ask are no part of it. */
function abilityVariance({ variance, formVariance, oddVariance }: LegReading): number {
  return Math.max(0, variance - formVariance - oddVariance);
}

/** A filter that has seen nothing. */
export function createAbilityFilter(priors: AbilityPriors = shippedPriors): AbilityFilter {
  return new AssumedDensityFilter(priors, null);
}

/**
 * A filter that goes on from a snapshot, to the bit as the one that made it.
 * @throws TypeError if the value is no snapshot of this version with these priors; ask `isAbilitySnapshot` first
 */
export function restoreAbilityFilter(
  snapshot: unknown,
  priors: AbilityPriors = shippedPriors,
): AbilityFilter {
  return new AssumedDensityFilter(priors, openSnapshot(snapshot, priors));
}

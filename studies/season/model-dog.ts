import {
  type AbilityPriors,
  type Ask,
  DEMANDS,
  demandVector,
  EASY_CONTEXT,
  type LegResult,
} from '@sedgeline/engine/ability';
import type { Dice } from '../careers/dice.ts';

const DAY_MS = 86_400_000;
const START_MS = Date.UTC(2025, 2, 1, 9);
export const MODEL_SKILLS = ['stop', 'line', 'recall'] as const;
type ModelSkill = (typeof MODEL_SKILLS)[number];

/** Asks such a dog is worked at. */
const WORKED: readonly Ask[] = [
  {},
  { distanceM: 20 },
  { distanceM: 40, wayFraction: 0.4, handlerPlace: 'beside' },
  { distanceM: 30, temptation: 'placed-dummy', cover: 1 },
  { distanceM: 15, distraction: 1, waitS: 10 },
];

/** One normal's worth of the even places at which a form is averaged: 61 of them, four sds each way. */
const FORMS = Array.from({ length: 61 }, (_, k) => -4 + (8 * k) / 60).map((z) => ({
  z,
  weight: Math.exp((-z * z) / 2),
}));
const FORM_TOTAL = FORMS.reduce((sum, { weight }) => sum + weight, 0);
const logistic = (eta: number) => 1 / (1 + Math.exp(-eta));

/**
 * A dog that lives by the model's law, written here once more and plainly: one vector a skill, walked day by day of work, no
 * filter, no factor, no mirrored draws.
 */
export class ModelDog {
  readonly #priors: AbilityPriors;
  readonly #dice: Dice;
  readonly #b = new Map<ModelSkill, { readonly values: number[]; lastDay: number; sessions: number }>();
  readonly #odd = new Map<string, number>();
  readonly #gap: number;
  #general: number;
  #day = 0;
  #session = 0;

  constructor(priors: AbilityPriors, dice: Dice) {
    this.#priors = priors;
    this.#dice = dice;
    const centre = priors.gapCentre + priors.gapCentreSd * dice.normal();
    // The filter weighs gaps of 0.5 to 2.4 and no others.
    let gap = 0;
    do gap = centre + priors.gapDogSd * dice.normal();
    while (gap < 0.45 || gap > 2.45);
    this.#gap = gap;
    this.#general = priors.generalSd * dice.normal();
    for (const skill of MODEL_SKILLS) {
      const own = (sd: number, kennelSd: number) => sd * dice.normal() + kennelSd * dice.normal();
      const weights = DEMANDS.map(
        (name) => priors.weightMean[name] + own(priors.dogWeightSd, priors.kennelWeightSd),
      );
      const ability = priors.abilityMean + own(priors.dogAbilitySd, priors.kennelAbilitySd);
      this.#b.set(skill, { values: [ability, ...weights], lastDay: 0, sessions: 0 });
    }
  }

  get atMs(): number {
    return START_MS + this.#day * DAY_MS;
  }

  /** Time goes by: everything walks. Sessions are never 60 days apart here. */
  pass(days: number): void {
    const { abilityWalkPerDay, weightWalkPerDay, generalWalkPerDay } = this.#priors;
    for (const { values } of this.#b.values())
      values.forEach((value, j) => {
        const sd = Math.sqrt(days * (j === 0 ? abilityWalkPerDay : weightWalkPerDay));
        values[j] = value + sd * this.#dice.normal();
      });
    this.#general += Math.sqrt(days * generalWalkPerDay) * this.#dice.normal();
    this.#day += days;
  }

  /** A session in which every skill is worked, `legs` legs in all; the gain is there for the next. */
  works(legs: number): LegResult[] {
    const { formSd, gainPerSession, gainFading } = this.#priors;
    const form = formSd * this.#dice.normal();
    const session = `s${this.#session++}`;
    const results = Array.from({ length: legs }, (_, n): LegResult => {
      const skill = MODEL_SKILLS[n % MODEL_SKILLS.length]!;
      const ask = this.#dice.pick(WORKED);
      const context = { ...EASY_CONTEXT, daysSinceWorked: this.#day - this.#b.get(skill)!.lastDay };
      const eta = this.#eta(skill, ask, this.#day - this.#b.get(skill)!.lastDay) + form;
      const u = this.#dice.uniform();
      const grade = u < logistic(eta - this.#gap) ? 'good' : u < logistic(eta) ? 'fair' : 'missed';
      return { dog: 'd', skill, session, atMs: this.atMs, ask, context, grade, weight: 1 };
    });
    for (const one of this.#b.values()) {
      one.values[0]! += gainPerSession * gainFading ** one.sessions;
      one.sessions += 1;
      one.lastDay = this.#day;
    }
    return results;
  }

  #eta(skill: ModelSkill, ask: Ask, daysSinceWorked: number): number {
    const { values } = this.#b.get(skill)!;
    const x = demandVector(skill, ask, { ...EASY_CONTEXT, daysSinceWorked });
    const key = `${skill} ${JSON.stringify(ask)}`;
    const odd = this.#odd.get(key) ?? this.#priors.oddSd * this.#dice.normal();
    this.#odd.set(key, odd);
    return x.reduce((sum, one, j) => sum - one * values[j + 1]!, values[0]!) + this.#general + odd;
  }

  daysSinceWorked(skill: ModelSkill): number {
    return this.#day - this.#b.get(skill)!.lastDay;
  }

  /** True chance of good of an ask today, the day's form averaged out. */
  chanceOfGood(skill: ModelSkill, ask: Ask): number {
    const eta = this.#eta(skill, ask, this.daysSinceWorked(skill)) - this.#gap;
    const sum = FORMS.reduce((s, { z, weight }) => s + weight * logistic(eta + this.#priors.formSd * z), 0);
    return sum / FORM_TOTAL;
  }
}

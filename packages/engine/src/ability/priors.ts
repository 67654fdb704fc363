import type { DemandName } from './demands.ts';

/** Every number of the ability model that no data has given. Logits, unless the name says otherwise. */
export interface AbilityPriors {
  readonly abilityMean: number;
  /** What one unit of each demand costs, before any record. */
  readonly weightMean: Readonly<Record<DemandName, number>>;
  readonly kennelAbilitySd: number;
  readonly kennelWeightSd: number;
  readonly dogAbilitySd: number;
  readonly dogWeightSd: number;
  readonly generalSd: number;
  readonly formSd: number;
  readonly oddSd: number;
  /** Distance between the two cuts: centre for the kennel, its sd, and the sd between dogs. */
  readonly gapCentre: number;
  readonly gapCentreSd: number;
  readonly gapDogSd: number;
  /** Variance a day of the random walks, and how many days of silence count at most. */
  readonly abilityWalkPerDay: number;
  readonly weightWalkPerDay: number;
  readonly generalWalkPerDay: number;
  readonly walkDaysAtMost: number;
  /** Ability won by a session in which the skill is worked, and its fading from session to session. */
  readonly gainPerSession: number;
  readonly gainFading: number;
}

/**
 * The shipped priors. Every number is our judgement, 2026: common practice, no source; the record moves them.
 */
export const shippedPriors: AbilityPriors = {
  abilityMean: 1.8,
  weightMean: {
    distance: 0.5,
    late: 0.45,
    temptation: 0.5,
    handler: 0.4,
    cover: 0.45,
    distraction: 0.45,
    obstacle: 0.55,
    turn: 0.4,
    cast: 0.35,
    others: 0.4,
    narrow: 0.35,
    blind: 0.7,
    wait: 0.3,
    wind: 0.2,
    crew: 0.3,
    newness: 0.5,
    tired: 0.15,
    lapse: 0.15,
    'stops-running': 0.1,
    'late-temptation': 0.1,
    young: 0.4,
  },
  kennelAbilitySd: 0.5,
  kennelWeightSd: 0.15,
  dogAbilitySd: 0.6,
  dogWeightSd: 0.14,
  generalSd: 0.7,
  formSd: 0.4,
  oddSd: 0.25,
  gapCentre: 1.2,
  gapCentreSd: 0.3,
  gapDogSd: 0.35,
  abilityWalkPerDay: 0.0015,
  weightWalkPerDay: 0.00003,
  generalWalkPerDay: 0.0005,
  walkDaysAtMost: 60,
  gainPerSession: 0.05,
  gainFading: 0.985,
};

import { CARE_LIMITS } from '../../weather/index.ts';

/**
 * What the rules of a plan are held to (contract, "How the rules are counted"; common practice, no source). The figures
 * for age and heat are those of care: cautious, and no safe limits; the vet's word goes first.
 */
export const RULE_LIMITS = {
  /** Chance of not missed of each leg of a known thing: the first rep and the finish. */
  known: 0.85,
  /** Chance of not missed of each leg that is within reach. */
  withinReach: 0.65,
  /** Reps with a cast to the left and to the right may differ by so many. */
  sidesApart: 1,
  /** Most reps and minutes without a break. */
  stretchReps: 12,
  stretchMinutes: 12,
  /** From so many stops on, their parts of the way have to span so much. */
  stopsToVary: 3,
  waySpan: 0.25,
  leastRepS: 25,
  ...CARE_LIMITS,
} as const;

/** Slack of every comparison of chances, minutes and parts of the way: rounding of sums in doubles, far below what is shown. */
export const ROUNDING = 1e-9;

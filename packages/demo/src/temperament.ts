import type { SkillName } from '@sedgeline/journal';

/**
 * What an invented dog is like. All figures are our judgement, 2026, chosen so that the three tell apart; they stand for
 * no real dog. Strengths and pulls share one scale, on which a cue fully learnt and close by has 1.
 */
export interface Temperament {
  /** How far each response is bound to its cue at the start, 0..1; skills not named: `otherHabit`. */
  readonly habits: Readonly<Partial<Record<SkillName, number>>>;
  readonly otherHabit: number;
  /** Share of what is learnt that sticks to the ground where it was learnt, 0..1: a dog good only at home has much. */
  readonly groundShare: number;
  /** How much of the gap to full strength one rewarded leg closes. */
  readonly learning: number;
  /** How hard a prize pulls. */
  readonly drive: number;
  /** How much what goes on around pulls. */
  readonly curiosity: number;
  /** Distance at which a cue has half its strength, in metres. */
  readonly carryM: number;
  /** Spread of the mood from day to day. */
  readonly moodiness: number;
  /** Share of strength lost with each rep; a break gives back most of it. */
  readonly fatigue: number;
  /** Strength that a cast to the right has less than one to the left. */
  readonly rightWeakness: number;
  /** How easily it comes to expect the whistle, 0..1. */
  readonly expecting: number;
  /** Reaction at full strength, in seconds. */
  readonly quickestS: number;
}

/** Careful, young, learns fast, bound to the place, a little weaker to the right. */
export const CAREFUL_YOUNG: Temperament = {
  habits: { steady: 0.7, line: 0.5, stop: 0.48, recall: 0.75, pickup: 0.75, delivery: 0.65, heel: 0.7 },
  otherHabit: 0.5,
  groundShare: 0.4,
  learning: 0.055,
  drive: 0.42,
  curiosity: 0.75,
  carryM: 210,
  moodiness: 0.06,
  fatigue: 0.006,
  rightWeakness: 0.06,
  expecting: 0.42,
  quickestS: 0.4,
};

/** Keen: goes out hard, hard to stop with a prize ahead, soon expects the whistle. */
export const KEEN: Temperament = {
  habits: { steady: 0.6, line: 0.85, stop: 0.6, mark: 0.85, hunt: 0.8, pickup: 0.85, delivery: 0.7 },
  otherHabit: 0.62,
  groundShare: 0.3,
  learning: 0.035,
  drive: 0.8,
  curiosity: 0.5,
  carryM: 260,
  moodiness: 0.07,
  fatigue: 0.004,
  rightWeakness: 0,
  expecting: 0.8,
  quickestS: 0.35,
};

/** An old hand: knows it all, anywhere; tires late in the session. */
export const OLD_HAND: Temperament = {
  habits: {},
  otherHabit: 0.93,
  groundShare: 0.12,
  learning: 0.02,
  drive: 0.4,
  curiosity: 0.25,
  carryM: 420,
  moodiness: 0.04,
  fatigue: 0.022,
  rightWeakness: 0,
  expecting: 0.4,
  quickestS: 0.5,
};

import type { Dice } from '../careers/dice.ts';

/** Where a dog is asked: the three words a handler has for how strange a ground is. */
export const PLACES = ['home', 'known', 'new'] as const;
export type Place = (typeof PLACES)[number];

export type ReachGrade = 'missed' | 'fair' | 'good';

/**
 * A dog that knows nothing of logits: it has a reach in metres, the distance at which half of its legs are not missed, that a
 * strange ground and a poor day cut down by a factor, and that grows by a factor with each session.
 */
export interface ReachDog {
  /** In the manner in which its handler works it. */
  reachM: number;
  /** Worked in lessons, with something that draws it, rather than plainly. */
  readonly isLesson: boolean;
  readonly steepness: number;
  readonly placeFactor: Readonly<Record<Place, number>>;
}

/** Reach where a good leg, not only one that is not missed, is as likely as not, as a share of the reach. */
const GOOD_SHARE = 0.7;
const LAPSES = 0.03;
const GROWTH_A_SESSION = 1.02;

/** What an ordinary lesson leaves of a plain reach. */
const LESSON_SHARE = 0.4;

/** Plain reaches from a puppy's few metres to a made dog's hundred and more: log-normal about `medianM` (our judgement, 2026). */
export function reachDog(dice: Dice, medianM: number): ReachDog {
  const isLesson = dice.chance(0.5);
  return {
    reachM: medianM * Math.exp(1.2 * dice.normal()) * (isLesson ? LESSON_SHARE : 1),
    isLesson,
    steepness: dice.between(0.8, 2),
    placeFactor: { home: 1, known: dice.between(0.75, 1), new: dice.between(0.45, 0.9) },
  };
}

/** Factor of one day's form on the reach. */
export function dayFactor(dice: Dice): number {
  return Math.exp(0.2 * dice.normal());
}

/** The true chances of a leg: a Weibull curve over distance with lapses, `0.97 exp(-ln 2 (d/reach)^k)`, for each of the two cuts. */
export function trueChances(dog: ReachDog, distanceM: number, place: Place, day: number) {
  const reach = dog.reachM * dog.placeFactor[place] * day;
  const within = (share: number) =>
    (1 - LAPSES) * Math.exp(-Math.LN2 * (distanceM / (share * reach)) ** dog.steepness);
  return { notMissed: within(1), good: within(GOOD_SHARE) };
}

export function playLeg(dog: ReachDog, distanceM: number, place: Place, day: number, dice: Dice): ReachGrade {
  const { notMissed, good } = trueChances(dog, distanceM, place, day);
  const throwAt = dice.uniform();
  if (throwAt < good) return 'good';
  return throwAt < notMissed ? 'fair' : 'missed';
}

export function afterSession(dog: ReachDog): void {
  dog.reachM *= GROWTH_A_SESSION;
}

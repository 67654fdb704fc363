import {
  createAbilityFilter,
  demandVector,
  EASY_CONTEXT,
  type LegResult,
  shippedPriors,
  statedChances,
} from '@sedgeline/engine/ability';
import { type Dice, diceNamed } from '../careers/dice.ts';
import { afterSession, dayFactor, playLeg, type ReachDog, reachDog, trueChances } from './reach-dog.ts';
import type { Told } from './tellers.ts';

const LEGS_A_SESSION = [7, 7, 6] as const;
/** Median of the plain reaches, so chosen that the engine's chances with nothing told are neither too high nor too low on the whole. */
const MEDIAN_M = 16;
const SESSION_EVERY_MS = 3 * 86_400_000;
/** Half of the dogs are asked in the manner of an ordinary lesson, which the question about distance says nothing of. */
const LESSON = { wayFraction: 0.5, temptation: 'post', handlerPlace: 'beside' } as const;

/** How much a statement weighs: it is read as the ability it needs, give or take `errorSd` logits. */
export interface Start {
  readonly errorSd: number;
  /** Log-odds of not missing the stated distance. */
  readonly stoodAt: number;
}

/** A leg of the first record, with the truth behind it. */
export interface FirstLeg {
  readonly leg: LegResult;
  /** True chance of not missing, the day's form known. */
  readonly notMissed: number;
}

/** The first twenty legs of an invented dog: three sessions on a ground that the record does not know. */
export function firstLegs(name: string): { readonly dog: ReachDog; readonly legs: readonly FirstLeg[] } {
  const dice = diceNamed(name);
  const dog = reachDog(dice, MEDIAN_M);
  const before = { ...dog };
  const isClimber = dice.chance(0.5);
  const legs: FirstLeg[] = [];
  let distanceM = isClimber ? 5 : nearReach(dog, dice);
  LEGS_A_SESSION.forEach((count, session) => {
    const day = dayFactor(dice);
    for (let n = 0; n < count; n++) {
      const askedM = Math.min(400, Math.max(1, distanceM));
      const place = 'known';
      const grade = playLeg(dog, askedM, place, day, dice);
      legs.push({
        leg: {
          dog: 'dog',
          skill: 'stop',
          session: `s${session}`,
          atMs: session * SESSION_EVERY_MS + n * 90_000,
          ask: { distanceM: askedM, ...(dog.isLesson ? LESSON : {}) },
          context: { ...EASY_CONTEXT, earlierSessionsOnGround: session, repsSinceBreak: n },
          grade,
          weight: 1,
        },
        notMissed: trueChances(dog, askedM, place, day).notMissed,
      });
      if (isClimber) distanceM = grade === 'good' ? askedM * 1.5 : grade === 'fair' ? askedM : askedM / 1.5;
      else distanceM = nearReach(dog, dice);
    }
    afterSession(dog);
  });
  return { dog: before, legs };
}

function nearReach(dog: ReachDog, dice: Dice): number {
  return dog.reachM * Math.exp(-0.4 + 0.4 * dice.normal());
}

/** Sessions on a ground that stand for each word: none for a new one, a few for one that is known. */
const SESSIONS_THERE = { home: null, known: 3, new: 0 } as const;

/**
 * Logits by which a statement moves the prior ability of a dog and skill that nothing is known of: `K (z - m)`, with m and V mean and
 * variance of the ability before, `K = V/(V + errorSd^2)`, and `z = stoodAt + sum_j w_j x_j` what the stated distance on that ground needs.
 */
export function startOf({ farthestM, place }: Told, { errorSd, stoodAt }: Start): number {
  const { weightMean, kennelAbilitySd, dogAbilitySd, generalSd, abilityMean } = shippedPriors;
  const context = { ...EASY_CONTEXT, earlierSessionsOnGround: SESSIONS_THERE[place] };
  const x = demandVector('stop', { distanceM: farthestM }, context);
  // Nearer than the easy end: no distance is as far as log-odds of two less.
  const short = 2 * Math.max(0, 1 - farthestM / 5);
  const z = stoodAt - short + weightMean.distance * x[0]! + weightMean.newness * x[15]!;
  const variance = kennelAbilitySd ** 2 + dogAbilitySd ** 2 + generalSd ** 2;
  return (variance / (variance + errorSd ** 2)) * (z - abilityMean);
}

/** What the engine states of a leg with nothing told, and the share of a start that would be left by then. */
export interface PlainLeg {
  readonly grade: LegResult['grade'];
  readonly trueNotMissed: number;
  readonly eta: { readonly mean: number; readonly variance: number };
  readonly gap: { readonly mean: number; readonly variance: number };
  readonly left: number;
}

/** The engine through the legs of one dog. What share of a start is left is the same whatever was told. */
export function plainLegs(legs: readonly FirstLeg[]): PlainLeg[] {
  const silent = createAbilityFilter();
  const told = createAbilityFilter();
  told.tell('dog', 'stop', 0, { farthestM: 20, ground: null, ageMonths: null });
  return legs.map(({ leg, notMissed }) => {
    const gap = silent.gap(leg.dog);
    const left = told.toldLeft(leg.dog, leg.skill) ?? 0;
    told.observe(leg);
    const { mean, sd } = silent.observe(leg).logOdds;
    return {
      grade: leg.grade,
      trueNotMissed: notMissed,
      eta: { mean, variance: sd ** 2 },
      gap: { mean: gap.mean, variance: gap.sd ** 2 },
      left,
    };
  });
}

export interface StatedFirst {
  readonly logLoss: number;
  readonly isHeld: boolean;
  readonly notMissed: number;
}

/** What is stated of each leg with a start of so many logits, in nats, and whether its interval holds the true chance. */
export function statedFirst(legs: readonly PlainLeg[], logit: number): StatedFirst[] {
  return legs.map(({ grade, trueNotMissed, eta, gap, left }) => {
    const { chance, interval90 } = statedChances({ ...eta, mean: eta.mean + logit * left }, gap);
    const [low, high] = interval90.notMissed;
    return {
      logLoss: -Math.log(chance[grade]),
      isHeld: trueNotMissed >= low && trueNotMissed <= high,
      notMissed: 1 - chance.missed,
    };
  });
}

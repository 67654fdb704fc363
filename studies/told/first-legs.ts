import {
  type AbilityPriors,
  createAbilityFilter,
  demandVector,
  EASY_CONTEXT,
  type LegResult,
  shippedPriors,
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
  /** Variance that the dog's ability gains by having been told of. */
  readonly widened: number;
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

/** The priors of a kennel of one dog of which something was told: with one dog and one skill, a shifted mean is a shifted dog. */
export function toldPriors(logit: number, { widened }: Start): AbilityPriors {
  const dogAbilitySd = Math.sqrt(shippedPriors.dogAbilitySd ** 2 + widened);
  return { ...shippedPriors, abilityMean: shippedPriors.abilityMean + logit, dogAbilitySd };
}

export interface StatedFirst {
  readonly logLoss: number;
  readonly isHeld: boolean;
  readonly notMissed: number;
}

/** What the engine states of each leg before it, in nats, and whether its interval holds the true chance. */
export function statedFirst(legs: readonly FirstLeg[], priors: AbilityPriors): StatedFirst[] {
  const filter = createAbilityFilter(priors);
  return legs.map(({ leg, notMissed }) => {
    const { chance, interval90 } = filter.observe(leg);
    const [low, high] = interval90.notMissed;
    return {
      logLoss: -Math.log(chance[leg.grade]),
      isHeld: notMissed >= low && notMissed <= high,
      notMissed: 1 - chance.missed,
    };
  });
}

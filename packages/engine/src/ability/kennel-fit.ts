import { createAbilityFilter } from './filter.ts';
import type { LegResult } from './leg.ts';
import { prepareLegs } from './leg-reading.ts';
import { type AbilityPriors, shippedPriors } from './priors.ts';

/** Fewer dogs or scored legs than this say too little about what differs between dogs and days (engine design, 4). */
export const KENNEL_FIT_NEEDS = { dogs: 3, legs: 300 } as const;

/** The numbers of the priors that a kennel's own record may move. */
export const FITTED = [
  'dogAbilitySd',
  'dogWeightSd',
  'generalSd',
  'formSd',
  'oddSd',
  'abilityMean',
  'gainPerSession',
] as const satisfies readonly (keyof AbilityPriors)[];
export type FittedName = (typeof FITTED)[number];

/**
 * How far each may stray from the shipped value, one sd (our judgement, 2026): spreads by a factor of e^0.4, about 1.5, the
 * others by so much.
 */
const STRAY: Readonly<Record<FittedName, { readonly scale: 'log' | 'plain'; readonly sd: number }>> = {
  dogAbilitySd: { scale: 'log', sd: 0.4 },
  dogWeightSd: { scale: 'log', sd: 0.4 },
  generalSd: { scale: 'log', sd: 0.4 },
  formSd: { scale: 'log', sd: 0.4 },
  oddSd: { scale: 'log', sd: 0.4 },
  abilityMean: { scale: 'plain', sd: 0.5 },
  gainPerSession: { scale: 'plain', sd: 0.03 },
};

/** What a kennel's own record makes of the priors. */
export interface KennelFit {
  readonly priors: AbilityPriors;
  /** Scored legs before it, and dogs. */
  readonly legs: number;
  readonly dogs: number;
  /** Log evidence of the legs it listened to, in nats, over that of the shipped priors. */
  readonly gainNats: number;
}

export type KennelFitAnswer =
  | ({ readonly kind: 'fitted' } & KennelFit)
  | { readonly kind: 'tooFewDogs' | 'tooFewLegs'; readonly have: number; readonly need: number };

/** Evaluations of the evidence so far, and the most there can be. */
export interface FitProgress {
  readonly steps: number;
  readonly most: number;
}

/** A fit listens to the latest legs, so many: seven numbers ask for no more, and a command must not wait (our judgement, 2026). */
const MOST_LEGS = 600;
/** How far to either side each number is looked at, and how far it may stray in all, in sds: three dogs may not say more. */
const LOOK = 1;
const FARTHEST = 2;
/** The numbers are looked at one by one; together they may overshoot, so part of the way is tried too. */
const SHARES = [1, 0.6] as const;
/** Rounds of looking, and what one must have gained, in nats, for another. */
const ROUNDS = 2;
const WORTH_A_ROUND = 2;
const MOST_STEPS = 1 + ROUNDS * (2 * FITTED.length + SHARES.length);

/** A place in the search: how far each number strays, in sds; the evidence there, and that with the weak prior. */
interface Aim {
  readonly z: Float64Array;
  readonly nats: number;
  readonly value: number;
}

/** The priors, so many sds from the given ones in each fitted number. */
function strayed(priors: AbilityPriors, z: ArrayLike<number>): AbilityPriors {
  const moved: Partial<Record<FittedName, number>> = {};
  FITTED.forEach((name, i) => {
    const { scale, sd } = STRAY[name];
    moved[name] = scale === 'log' ? priors[name] * Math.exp(sd * z[i]!) : priors[name] + sd * z[i]!;
  });
  return { ...priors, ...moved };
}

/**
 * Log evidence of a record under priors, in nats: the sum of the logs of the chances stated for the grades that came,
 * each from what came strictly before it (the filter's prediction-error decomposition, DurbinKoopman2012, 7.2), a leg
 * counted by its weight. Legs in time order.
 */
export function filterEvidence(legs: readonly LegResult[], priors: AbilityPriors): number {
  const filter = createAbilityFilter(priors);
  let nats = 0;
  for (const leg of legs) {
    const { chance } = filter.observe(leg);
    if (leg.weight > 0) nats += leg.weight * Math.log(chance[leg.grade]);
  }
  return nats;
}

/**
 * Empirical Bayes for one kennel: the spreads between dogs, days and asks, the mean ability and the gain of a session that
 * make its record likeliest, under weak priors centred on the shipped values (MAP of `filterEvidence`). Legs in time
 * order, of all dogs; it listens to the latest 600. Valid for what comes after these legs: chances stated for them by its
 * outcome would know their end. Each round looks at every number to both sides, takes the tops of the parabolas, and tries
 * the whole way there and a part of it.
 * As a conversation: it yields after each evaluation, so that the caller may pause, report or leave it at that.
 */
export function* fittingKennel(
  legs: readonly LegResult[],
  priors: AbilityPriors = shippedPriors,
): Generator<FitProgress, KennelFitAnswer> {
  const scored = legs.filter(({ weight }) => weight > 0);
  const dogs = new Set(scored.map(({ dog }) => dog)).size;
  if (dogs < KENNEL_FIT_NEEDS.dogs) return { kind: 'tooFewDogs', have: dogs, need: KENNEL_FIT_NEEDS.dogs };
  if (scored.length < KENNEL_FIT_NEEDS.legs)
    return { kind: 'tooFewLegs', have: scored.length, need: KENNEL_FIT_NEEDS.legs };
  const latest = legs.slice(-MOST_LEGS);
  prepareLegs(latest);
  const shipped = filterEvidence(latest, priors);
  let best: Aim = { z: new Float64Array(FITTED.length), nats: shipped, value: shipped };
  let steps = 1;
  const tried = (anywhere: Float64Array): number => {
    const z = anywhere.map(within);
    const nats = filterEvidence(latest, strayed(priors, z));
    const value = nats - z.reduce((sum, one) => sum + (one * one) / 2, 0);
    if (value > best.value) best = { z, nats, value };
    steps += 1;
    return value;
  };
  for (let round = 0; round < ROUNDS; round++) {
    const from = best;
    const way = new Float64Array(FITTED.length);
    for (let i = 0; i < FITTED.length; i++) {
      const sides: number[] = [];
      for (const side of [-LOOK, LOOK]) {
        const beside = from.z.slice();
        beside[i]! += side;
        sides.push(tried(beside));
        yield { steps, most: MOST_STEPS };
      }
      way[i] = vertex(sides[0]!, from.value, sides[1]!);
    }
    for (const share of SHARES) {
      tried(from.z.map((z, i) => z + share * way[i]!));
      yield { steps, most: MOST_STEPS };
    }
    if (best.value - from.value < WORTH_A_ROUND) break;
  }
  const fitted = strayed(priors, best.z);
  return { kind: 'fitted', priors: fitted, legs: scored.length, dogs, gainNats: best.nats - shipped };
}

const within = (z: number): number => Math.min(FARTHEST, Math.max(-FARTHEST, z));

/**
 * Top of the parabola through the values at -LOOK, 0 and LOOK. The weak prior alone bends it by 1; where the
 * evidence bends it up, it counts as half of that.
 */
function vertex(below: number, here: number, above: number): number {
  const slope = (above - below) / (2 * LOOK);
  const bend = Math.max(0.5, (2 * here - above - below) / LOOK ** 2);
  return within(slope / bend);
}

/**
 * `fittingKennel` at one go. `onStep` is asked after each evaluation whether to go on; where it says no, the answer is `stopped`.
 */
export function fitKennel(
  legs: readonly LegResult[],
  onStep?: (progress: FitProgress) => boolean,
): KennelFitAnswer | { readonly kind: 'stopped' } {
  const fitting = fittingKennel(legs);
  for (;;) {
    const { done, value } = fitting.next();
    if (done === true) return value;
    if (onStep?.(value) === false) return { kind: 'stopped' };
  }
}

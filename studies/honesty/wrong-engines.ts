import { type AbilityPriors, createAbilityFilter, shippedPriors } from '@sedgeline/engine/ability';
import type { Chances } from '../careers/mind.ts';
import { fromTwoCuts } from './contestants/two-cuts.ts';
import type { JudgedLeg, Stated } from './judged-leg.ts';
import type { ReplayedCareer } from './replayed-career.ts';

/** Someone who states chances from a replayed career, each leg's from what came before it (but for the one who peeks). */
export type Stater = (career: ReplayedCareer) => readonly Stated[];

const logitOf = (chance: number) => Math.log(chance / (1 - chance));
const fromLogit = (logit: number) => 1 / (1 + Math.exp(-logit));

/** The bare filter over the same legs with other priors: nothing fitted to the kennel, nothing recalibrated. */
export const withPriors =
  (change: Partial<AbilityPriors>): Stater =>
  ({ stated }) => {
    const filter = createAbilityFilter({ ...shippedPriors, ...change });
    return stated.map(({ result }) => filter.observe(result));
  };

/** The priors alone, never learning. */
export const priorAlone: Stater = ({ stated }) => {
  const filter = createAbilityFilter();
  return stated.map(({ result }) => filter.forecast(result));
};

/** What nobody can do better than: stating the true chances. */
export const truthItself: Stater = ({ legs }) => legs.map(({ truth }) => ({ chance: truth }));

const noCost = Object.fromEntries(
  Object.keys(shippedPriors.weightMean).map((name) => [name, 0]),
) as AbilityPriors['weightMean'];
const middle = ([low, high]: readonly [number, number]) => (logitOf(low) + logitOf(high)) / 2;

const bent =
  (bend: (stated: Stated, leg: JudgedLeg) => Stated): Stater =>
  ({ engine, legs }) =>
    engine.map((stated, n) => bend(stated, legs[n]!));

function narrowed([low, high]: readonly [number, number]): readonly [number, number] {
  const [a, b] = [logitOf(low), logitOf(high)];
  return [fromLogit((a + b) / 2 - (b - a) / 4), fromLogit((a + b) / 2 + (b - a) / 4)];
}

function towards({ missed, fair, good }: Chances, grade: keyof Chances): Chances {
  const hint = { missed: 0.9 * missed, fair: 0.9 * fair, good: 0.9 * good };
  hint[grade] += 0.1;
  return hint;
}

/** Engines that are wrong on purpose, each in one way: every one must be found out. */
export const WRONG_ENGINES: Readonly<Record<string, Stater>> = {
  'gap fixed at 2': withPriors({ gapCentre: 2, gapCentreSd: 0.01, gapDogSd: 0.01 }),
  'blind to the ask': withPriors({ weightMean: noCost, kennelWeightSd: 0.01, dogWeightSd: 0.01 }),
  'intervals half as wide': bent(({ chance, interval90 }) =>
    interval90 === undefined
      ? { chance }
      : {
          chance,
          interval90: { good: narrowed(interval90.good), notMissed: narrowed(interval90.notMissed) },
        },
  ),
  'all dogs are one dog': withPriors({
    dogAbilitySd: 0.01,
    dogWeightSd: 0.01,
    generalSd: 0.01,
    formSd: 0.01,
  }),
  'too sure by half': bent(({ chance, interval90 }) => ({
    chance: fromTwoCuts(1.5 * logitOf(1 - chance.missed), 1.5 * logitOf(chance.good)),
    ...(interval90 === undefined ? {} : { interval90 }),
  })),
  'never learns': priorAlone,
  peeks: bent(({ chance, interval90 }, { grade }) => ({
    chance: towards(chance, grade),
    ...(interval90 === undefined ? {} : { interval90 }),
  })),
};

/** Wrong too, but so little that it takes the long form's legs to tell. */
export const SLIGHTLY_WRONG_ENGINES: Readonly<Record<string, Stater>> = {
  'plugs the mean in': bent(({ chance, interval90 }) =>
    interval90 === undefined
      ? { chance }
      : { chance: fromTwoCuts(middle(interval90.notMissed), middle(interval90.good)), interval90 },
  ),
};

/** Engines that lack one thing each: poorer, but not always so much that a criterion tells. Printed beside. */
export const LESSER_ENGINES: Readonly<Record<string, Stater>> = {
  'nothing fitted, nothing recalibrated': withPriors({}),
  'costs of the ask from zero': withPriors({ weightMean: noCost, kennelWeightSd: 0.5 }),
  'no form of the day': withPriors({ formSd: 0.01 }),
  'nothing odd': withPriors({ oddSd: 0.01 }),
  'no gain, no walk': withPriors({
    gainPerSession: 0,
    abilityWalkPerDay: 0,
    weightWalkPerDay: 0,
    generalWalkPerDay: 0,
  }),
};

import type { Career, MechanismName } from '../careers/career.ts';
import { elo } from './contestants/elo.ts';
import { bestLogistic, performanceFactors, pooledLogistic } from './contestants/logistic-contestants.ts';
import { alwaysAverage, recentAverage, sameAsLastTime } from './contestants/running-shares.ts';
import type { Contestant, JudgedLeg } from './judged-leg.ts';
import { type ReplayedCareer, replayCareer } from './replayed-career.ts';
import { Tally } from './tally.ts';
import type { Stater } from './wrong-engines.ts';

/** Which legs a figure is of. */
const SLICES = {
  'all legs': () => true,
  "a dog's first ten legs": ({ earlier }: JudgedLeg) => earlier < 10,
  'first ten legs at a skill': ({ earlierAtSkill }: JudgedLeg) => earlierAtSkill < 10,
  'first try of a new ask': ({ isNewAsk }: JudgedLeg) => isNewAsk,
  "a dog's first rep": ({ rep }: JudgedLeg) => rep === 0,
} as const;
export type Slice = keyof typeof SLICES;
export const SLICE_NAMES = Object.keys(SLICES) as Slice[];

/** The baselines; their chances are stated from earlier legs of the kennel alone. */
export const BASELINES: Readonly<Record<string, () => Contestant>> = {
  'always-average': alwaysAverage,
  'recent-average': recentAverage,
  'same-as-last-time': sameAsLastTime,
  'Elo with demands': elo,
  'performance factors': performanceFactors,
  'best logistic regression': bestLogistic,
  'pooled logistic regression': pooledLogistic,
};

/** Sums of one kennel, of each contestant in each slice. */
export interface KennelTallies {
  readonly mechanism: MechanismName;
  readonly of: ReadonlyMap<string, Readonly<Record<Slice, Tally>>>;
}

function playedBy(contestant: Contestant): Stater {
  return ({ legs }) =>
    legs.map((leg) => {
      const chance = contestant.states(leg);
      if (leg.weight > 0) contestant.learns(leg);
      return { chance };
    });
}

function talliesOf(replayed: ReplayedCareer, stater: Stater): Record<Slice, Tally> {
  const stated = stater(replayed);
  const tallies = Object.fromEntries(SLICE_NAMES.map((slice) => [slice, new Tally()])) as Record<
    Slice,
    Tally
  >;
  replayed.legs.forEach((leg, n) => {
    if (leg.weight === 0) return;
    for (const slice of SLICE_NAMES) if (SLICES[slice](leg)) tallies[slice].add(leg, stated[n]!);
  });
  return tallies;
}

/** Replays a career through the program, the baselines and whoever else is to be judged; legs of weight 0 are not scored. */
export function judgeCareer(career: Career, others: Readonly<Record<string, Stater>>): KennelTallies {
  const replayed = replayCareer(career);
  const of = new Map<string, Record<Slice, Tally>>();
  of.set(
    'the engine',
    talliesOf(replayed, ({ engine }) => engine),
  );
  for (const [name, made] of Object.entries(BASELINES)) of.set(name, talliesOf(replayed, playedBy(made())));
  for (const [name, stater] of Object.entries(others)) of.set(name, talliesOf(replayed, stater));
  return { mechanism: career.spec.mechanism, of };
}

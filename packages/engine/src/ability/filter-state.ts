import { SKILLS } from './ask.ts';
import { DEMANDS } from './demands.ts';
import type { GapState } from './gap-learner.ts';
import { copyBlock, type GaussianBlock, independentBlock } from './gaussian-block.ts';
import type { Moments } from './ordinal-update.ts';
import type { AbilityPriors } from './priors.ts';
import type { ToldStart } from './told-level.ts';

/** Length of h: ability, then the weights of the demands. */
export const WIDTH = DEMANDS.length + 1;

/** One dog's departure from its kennel at one skill. */
export interface SkillState extends GaussianBlock {
  /** When the block last learned; the walk is counted from here. */
  atMs: number;
  /** Sessions whose gain is already in the mean. */
  gained: number;
  /** Session whose gain waits for a later session to begin, or null. */
  waiting: string | null;
}

/** Form of one day, and which skills were worked in it (bit k = SKILLS[k]). */
export interface FormState extends Moments {
  worked: number;
}

export interface DogState {
  readonly general: Moments;
  generalAtMs: number;
  readonly skills: (SkillState | null)[];
  readonly gap: GapState;
  readonly form: Map<string, FormState>;
  /** What is odd about an exact ask, by `oddKey`. */
  readonly odd: Map<string, Moments>;
}

/** The whole of what the filter knows; plain data, fit for structured cloning. */
export interface FilterState {
  readonly kennel: GaussianBlock[];
  readonly gapTotal: Float64Array;
  readonly dogs: Map<string, DogState>;
  /** What was told of each dog, skill by skill; dogs of which nothing was have no entry. */
  readonly told: Map<string, (ToldStart | null)[]>;
}

/** h'b of the kennel before any record: mean ability and mean weights. */
export function priorKennelMean(priors: AbilityPriors): Float64Array {
  return Float64Array.from([priors.abilityMean, ...DEMANDS.map((name) => priors.weightMean[name])]);
}

export function newFilterState(priors: AbilityPriors, gapTotal: Float64Array): FilterState {
  const mean = priorKennelMean(priors);
  const kennel = SKILLS.map(() =>
    independentBlock(mean, priors.kennelAbilitySd ** 2, priors.kennelWeightSd ** 2),
  );
  return { kennel, gapTotal, dogs: new Map(), told: new Map() };
}

export function newSkillState(priors: AbilityPriors, atMs: number): SkillState {
  const block = independentBlock(new Float64Array(WIDTH), priors.dogAbilitySd ** 2, priors.dogWeightSd ** 2);
  return { ...block, atMs, gained: 0, waiting: null };
}

export function newDogState(priors: AbilityPriors, gap: GapState, atMs: number): DogState {
  return {
    general: { mean: 0, variance: priors.generalSd ** 2 },
    generalAtMs: atMs,
    skills: SKILLS.map(() => null),
    gap,
    form: new Map(),
    odd: new Map(),
  };
}

function copyDog(dog: DogState): DogState {
  const copyAll = <T extends object>(map: Map<string, T>) =>
    new Map([...map].map(([key, value]) => [key, { ...value }] as const));
  return {
    general: { ...dog.general },
    generalAtMs: dog.generalAtMs,
    skills: dog.skills.map((s) => (s === null ? null : { ...s, ...copyBlock(s) })),
    gap: {
      likelihood: dog.gap.likelihood.slice(),
      logOfCentre: dog.gap.logOfCentre.slice(),
      weights: dog.gap.weights.slice(),
    },
    form: copyAll(dog.form),
    odd: copyAll(dog.odd),
  };
}

/** A deep copy that shares nothing with the original. */
export function copyFilterState(state: FilterState): FilterState {
  return {
    kennel: state.kennel.map(copyBlock),
    gapTotal: state.gapTotal.slice(),
    dogs: new Map([...state.dogs].map(([name, dog]) => [name, copyDog(dog)] as const)),
    told: new Map(
      [...state.told].map(([name, starts]) => [name, starts.map((start) => start && { ...start })] as const),
    ),
  };
}

/** A normal prior. */
export interface NormalPrior {
  readonly mean: number;
  readonly sd: number;
}

/** How an effect in logits is looked for. */
export interface EffectSize {
  /** The pattern is claimed only of an effect larger than this. */
  readonly matters: number;
  /** Dogs that have not the pattern: as the general run of dogs, give or take. */
  readonly ordinary: NormalPrior;
  /** Dogs that may have it, by how much is not known. */
  readonly wide: NormalPrior;
  /** Fewest legs on either side of what is compared. */
  readonly need: number;
  /** Before any record. */
  readonly priorChance: number;
}

/** How a share is looked for: Beta priors with their two counts. */
export interface ShareSize {
  readonly matters: number;
  readonly ordinary: readonly [number, number];
  readonly wide: readonly [number, number];
  readonly need: number;
}

/** Prior odds of a pattern are 1 to 9; of a weaker side 1 to 4, since many dogs have one (our judgement, 2026). */
export const PRIOR_CHANCE = 0.1;
const PRIOR_CHANCE_OF_A_SIDE = 0.2;

/**
 * The one table of sizes: all our judgement, 2026 (common practice, no source). Logits unless said; 1 logit takes a leg from 85
 * in 100 to 68, or from 70 to 46. What a handler would want to be told of is about 1 logit between the sides, 1.5 at a wall, 1.5
 * on new ground beside the general run, 1 for four tired reps, 1 clean send in 4, 3 stops in 10, 1 step up in 4: a pattern
 * is claimed past half way, in logits, from the general run of dogs to that.
 */
export const SIZES = {
  /** theta_left - theta_right at equal asks, either way. */
  'one-sided': {
    matters: 0.5,
    ordinary: { mean: 0, sd: 0.1 },
    wide: { mean: 0, sd: 1.5 },
    need: 10,
    priorChance: PRIOR_CHANCE_OF_A_SIDE,
  },
  /** What wholly new ground costs; 0.5 is the general run. */
  'only-at-home': {
    matters: 1.1,
    ordinary: { mean: 0.5, sd: 0.15 },
    wide: { mean: 1.5, sd: 1 },
    need: 10,
    priorChance: PRIOR_CHANCE,
  },
  /** Step down at a distance, over and above what each doubling costs. */
  'distance-wall': {
    matters: 0.8,
    ordinary: { mean: 0, sd: 0.2 },
    wide: { mean: 1.5, sd: 1.5 },
    need: 15,
    priorChance: PRIOR_CHANCE,
  },
  /** What four reps more cost past the eighth without a break; 0.15 is the general run. */
  'tires-late': {
    matters: 0.4,
    ordinary: { mean: 0.15, sd: 0.1 },
    wide: { mean: 1, sd: 1 },
    need: 10,
    priorChance: PRIOR_CHANCE,
  },
} as const satisfies Readonly<Record<string, EffectSize>>;

export const SHARES = {
  /** Share of stops of which the handler said: my whistle. */
  'late-whistle': { matters: 0.12, ordinary: [1, 24], wide: [1, 3], need: 12 },
  /** Share of steps up that were too big. */
  'too-big-steps': { matters: 0.15, ordinary: [1, 19], wide: [1, 2], need: 12 },
} as const satisfies Readonly<Record<string, ShareSize>>;

/** How expectation of the whistle is looked for: chance on a clean send where one send in three is clean. */
export const EXPECTATION = {
  matters: 0.085,
  ordinary: { intercept: { mean: -4, sd: 0.7 }, slope: { mean: 0.5, sd: 0.5 } },
  wide: { intercept: { mean: -3.5, sd: 1 }, slope: { mean: 3, sd: 1.5 } },
  need: 15,
  /** Common practice, no source. */
  usualClean: 1 / 3,
} as const;

/** A step up is too big past this many logits at the shipped weights. */
export const TOO_BIG_STRETCH = 1.2;

import type { Skill } from '@sedgeline/engine/ability';
import type { Chances } from '../careers/mind.ts';

/** A leg of a career as a contestant meets it, with the truth that only the judge sees. */
export interface JudgedLeg {
  readonly dog: string;
  readonly skill: Skill;
  /** The 21 demands of the ask and the moment, as the engine reads them: every contestant may use them. */
  readonly demands: Float64Array;
  readonly grade: 'missed' | 'fair' | 'good';
  /** 0: held against nobody; not scored and not learnt from. */
  readonly weight: number;
  readonly truth: Chances;
  /** Scored legs of this dog before, in all and at the skill. */
  readonly earlier: number;
  readonly earlierAtSkill: number;
  /** This dog never did this very ask at this skill (the wind apart). */
  readonly isNewAsk: boolean;
  /** Place of the rep among the dog's, from 0. */
  readonly rep: number;
}

export interface Stated {
  readonly chance: Chances;
  /** 5 % and 95 % quantiles, where the contestant states any. */
  readonly interval90?: {
    readonly good: readonly [number, number];
    readonly notMissed: readonly [number, number];
  };
}

/** Whoever states chances from what came strictly before. */
export interface Contestant {
  states(leg: JudgedLeg): Chances;
  /** Only legs that are scored. */
  learns(leg: JudgedLeg): void;
}

import type { Ask, Grade, Interval90, Skill } from '@sedgeline/engine/ability';
import type { Cause } from '../record/training-record.ts';

/** A chance of good, 0..1, with its [5 %, 95 %] interval. */
export interface ChanceOfGood {
  readonly chance: number;
  readonly interval90: Interval90;
}

/** Legs counted by grade; what is not held against the dog stands in `excused` alone. */
export interface LegCounts {
  readonly good: number;
  readonly fair: number;
  readonly missed: number;
  readonly excused: number;
}

/** One session in which the skill was worked. The chances are of good at the skill's usual ask, asked fresh that day. */
export interface ProgressPoint {
  readonly session: string;
  /** Moment of the skill's last leg in it, milliseconds since 1970 UTC. */
  readonly atMs: number;
  readonly counts: LegCounts;
  /** As known at the end of that session. */
  readonly filtered: ChanceOfGood;
  /** As known now, looking back with everything that came after. */
  readonly smoothed: ChanceOfGood;
}

/** A leg as a dot: how it went, at the chance of good that was stated before it. */
export interface ProgressLeg {
  readonly rep: string;
  readonly session: string;
  readonly atMs: number;
  readonly grade: Grade;
  readonly cause: Cause | null;
  /** 0 where it is not held against the dog. */
  readonly weight: number;
  readonly chance: number;
}

/** One dog's way at one skill. */
export interface ProgressView {
  readonly dog: string;
  readonly name: string;
  readonly skill: Skill;
  /** The usual ask, at which the chances are stated. */
  readonly ask: Ask;
  /** Fewer than 10 legs: "not known yet". */
  readonly known: boolean;
  /** Oldest first. */
  readonly points: readonly ProgressPoint[];
  readonly legs: readonly ProgressLeg[];
}

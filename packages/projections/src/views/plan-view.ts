import type { Interval90, Skill } from '@sedgeline/engine/ability';
import type { RepPicture } from '@sedgeline/engine/ground';
import type { Plan, PlannedRep, PlanRequest } from '@sedgeline/engine/session';

/** One rep of a plan as its card shows it. */
export interface PlanCard {
  readonly rep: PlannedRep;
  readonly picture: RepPicture;
  /** Chance that no leg of it is missed, asked in its place, the day's form shared by its legs. */
  readonly noneMissed: number;
  readonly interval90: Interval90;
}

/** The figures that stand over a plan. */
export interface PlanStrip {
  readonly minutes: { readonly p50: number; readonly p90: number; readonly of: number };
  /** Numbers of the reps after which a break is taken. */
  readonly breaksAfter: readonly number[];
  /** Reps with a cast to the left and to the right. */
  readonly casts: { readonly left: number; readonly right: number };
  /** The side that the plan calls the weaker one. */
  readonly weaker: 'left' | 'right' | null;
  readonly sends: { readonly clean: number; readonly all: number };
  readonly cleanShareWanted: number;
  /** Where the stops come: metres out and shares of the way, each as often as it comes; no figure where the ask has none. */
  readonly stops: {
    readonly count: number;
    readonly distancesM: readonly number[];
    readonly ways: readonly number[];
  };
  /** The leg that asks most beyond what went well, in logits; `stretch` null where nothing went well before. */
  readonly most: { readonly n: number; readonly skill: Skill; readonly stretch: number | null } | null;
}

/** A plan as the screen shows it. */
export interface PlanView {
  readonly dog: string;
  readonly dogName: string;
  /** `null` where no ground is told, or one that is not on record yet. */
  readonly groundName: string | null;
  readonly atMs: number;
  /** What it was planned for: planning this again gives this plan. */
  readonly request: PlanRequest;
  readonly plan: Plan;
  readonly cards: readonly PlanCard[];
  readonly strip: PlanStrip;
}

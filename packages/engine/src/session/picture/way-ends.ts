import type { Goal, PlanePoint } from '../../ground/index.ts';
import { chainGoals } from './goals.ts';
import type { LaidLeg } from './laid-leg.ts';

/** What lies at the end of one way. */
export interface WayEnd {
  readonly at: PlanePoint;
  /** What the leg that goes there calls it; `null` where it does not say. */
  readonly goal: Goal | null;
  /** A dummy is picked up here, or lies here to draw the dog; a post may stand beside it. */
  readonly hasDummy: boolean;
  readonly thrown: boolean;
}

/** The ways of a chain: the leg that takes the dog out, the leg that casts it, and where the two end. */
export interface Ways {
  readonly wayOut: LaidLeg | undefined;
  readonly outAt: PlanePoint;
  readonly cast: LaidLeg | undefined;
  readonly castTo: PlanePoint | null;
  readonly picksUp: boolean;
}

/**
 * What lies at the end of the last way (`asked`), and at the end of a way out from which the dog is cast elsewhere
 * (`passed`); `null` for nothing. A cast that does not say what it goes to goes to a dummy where the line was drawn on
 * by one (our judgement, 2026).
 */
export function wayEnds({ wayOut, outAt, cast, castTo, picksUp }: Ways): {
  readonly asked: WayEnd | null;
  readonly passed: WayEnd | null;
} {
  const { out, cast: its, isShared } = chainGoals(wayOut, cast);
  if (castTo === null) return { asked: wayOut ? wayEnd(outAt, out, wayOut, picksUp) : null, passed: null };
  const isDrawnOn = out !== null && out !== 'post';
  return {
    asked: wayEnd(castTo, its, cast, picksUp || isDrawnOn),
    passed: isShared || out === null ? null : wayEnd(outAt, out, wayOut, false),
  };
}

function wayEnd(
  at: PlanePoint,
  goal: Goal | null,
  leg: LaidLeg | undefined,
  isDummyLaid: boolean,
): WayEnd | null {
  const draw = leg?.ask.temptation ?? 'none';
  const hasDummy = isDummyLaid || (goal !== 'post' && (goal !== null || draw !== 'none'));
  const wasThrown = draw === 'thrown-dummy' || draw === 'shot-and-dummy';
  const thrown = goal === 'mark' || (goal === null && wasThrown);
  return hasDummy || goal === 'post' ? { at, goal, hasDummy, thrown } : null;
}

import type { Skill } from '@sedgeline/engine/ability';
import type { WantedCall } from '@sedgeline/engine/sound';

/** A leg that was graded, and when. */
export interface TappedLeg {
  readonly skill: Skill;
  readonly tappedAtS: number;
}

/** A call that a leg should have had; a click belongs to the rep and to no leg. */
export interface LegWant extends WantedCall {
  readonly leg: number | null;
}

/** What is whistled for: a long blast for a stop, pips for a recall (common practice, no source). */
const CALLS: Readonly<Partial<Record<Skill, WantedCall['kind']>>> = { stop: 'long', recall: 'pips' };

/** How long a leg takes from its cue to its outcome, and its spread, seconds (our judgement, 2026). */
const LASTS: Readonly<Record<Skill, readonly [number, number]>> = {
  steady: [5, 4],
  line: [7, 4],
  stop: [2.5, 1.5],
  'cast-left': [5, 3],
  'cast-right': [5, 3],
  'cast-back': [5, 3],
  hunt: [15, 12],
  mark: [10, 6],
  pickup: [10, 7],
  delivery: [11, 6],
  recall: [11, 6],
  heel: [15, 10],
  leave: [5, 4],
};
/** Grades that came within this of each other were one tap, or one look at the phone. */
const ONE_LOOK_S = 3;

/**
 * The calls that a rep should have had, in the order of its legs: each leg's own time, and that of the legs which were graded in one
 * go with it, lie between the whistle and the tap. `clicked`: it was marked with a clicker at its end.
 */
export function wantedCalls(legs: readonly TappedLeg[], clicked: boolean): readonly LegWant[] {
  const wants = legs.flatMap(({ skill, tappedAtS }, leg): LegWant[] => {
    const kind = CALLS[skill];
    if (kind === undefined) return [];
    let [lagS, square] = [LASTS[skill][0], LASTS[skill][1] ** 2];
    let atS = tappedAtS;
    for (const later of legs.slice(leg + 1)) {
      if (later.tappedAtS - atS > ONE_LOOK_S) break;
      atS = later.tappedAtS;
      lagS += LASTS[later.skill][0];
      square += LASTS[later.skill][1] ** 2;
    }
    const lagSpreadS = Math.sqrt(square);
    return [{ leg, kind, tappedAtS, lagS, lagSpreadS, cueTappedAtS: cueTap(legs, leg) }];
  });
  const last = legs.at(-1);
  if (!clicked || last === undefined) return wants;
  const click = { leg: null, kind: 'click', lagS: 4, lagSpreadS: 4, cueTappedAtS: null } as const;
  return [...wants, { ...click, tappedAtS: last.tappedAtS }];
}

/** A stop is what ends the leg before it: when that was graded, where it was looked at by itself. */
function cueTap(legs: readonly TappedLeg[], leg: number): number | null {
  const [ended, stop] = [legs[leg - 1], legs[leg]];
  if (ended === undefined || stop?.skill !== 'stop') return null;
  return stop.tappedAtS - ended.tappedAtS > ONE_LOOK_S ? ended.tappedAtS : null;
}

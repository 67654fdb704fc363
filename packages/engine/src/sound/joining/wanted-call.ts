import { normalCdf } from '../../numeric/index.ts';
import type { CallKind } from './sound-calls.ts';

/** A call that a rep should have had, by what was tapped. */
export interface WantedCall {
  readonly kind: 'long' | 'pips' | 'click';
  /** When its leg was graded, seconds by the clock of the taps. */
  readonly tappedAtS: number;
  /** How long before that tap the call is expected, and how far that may be off (one standard deviation), thumb apart. */
  readonly lagS: number;
  readonly lagSpreadS: number;
  /** When the leg that this call ended was graded, where that was looked at by itself; else `null`. Two taps tell more than one. */
  readonly cueTappedAtS: number | null;
}

/** A leg is over where the call ends it, and its grade is the thumb's alone, within this (one standard deviation; our judgement, 2026). */
const CUE_SPREAD_S = 1.5;
export const cueSpreadOf = (thumbS: number): number => Math.hypot(thumbS, CUE_SPREAD_S);

/** Share of the calls of a kind that an ear gives at all (our judgement, 2026): a run of pips is there when one of them is. */
const HEARD: Readonly<Record<WantedCall['kind'], number>> = { long: 0.9, pips: 0.9, click: 0.6 };

/** What a call that was blown is taken to be by the ear (our judgement, 2026). */
const TAKEN_FOR: Readonly<Record<WantedCall['kind'], Readonly<Record<CallKind, number>>>> = {
  long: { long: 0.93, pip: 0.06, pips: 0.01, click: 0 },
  pips: { long: 0.03, pip: 0.12, pips: 0.85, click: 0 },
  click: { long: 0, pip: 0, pips: 0, click: 1 },
};

/** Probability that a call that was wanted is heard, and as this kind. */
export const heardAs = (wanted: WantedCall['kind'], kind: CallKind): number =>
  HEARD[wanted] * TAKEN_FOR[wanted][kind];

/** How far a call may lie from where it is expected by law (one standard deviation), thumb and leg taken together, seconds. */
export const spreadOf = (want: WantedCall, thumbS: number): number => Math.hypot(thumbS, want.lagSpreadS);

/** Probability that a want has no call in the sound: lost by the ear, or before it began, or after it ended. */
export function missOf(want: WantedCall, lengthS: number, shiftS: number, thumbS: number): number {
  const spreadS = spreadOf(want, thumbS) + 1;
  const expectedS = want.tappedAtS - want.lagS - shiftS;
  return 1 - HEARD[want.kind] * (below(expectedS / spreadS) - below((expectedS - lengthS) / spreadS));
}

/** Beyond nine spreads the law is nought or one to the last place of a double (under 1.2e-19), and is not worked out. */
const FAR = 9;
const below = (z: number): number => (z > FAR ? 1 : z < -FAR ? 0 : normalCdf(z));

import { normalCdf, normalDensity } from '../../numeric/index.ts';
import type { CallKind, SoundCall } from './sound-calls.ts';

/** A call that a rep should have had, by what was tapped. */
export interface WantedCall {
  readonly kind: 'long' | 'pips' | 'click';
  /** When its leg was graded, seconds by the clock of the taps. */
  readonly tappedAtS: number;
  /** How long before that tap the call is expected, and how far that may be off (one standard deviation), thumb apart. */
  readonly lagS: number;
  readonly lagSpreadS: number;
}

/** Share of the calls of a kind that an ear gives at all (our judgement, 2026; blasts near those of docs/sound-study.md). */
const HEARD: Readonly<Record<WantedCall['kind'], number>> = { long: 0.9, pips: 0.75, click: 0.6 };

/** What a call that was blown is taken to be by the ear (our judgement, 2026). */
const TAKEN_FOR: Readonly<Record<WantedCall['kind'], Readonly<Record<CallKind, number>>>> = {
  long: { long: 0.93, pip: 0.06, pips: 0.01, click: 0 },
  pips: { long: 0.03, pip: 0.12, pips: 0.85, click: 0 },
  click: { long: 0, pip: 0, pips: 0, click: 1 },
};

/**
 * How late a thumb is beside its usual: mostly near it, now and then much later, seldom sooner (our judgement, 2026; the study
 * joins sessions whose thumbs keep another law).
 */
const CORE = 0.86;
const LATE = { share: 0.11, meanS: 30 } as const;
const SOON = { share: 0.03, meanS: 10 } as const;

function lateness(restS: number, spreadS: number): number {
  const core = (CORE * normalDensity(restS / spreadS)) / spreadS;
  const tail = restS > 0 ? LATE : SOON;
  return core + (tail.share / tail.meanS) * Math.exp(-Math.abs(restS) / tail.meanS);
}

/** How well a call fits a want: probability of its being heard, as this kind, at this second. */
export function fitOf(want: WantedCall, call: SoundCall, shiftS: number, thumbS: number): number {
  const taken = HEARD[want.kind] * TAKEN_FOR[want.kind][call.kind];
  if (taken === 0) return 0;
  const restS = want.tappedAtS - want.lagS - shiftS - call.startS;
  return taken * lateness(restS, Math.hypot(thumbS, want.lagSpreadS));
}

/** Probability that a want has no call in the sound: lost by the ear, or before it began, or after it ended. */
export function missOf(want: WantedCall, lengthS: number, shiftS: number, thumbS: number): number {
  const spreadS = Math.hypot(thumbS, want.lagSpreadS) + 1;
  const expectedS = want.tappedAtS - want.lagS - shiftS;
  const within = normalCdf(expectedS / spreadS) - normalCdf((expectedS - lengthS) / spreadS);
  return 1 - HEARD[want.kind] * within;
}

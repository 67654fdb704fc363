import { isOwn, type OwnWhistle } from '../own-whistle.ts';
import { createClockTable } from './clock-table.ts';
import type { CallKind, SoundCall } from './sound-calls.ts';
import type { WantedCall } from './wanted-call.ts';

/** What is to be joined. */
export interface Joining {
  /** In the order in which they were called for. */
  readonly wants: readonly WantedCall[];
  /** By time. */
  readonly calls: readonly SoundCall[];
  readonly lengthS: number;
  /** When the sound begins by the clock of the taps, and how far that may be off either way; `null` where nobody knows. */
  readonly starts: { readonly atS: number; readonly withinS: number } | null;
  readonly own: OwnWhistle | null;
}

/** A call that may be the one wanted. */
export interface CallCandidate {
  /** Place in the list of calls. */
  readonly call: number;
  /** Probability that it is this call's, all clocks and thumbs that fit taken together. */
  readonly sureness: number;
}

export interface JoinedCalls {
  /** For each want the calls that it may be, the likeliest first; those under a hundredth are left out. */
  readonly wants: readonly (readonly CallCandidate[])[];
  /** What the clock of the taps shows at the beginning of the sound, the usual lateness of the thumb included: middle and one standard deviation. */
  readonly shiftS: number;
  readonly shiftSpreadS: number;
  /** More than half of the long blasts of the likeliest own pitch (two in five, where others are heard) belong to none of the wants: others blow the same whistle, and no join is sure. */
  readonly isCrowded: boolean;
}

/** A join of this sureness may be proposed unasked; the study holds it to hardly ever being wrong. */
export const SURE_FROM = 0.97;

/**
 * Clocks and thumbs are weighed by this power of their evidence: the laws are guesses, and the likeliest clock of a field full of whistles
 * is too often a wrong one. Chosen with `SURE_FROM` on made sessions of seeds 1 to 4 and 9; the page is of another.
 */
const TRUST = 0.7;

/** A thumb's own scatter is one of these, seconds, and its usual lateness some seconds (our judgement, 2026). */
const THUMBS_S = [1, 2.5, 6] as const;
/** A wider thumb is tried at every so manieth clock, and counts as often. */
const STRIDES: Readonly<Record<(typeof THUMBS_S)[number], number>> = { 1: 1, 2.5: 2, 6: 5 };
const USUAL_LATE_S = 6;
const LATER_MEAN_S = 8;
const LATEST_S = 40;
const COARSE = { thumbS: 6, stepS: 3 } as const;
const FINE_STEP_S = 0.6;
/** Clocks and pitches less likely than the best by more than e to this are let fall. */
const LET_FALL = { coarse: 18, pitch: 9 } as const;
/** Of clocks that all fit alike so many are looked at closely: none of them makes anything sure. */
const MOST_CLOCKS = 200;
const LEAST_SURENESS = 0.01;
/**
 * Of one whistle's long blasts so many may be left over before it counts as blown by others too: more where nobody else is heard, since then they
 * are the handler's own. Somebody is heard where that many long blasts an hour of other pitches are left over. Beyond these limits sure joins were wrong
 * two to four times in a hundred (made sessions of seeds 61 to 68).
 */
const LEFT_OVER = { alone: 0.5, amongOthers: 0.4, othersPerHour: 20 } as const;

/**
 * Joins calls to the reps they were blown for: sums over every pairing in order, every clock offset in bounds (a grid), three thumbs and
 * the pitches that the own whistle may have, by Bayes' rule; others' calls, echoes and false ones are taken to come evenly in time. Drift
 * of some 100 parts in a million is within the thumb's scatter. Not for calls of two handlers who tap on one phone.
 * Judged by `studies/joining.ts`, whose sessions keep other laws. Empty lists give empty answers.
 * @throws RangeError for a length that is not above nought
 */
export function joinCalls(joining: Joining): JoinedCalls {
  const { wants, calls, lengthS } = joining;
  if (!(lengthS > 0)) throw new RangeError(`lengthS: expected > 0, got ${lengthS}`);
  const nothing = wants.map(() => []);
  if (wants.length === 0 || calls.length === 0)
    return {
      wants: nothing,
      shiftS: joining.starts?.atS ?? 0,
      shiftSpreadS: joining.starts?.withinS ?? 0,
      isCrowded: false,
    };
  const bounds = shiftBounds(joining);
  const rough = createClockTable(
    joining,
    callsPerS(joining, () => 0.5),
  );
  const coarse = gridOf(bounds.fromS, bounds.toS, COARSE.stepS).flatMap((shiftS) =>
    rough.pitches.map((_, pitch) => ({
      shiftS,
      pitch,
      log: rough.logSum(shiftS, COARSE.thumbS, pitch) + bounds.logPrior(shiftS),
    })),
  );
  const best = coarse.reduce((a, b) => (b.log > a.log ? b : a));
  const kept = coarse
    .filter(({ log }) => log > best.log - LET_FALL.coarse)
    .sort((a, b) => b.log - a.log)
    .slice(0, MOST_CLOCKS);
  const pitches = rough.pitches
    .map((_, pitch) => pitch)
    .filter((pitch) => kept.some((one) => one.pitch === pitch && one.log > best.log - LET_FALL.pitch));
  const shifts = new Set(
    kept.flatMap(({ shiftS }) =>
      gridOf(shiftS - COARSE.stepS, shiftS + COARSE.stepS, FINE_STEP_S).map(
        (fine) => Math.round(fine / FINE_STEP_S) * FINE_STEP_S,
      ),
    ),
  );
  rough.logSum(best.shiftS, COARSE.thumbS, best.pitch);
  const share = new Float64Array(wants.length * calls.length);
  rough.addShares(share, 1);
  const left = calls.map((_, j) => 1 - wants.reduce((sum, __, i) => sum + share[i * calls.length + j]!, 0));
  const table = createClockTable(
    joining,
    callsPerS(joining, (call) => left[call]!),
  );
  const likeliest = rough.pitches[best.pitch] ?? null;
  const isCrowded = isAmongTheSame(joining, left, likeliest);
  return { ...weighed(joining, table, bounds, [...shifts], pitches), isCrowded };
}

function weighed(
  { wants, calls }: Joining,
  table: ReturnType<typeof createClockTable>,
  { logPrior }: ReturnType<typeof shiftBounds>,
  shifts: readonly number[],
  pitches: readonly number[],
): Omit<JoinedCalls, 'isCrowded'> {
  const share = new Float64Array(wants.length * calls.length);
  let most = Number.NEGATIVE_INFINITY;
  let [sum, sumShift, sumSquare] = [0, 0, 0];
  const origin = shifts[0] ?? 0;
  for (const shiftS of shifts) {
    for (const thumbS of THUMBS_S) {
      const stride = STRIDES[thumbS];
      if (Math.round(shiftS / FINE_STEP_S) % stride !== 0) continue;
      for (const pitch of pitches) {
        const log = TRUST * table.logSum(shiftS, thumbS, pitch) + logPrior(shiftS) + Math.log(stride);
        if (log > most) {
          const down = Math.exp(most - log);
          for (let n = 0; n < share.length; n++) share[n] = share[n]! * down;
          [sum, sumShift, sumSquare] = [sum * down, sumShift * down, sumSquare * down];
          most = log;
        }
        const weight = Math.exp(log - most);
        if (weight < 1e-12) continue;
        table.addShares(share, weight);
        const away = shiftS - origin;
        sum += weight;
        sumShift += weight * away;
        sumSquare += weight * away * away;
      }
    }
  }
  const mean = sumShift / sum;
  return {
    wants: wants.map((_, i) =>
      calls
        .map((_, call) => ({ call, sureness: Math.min(1, share[i * calls.length + call]! / sum) }))
        .filter(({ sureness }) => sureness >= LEAST_SURENESS)
        .sort((a, b) => b.sureness - a.sureness),
    ),
    shiftS: origin + mean,
    shiftSpreadS: Math.sqrt(Math.max(0, sumSquare / sum - mean * mean)),
  };
}

/** Where the beginning of the sound may lie by the clock of the taps, thumb included, and how likely each place is beforehand. */
function shiftBounds({ wants, starts, lengthS }: Joining) {
  const taps = wants.map(({ tappedAtS }) => tappedAtS);
  const lowS = starts === null ? Math.min(...taps) - lengthS : starts.atS - starts.withinS;
  const highS = starts === null ? Math.max(...taps) : starts.atS + starts.withinS;
  return {
    fromS: lowS - 2,
    toS: highS + LATEST_S,
    logPrior: (shiftS: number): number =>
      -Math.max(0, lowS - shiftS) - Math.max(0, shiftS - highS - USUAL_LATE_S) / LATER_MEAN_S,
  };
}

/** Whether others seem to blow the same whistle, by the long blasts that no want accounts for; all are taken for of it where its pitch is not known. */
function isAmongTheSame(
  { calls, lengthS }: Joining,
  left: readonly number[],
  own: OwnWhistle | null,
): boolean {
  let [his, hisLeft, othersLeft] = [0, 0, 0];
  for (const [n, { kind, pitchHz }] of calls.entries()) {
    if (kind !== 'long') continue;
    if (own === null || isOwn(own, pitchHz)) {
      his += 1;
      hisLeft += left[n]!;
    } else othersLeft += left[n]!;
  }
  const { alone, amongOthers, othersPerHour } = LEFT_OVER;
  const isHeardAlone = othersLeft < (othersPerHour * lengthS) / 3600;
  return his > 0 && hisLeft / his > (isHeardAlone ? alone : amongOthers);
}

/** How often a call of each kind comes that nobody wanted: as many as are left over, and one more. */
function callsPerS(
  { calls, lengthS }: Joining,
  leftOver: (call: number) => number,
): Record<CallKind, number> {
  const rate = (wanted: CallKind) =>
    calls.reduce((sum, { kind }, n) => (kind === wanted ? sum + leftOver(n) : sum), 1) / lengthS;
  return { long: rate('long'), pip: rate('pip'), pips: rate('pips'), click: rate('click') };
}

function gridOf(fromS: number, toS: number, stepS: number): number[] {
  return Array.from({ length: Math.ceil((toS - fromS) / stepS) + 1 }, (_, n) => fromS + n * stepS);
}

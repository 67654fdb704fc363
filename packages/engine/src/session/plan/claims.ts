import type { Heat } from '../../weather/index.ts';
import { BAND, KNOWN_CHANCE } from '../next/choose.ts';
import { sendKind, sideOfLegs, stopWay, thingsRaised } from './candidates.ts';
import type { StatedRep } from './draft.ts';
import { givesItselfAway } from './order-given-away.ts';
import { MOST_IN, suitsAge } from './plan-limits.ts';
import { RULES, type RuleName, type RuleVerdict, type RuleWhy } from './rule-verdict.ts';

/** What a finished plan is held to, in the search's own words; the judge of plans reads the plan itself instead. */
export interface Claimed {
  readonly reps: readonly StatedRep[];
  readonly minutes: number;
  readonly p50: number;
  /** Median minutes of each rep. */
  readonly repMinutes: readonly number[];
  readonly ageMonths: number | null;
  readonly heat: Heat;
  readonly cleanShare: number;
  readonly lateOrders: readonly (readonly boolean[])[];
  /** Nothing ever went well: there is nothing known to begin with. */
  readonly isNewDog: boolean;
}

const SLACK = 1e-9;
/** Work without a break is at most so long; by how much the stops' parts of the way span at least (contract). */
export const STRETCH_MOST = { reps: 12, minutes: 12 } as const;
export const WAY_SPAN = 0.25;
const LEAST_REP_MINUTES = 25 / 60;

/** What a plan says of each rule: kept, or why not. A rule that a plan has nothing to do with is kept. */
export function claimsOf(plan: Claimed): RuleVerdict[] {
  return RULES.map((rule): RuleVerdict => {
    const why = WHY[rule](plan);
    return why === null ? { rule, kept: true } : { rule, kept: false, why, couldHaveBeenKept: false };
  });
}

type Why = RuleWhy | null;
const all = (reps: readonly StatedRep[]): number[] => reps.map((_, n) => n + 1);
const where = (reps: readonly StatedRep[], is: (rep: StatedRep) => boolean): number[] =>
  all(reps).filter((n) => is(reps[n - 1]!));

const WHY: Readonly<Record<RuleName, (plan: Claimed) => Why>> = {
  'known-first': ({ reps, isNewDog }) => {
    const first = reps[0];
    if (first === undefined) return { code: 'no-reps', reps: [] };
    const isNew = first.proposal.legs.some(({ step }) => step === null);
    if (isNew || isNewDog) return { code: 'nothing-known-yet', reps: [1] };
    if (first.proposal.raised.length > 0) return { code: 'first-raises', reps: [1] };
    const is = first.proposal.least;
    return is < KNOWN_CHANCE - SLACK ? { code: 'first-not-sure', reps: [1], is, limit: KNOWN_CHANCE } : null;
  },
  'one-thing-at-a-time': ({ reps }) => {
    const too = where(reps, ({ proposal }) => thingsRaised(proposal).size > 1);
    return too.length > 0 ? { code: 'raises-too-much', reps: too } : null;
  },
  'even-sides': ({ reps }) => {
    const on = (side: 'left' | 'right') => where(reps, ({ legs }) => sideOfLegs(legs) === side).length;
    const [left, right] = [on('left'), on('right')];
    if (Math.abs(left - right) <= 1) return null;
    return { code: 'sides-uneven', reps: where(reps, ({ legs }) => sideOfLegs(legs) !== null), left, right };
  },
  'clean-runs-unpredictable': ({ reps, cleanShare, lateOrders }) => {
    const order = cleanOrder(reps);
    const isAllClean = order.every(Boolean);
    if (isAllClean || !givesItselfAway(order, cleanShare, lateOrders)) return null;
    return { code: 'order-can-be-guessed', reps: all(reps).slice(1, -1) };
  },
  'vary-where-the-stop-comes': ({ reps }) => {
    const is = waySpan(reps);
    if (is === null || is >= WAY_SPAN - SLACK) return null;
    const stops = where(reps, ({ legs }) => stopWay(legs) !== null);
    return { code: 'stops-in-one-place', reps: stops, is, limit: WAY_SPAN };
  },
  break: ({ reps, repMinutes }) => {
    const long = longestStretch(reps, repMinutes);
    if (long.reps <= STRETCH_MOST.reps && long.minutes <= STRETCH_MOST.minutes + SLACK) return null;
    return { code: 'too-long-without-break', reps: [], count: long.reps, minutes: long.minutes };
  },
  'finish-well': ({ reps }) => {
    const last = reps.at(-1);
    if (last === undefined) return { code: 'no-reps', reps: [] };
    const n = [reps.length];
    if (last.slot.role !== 'finish') return { code: 'last-is-no-finish', reps: n };
    const is = last.proposal.least;
    return is < KNOWN_CHANCE - SLACK ? { code: 'finish-not-sure', reps: n, is, limit: KNOWN_CHANCE } : null;
  },
  'fits-the-time': ({ reps, minutes, p50, repMinutes }) => {
    if (p50 > minutes + SLACK) return { code: 'over-the-time', reps: [], is: p50, limit: minutes };
    const short = all(reps).filter((n) => (repMinutes[n - 1] ?? 0) < LEAST_REP_MINUTES - SLACK);
    return short.length > 0 ? { code: 'reps-too-short', reps: short } : null;
  },
  'within-reach': ({ reps }) => {
    const out = where(reps, ({ proposal }) => proposal.least < BAND.least - SLACK);
    if (out.length === 0) return null;
    const is = Math.min(...reps.map(({ proposal }) => proposal.least));
    return { code: 'out-of-reach', reps: out, is, limit: BAND.least };
  },
  safe: ({ reps, ageMonths, heat, p50 }) => {
    const beyond = where(reps, ({ legs }) => !suitsAge(legs, ageMonths));
    if (beyond.length > 0) return { code: 'line-too-long-for-age', reps: beyond };
    const puppy = ageMonths !== null && ageMonths < MOST_IN.puppyMonths;
    if (puppy && p50 > MOST_IN.puppyMinutes + SLACK) return { code: 'too-long-for-age', reps: [], is: p50 };
    const isTooMuch = reps.length > MOST_IN.heatReps || p50 > MOST_IN.heatMinutes + SLACK;
    return heat !== 'fine' && isTooMuch ? { code: 'too-much-for-the-heat', reps: [], is: p50 } : null;
  },
};

/** Sends between the first and the last rep, `true` for one run straight through. */
export function cleanOrder(reps: readonly Pick<StatedRep, 'legs'>[]): boolean[] {
  const kinds = reps.slice(1, -1).map(({ legs }) => sendKind(legs));
  return kinds.filter((kind) => kind !== 'none').map((kind) => kind === 'clean');
}

/** By how much the parts of the way at which stops come span; `null` with fewer than three stops. */
export function waySpan(reps: readonly Pick<StatedRep, 'legs'>[]): number | null {
  const ways = reps.map(({ legs }) => stopWay(legs)).filter((way) => way !== null);
  return ways.length < 3 ? null : Math.max(...ways) - Math.min(...ways);
}

/** Most reps and most median minutes that are worked without a break. */
export function longestStretch(
  reps: readonly Pick<StatedRep, 'slot'>[],
  repMinutes: readonly number[],
): { readonly reps: number; readonly minutes: number } {
  let [count, minutes] = [0, 0];
  const longest = { reps: 0, minutes: 0 };
  for (const [n, { slot }] of reps.entries()) {
    count += 1;
    minutes += repMinutes[n] ?? 0;
    longest.reps = Math.max(longest.reps, count);
    longest.minutes = Math.max(longest.minutes, minutes);
    if (slot.takesBreak) [count, minutes] = [0, 0];
  }
  return longest;
}

import type { Random } from '../../numeric/index.ts';
import { type CastSide, cleanSends, sidesInOrder, stopPlaces } from '../order/index.ts';
import type { LaidLeg } from '../picture/laid-leg.ts';
import { type SendKind, sendKind, sideOfLegs, stopWay } from './candidates.ts';
import type { LinePool } from './line-pool.ts';
import { givesItselfAway } from './order-given-away.ts';

/** One place of a session before it is filled: what it is for, its line of work, and what the orders drew for it. */
export interface Slot {
  readonly role: 'check' | 'work' | 'finish';
  readonly line: number;
  readonly send: SendKind;
  readonly side: CastSide | null;
  /** The part of the way at which its stop is to come. */
  readonly way: number | null;
  readonly takesBreak: boolean;
  /** Nothing is raised: the ground is new, and that is the one thing, or the dog comes back from a long rest. */
  readonly holds: boolean;
  /** The handler's own rep, asked as it is: nothing else is chosen for the slot. */
  readonly fixed?: FixedRep | undefined;
}

/** A rep that is asked as it is. */
export interface FixedRep {
  readonly legs: readonly LaidLeg[];
  readonly focus: number;
}

export interface SlotWishes {
  readonly reps: number;
  readonly breaks: number;
  readonly lines: readonly LinePool[];
  readonly cleanShare: number;
  readonly lateOrders: readonly (readonly boolean[])[];
  readonly lateSides: readonly (readonly CastSide[])[];
  readonly kept: readonly (FixedRep & { readonly n: number })[];
  /** Nothing is to be raised: the ground is new, or the dog comes back from a long rest. */
  readonly holds: boolean;
  readonly random: Random;
}

/** Draws of the sends before one that gives itself away is let pass: by then it is one in a million. */
const MOST_DRAWS = 12;

/**
 * The skeleton of a session: check, then the lines of work one after another, then finish, breaks evenly between. Which sends are
 * stopped and which run straight through, which side each cast goes to and where each stop comes is drawn here, before
 * anything is chosen, so that no choice bends an order.
 */
export function drawnSlots(wishes: SlotWishes): Slot[] {
  const { reps, lines, random } = wishes;
  const count = Math.max(0, reps - 2);
  const works = drawnSends(lineOfEachRep(count, lines), wishes);
  const sided = works.filter(({ isSided }) => isSided).length;
  const sides = [...sidesInOrder({ count: sided, earlier: wishes.lateSides, random }).sides];
  const stops = works.filter(({ send }) => send === 'stopped').length;
  const ways = [...drawnWays(stops, lines, random)];
  const breakAfter = breakPlaces(reps, wishes.breaks);
  const end = (role: 'check' | 'finish', n: number): Slot => ({
    role,
    line: 0,
    send: 'none',
    side: null,
    way: null,
    takesBreak: breakAfter.has(n),
    holds: true,
  });
  const slots = works.map(
    ({ line, send, isSided }, n): Slot => ({
      role: 'work',
      line,
      send,
      side: isSided ? (sides.shift() ?? null) : null,
      way: send === 'stopped' ? (ways.shift() ?? null) : null,
      takesBreak: breakAfter.has(n + 2),
      holds: wishes.holds,
    }),
  );
  const all = [...(reps > 1 ? [end('check', 1)] : []), ...slots, ...(reps > 0 ? [end('finish', reps)] : [])];
  return withKept(all, wishes.kept);
}

/** The handler's own reps at their numbers, in their order; nearer the beginning where the session is shorter. */
function withKept(slots: readonly Slot[], kept: SlotWishes['kept']): Slot[] {
  const all = [...slots];
  let least = 0;
  for (const [k, { n, legs, focus }] of kept.entries()) {
    const place = Math.max(least, Math.min(n - 1, all.length - (kept.length - k)));
    const slot = all[place];
    if (slot === undefined) continue;
    all[place] = fixedSlot(slot, { legs, focus });
    least = place + 1;
  }
  return all;
}

/** A slot with its rep given. */
export function fixedSlot(slot: Slot, { legs, focus }: FixedRep): Slot {
  return {
    ...slot,
    send: sendKind(legs),
    side: sideOfLegs(legs),
    way: stopWay(legs),
    holds: false,
    fixed: { legs, focus },
  };
}

/** Lines by their shares, each in one block, the largest remainders rounded up. */
function lineOfEachRep(count: number, lines: readonly LinePool[]): number[] {
  const exact = lines.map(({ share }) => share * count);
  const whole = exact.map(Math.floor);
  const byRest = exact.map((_, n) => n).sort((a, b) => rest(exact[b]) - rest(exact[a]) || a - b);
  const left = count - whole.reduce((so, n) => so + n, 0);
  for (const n of byRest.slice(0, left)) whole[n] = (whole[n] ?? 0) + 1;
  return whole.flatMap((times, line) => new Array<number>(times).fill(line));
}

const rest = (value = 0): number => value - Math.floor(value);

interface DrawnWork {
  readonly line: number;
  readonly send: SendKind;
  readonly isSided: boolean;
}

/** Where sends are stopped at all, all sends of the session are one order: some lines' are clean anyway, and serve as such. */
function drawnSends(ofRep: readonly number[], wishes: SlotWishes): DrawnWork[] {
  const { lines } = wishes;
  const stopping = lines.findIndex(({ send }) => send === 'stopped');
  const isSend = (line: number) => lines[line]?.send !== 'none';
  const plain = (line: number): DrawnWork => ({
    line,
    send: lines[line]?.send ?? 'none',
    isSided: lines[line]?.isSided ?? false,
  });
  if (stopping < 0) return ofRep.map(plain);
  const order = drawnOrder(ofRep.filter(isSend).length, wishes);
  return ofRep.map((line) => {
    if (!isSend(line)) return plain(line);
    if (order.shift() === true) return { line, send: 'clean', isSided: false };
    return plain(lines[line]?.send === 'stopped' ? line : stopping);
  });
}

/** The order of clean sends, drawn again where it gives itself away as it stands. */
function drawnOrder(sends: number, { cleanShare, lateOrders, random }: SlotWishes): boolean[] {
  let order: boolean[] = [];
  for (let draw = 0; draw < MOST_DRAWS; draw++) {
    order = cleanSends({ sends: sends + 2, share: cleanShare, random }).clean.slice(1, -1);
    if (!givesItselfAway(order, cleanShare, lateOrders)) break;
  }
  return order;
}

function drawnWays(stops: number, lines: readonly LinePool[], random: Random): readonly number[] {
  const ways = lines
    .flatMap(({ candidates }) => candidates)
    .map(({ legs }) => stopWay(legs))
    .filter((way) => way !== null);
  if (ways.length === 0) return [];
  const [least, most] = [Math.min(...ways), Math.max(...ways)];
  return stopPlaces({ stops, least, most, random }).wayFractions.map((way) => Math.round(way * 100) / 100);
}

/** Numbers of the reps that a break follows: evenly among the reps, never after the last. */
function breakPlaces(reps: number, breaks: number): Set<number> {
  const places = new Set<number>();
  for (let n = 1; n <= breaks; n++) {
    const after = Math.round((n * reps) / (breaks + 1));
    if (after >= 1 && after < reps) places.add(after);
  }
  return places;
}

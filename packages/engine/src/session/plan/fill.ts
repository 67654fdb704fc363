import type { Skill } from '../../ability/index.ts';
import { easyRep } from '../next/choose.ts';
import { knownChains, type Proposal, proposed, steps } from '../next/proposal.ts';
import {
  isHeld,
  isWithinReach,
  type MayAsk,
  sendKind,
  sideOfLegs,
  stoppedAt,
  stopWay,
} from './candidates.ts';
import { type DraftRep, mayStand, type Standing, type StatedRep, standingAfter, stateRep } from './draft.ts';
import { farFromWanted, type LinePool } from './line-pool.ts';
import type { PlanRecord } from './plan-moment.ts';
import type { Slot } from './slots.ts';
import { worthOf } from './worth.ts';

/** What a plan is filled from. */
export interface Stock {
  readonly record: PlanRecord;
  readonly lines: readonly LinePool[];
  readonly mayAsk: MayAsk;
  /** How dear walking is: 1 in a session of ten minutes and more, more the shorter it is. */
  readonly hurry: number;
}

/** Candidates of a line that are stated anew for a slot, the likeliest to teach first (our judgement, 2026). */
const TRIED = 12;
/** Of them so many that may stand in the slot are weighed with all that counts. */
const JUDGED = 6;
/** So many are tried with their stop where it was drawn. */
const PLACED = 6;

/**
 * Fills the slots one after another with what is worth most in each; a slot that nothing may stand in is left out. Where they begin
 * with the very slots of a session that was filled `before`, its reps stand: the same slots after the same reps are filled alike.
 */
export function filled(stock: Stock, slots: readonly Slot[], before: readonly StatedRep[] = []): StatedRep[] {
  let at: Standing = { moment: stock.record.start, lying: [] };
  const reps: StatedRep[] = [];
  let isTurned = false;
  let isAsBefore = true;
  for (const [n, slot] of slots.entries()) {
    if (n === 1) isTurned = isUneven(reps, slots);
    const was = before[n];
    isAsBefore &&= was?.slot === slot && !isTurned;
    if (isAsBefore && was !== undefined) {
      reps.push(was);
      at = standingAfter(stock.record, was);
      continue;
    }
    const rep =
      slot.fixed === undefined
        ? bestFor(stock, isTurned ? turned(slot) : slot, at, reps)
        : stateRep(stock.record, at, { slot, ...slot.fixed, moved: null });
    if (rep === null) continue;
    reps.push(rep);
    at = standingAfter(stock.record, rep);
  }
  return reps;
}

/** Whether the first rep's own side and the sides drawn for the work would leave more than one between them. */
function isUneven(first: readonly StatedRep[], slots: readonly Slot[]): boolean {
  const drawn = slots.reduce((so, { side }) => so + (side === 'right' ? 1 : side === 'left' ? -1 : 0), 0);
  return Math.abs(rightsLessLefts(first) + drawn) > 1;
}

/** The order of sides with left and right changed about: as likely, and as hard to guess. */
function turned(slot: Slot): Slot {
  return slot.side === null ? slot : { ...slot, side: slot.side === 'left' ? 'right' : 'left' };
}

function bestFor(stock: Stock, slot: Slot, at: Standing, earlier: readonly StatedRep[]): StatedRep | null {
  const pick = (options: readonly Proposal[], isLoose: boolean) =>
    best(
      stock,
      at,
      earlier,
      options.map((one) => draftOf(slot, one, isLoose)),
    );
  if (slot.role === 'work') {
    const isOut = !stock.lines[slot.line]?.candidates.some(isWithinReach);
    const options = nearestFirst(optionsFor(stock, slot, at, earlier), slot);
    return pick(options, false) ?? (isOut ? pick(options, true) : null);
  }
  const isOpen = (one: Proposal) => stock.mayAsk(one.legs) && isSideEven(one, earlier, slot);
  const passed: Proposal[] = [];
  for (const tier of endTiers(stock, at, earlier)) {
    const open = tier().filter(isOpen);
    const sure = pick(open, false);
    if (sure !== null) return sure;
    passed.push(...open);
  }
  const isOut = !stock.lines.some(({ candidates }) => candidates.some(isWithinReach));
  return pick(passed.filter(isWithinReach), true) ?? (isOut ? pick(passed, true) : null);
}

/** By chance and place of the stop alone, which cost little to state. */
function nearestFirst(options: readonly Proposal[], { way }: Slot): Proposal[] {
  const off = ({ legs }: Proposal) => (way === null ? 0 : Math.abs((stopWay(legs) ?? way) - way));
  const cost = new Map(options.map((one) => [one, farFromWanted(one) + 4 * off(one)]));
  return [...cost.keys()].sort((a, b) => (cost.get(a) ?? 0) - (cost.get(b) ?? 0));
}

export function draftOf(slot: Slot, { legs, focus, moved }: Proposal, isLoose = false): DraftRep {
  const chain = legs.map(({ skill, ask }) => ({ skill, ask }));
  return { slot, legs: chain, focus, moved, ...(isLoose ? { isLoose } : {}) };
}

/** The rep worth most among the first few that may stand there. */
function best(
  stock: Stock,
  at: Standing,
  earlier: readonly StatedRep[],
  drafts: readonly DraftRep[],
): StatedRep | null {
  let top: StatedRep | null = null;
  let topWorth = Number.NEGATIVE_INFINITY;
  let judged = 0;
  for (const draft of drafts) {
    if (judged === JUDGED) break;
    const rep = stateRep(stock.record, at, draft);
    if (!mayStand(rep)) continue;
    judged += 1;
    const worth = worthOf(stock.record.inputAt(rep.moment), rep, earlier, stock.hurry);
    if (worth > topWorth) {
      top = rep;
      topWorth = worth;
    }
  }
  return top;
}

/** The line's own candidates of the drawn kind and side, one step on from its last build, and its stop where it was drawn. */
export function optionsFor(
  stock: Stock,
  slot: Slot,
  at: Standing,
  earlier: readonly StatedRep[],
): Proposal[] {
  const pool = stock.lines[slot.line];
  if (pool === undefined) return [];
  const input = stock.record.inputAt(at.moment);
  const fits = ({ legs }: Proposal) =>
    stock.mayAsk(legs) && sendKind(legs) === slot.send && sideOfLegs(legs) === slot.side;
  const all = slot.send === 'clean' ? cleanOnes(stock, pool) : pool.candidates;
  const own = slot.holds ? all.filter(isHeld) : all;
  const last = earlier.findLast((rep) => rep.slot.line === slot.line && rep.slot.role === 'work');
  const onward =
    last === undefined || sendKind(last.legs) !== slot.send
      ? []
      : steps(input, last.legs, last.focus, 'harder');
  const open = [...own.filter(fits).slice(0, TRIED), ...onward.filter(fits)];
  if (slot.way === null) return open;
  const way = slot.way;
  const placed = open.slice(0, PLACED).flatMap(({ legs, focus }) => {
    const moved = stoppedAt(legs, way);
    return moved === null ? [] : [proposed(input, moved, focus)];
  });
  return [...placed, ...open].filter(fits);
}

/** What may be run straight through: the line's own sends, and what other lines run clean anyway. */
function cleanOnes({ lines }: Stock, pool: LinePool): readonly Proposal[] {
  if (pool.send === 'clean') return pool.candidates;
  const others = lines.filter(({ send }) => send === 'clean').flatMap(({ candidates }) => candidates);
  return [...pool.straight.slice(0, TRIED / 2), ...others];
}

/**
 * Known things to begin and to end with: of the session's own lines, of what it has done by then, of whatever was worked
 * before, and the easy end last.
 */
export function endTiers(
  { record, lines }: Stock,
  at: Standing,
  earlier: readonly StatedRep[],
): readonly (() => Proposal[])[] {
  const input = record.inputAt(at.moment);
  const own = lines.flatMap(({ skills }) => skills);
  const chainsOf = (skills: readonly Skill[]) =>
    skills
      .flatMap((skill) => knownChains(input, skill))
      .map(({ legs, focus }) => proposed(input, legs, focus));
  return [
    () => lines.flatMap(({ known }) => known),
    () => earlier.map(({ legs, focus }) => proposed(input, legs, focus)),
    () => chainsOf(own),
    () => chainsOf(input.worked.map(({ skill }) => skill).filter((skill) => !own.includes(skill))),
    () => own.map((skill) => easyRep(input, skill)),
  ];
}

/** The side to which a session could be cast to end on something sure, where it ends on nothing sure for the sides' sake. */
export function sideOfSureEnd(stock: Stock, reps: readonly StatedRep[]): 'left' | 'right' | null {
  const last = reps.at(-1);
  if (last?.slot.role !== 'finish' || last.isLoose !== true) return null;
  const before = reps.slice(0, -1);
  const previous = before.at(-1);
  const lying = previous === undefined ? [] : previous.laid.leaves;
  const at = { moment: last.moment, lying };
  const open = endTiers(stock, at, before)
    .flatMap((tier) => tier())
    .filter(({ legs }) => stock.mayAsk(legs));
  const sure = open.find((one) => mayStand(stateRep(stock.record, at, draftOf(last.slot, one))));
  return sure === undefined ? null : sideOfLegs(sure.legs);
}

/** Sides stay within one of each other when a session ends with this; it may begin with either. */
function isSideEven({ legs }: Proposal, earlier: readonly StatedRep[], slot: Slot): boolean {
  const side = sideOfLegs(legs);
  if (side === null || slot.role === 'check') return true;
  return Math.abs(rightsLessLefts(earlier) + (side === 'right' ? 1 : -1)) <= 1;
}

/** Reps with a cast to the right less those with one to the left. */
export function rightsLessLefts(reps: readonly Pick<DraftRep, 'legs'>[]): number {
  return reps.reduce((so, { legs }) => {
    const side = sideOfLegs(legs);
    return so + (side === 'right' ? 1 : side === 'left' ? -1 : 0);
  }, 0);
}

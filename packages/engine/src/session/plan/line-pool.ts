import type { Skill } from '../../ability/index.ts';
import { logit } from '../../numeric/index.ts';
import { WANTED_CHANCE } from '../next/choose.ts';
import { type Proposal, proposed } from '../next/proposal.ts';
import type { NextInput } from '../next/session-state.ts';
import type { LaidLeg } from '../picture/laid-leg.ts';
import {
  candidatesFor,
  isHeld,
  isKnown,
  isOneThing,
  isSure,
  isWithinReach,
  type MayAsk,
  type SendKind,
  sendKind,
  sideOfLegs,
  straightOf,
} from './candidates.ts';
import { isHoldingDay } from './holding-day.ts';
import type { LineOfWork } from './lines-of-work.ts';

/** A line of work with what may be asked in it, stated for the beginning of the session, the likeliest to teach first. */
export interface LinePool extends LineOfWork {
  readonly candidates: readonly Proposal[];
  /** What is known well enough to begin and to end with, nearest to 9 in 10 first. */
  readonly known: readonly Proposal[];
  /** Its sends straight through, where it stops them. */
  readonly straight: readonly Proposal[];
  /** What most of its reps are in the order of sends, and whether they cast to a side. */
  readonly send: SendKind;
  readonly isSided: boolean;
}

/** Candidates kept for a line: beyond these nothing is ever chosen (our judgement, 2026). */
const KEPT = 24;
/** Of them so many are tried to the other side too. */
const TURNED = 12;

const KEPT_KNOWN = 8;
/** What a known thing is best asked at: sure, and not for nothing (our judgement, 2026). */
const SURE_CHANCE = 0.9;

const farFromSure = ({ least }: Proposal): number => Math.abs(logit(clamped(least)) - logit(SURE_CHANCE));

const clamped = (chance: number) => Math.min(1 - 1e-9, Math.max(1e-9, chance));

/** How far a rep's chance of not missed lies from the wanted one, in logits. */
export function farFromWanted(proposal: Pick<Proposal, 'notMissed'>, wanted: number = WANTED_CHANCE): number {
  return Math.abs(logit(clamped(proposal.notMissed)) - logit(wanted));
}

/** The candidates of a line of work; those out of reach are kept only where nothing is within it. */
export function poolOf(input: NextInput, line: LineOfWork, mayAsk: MayAsk): LinePool {
  const all = line.skills.flatMap((skill) => candidatesFor(input, skill, mayAsk));
  const own = isHoldingDay(input) ? all.filter(isHeld) : all;
  const near = own.filter(isWithinReach).toSorted((a, b) => farFromWanted(a) - farFromWanted(b));
  const teaching = firstFew(near, KEPT, isOneThing);
  const turned = teaching.slice(0, TURNED).flatMap((proposal) => mirrored(input, proposal));
  const reached = [
    ...teaching,
    ...turned.filter((proposal) => isWithinReach(proposal) && isOneThing(proposal)),
  ];
  const open = reached.length > 0 ? reached : likeliest(own.filter(isOneThing));
  const send = commonest(open.map(({ legs }) => sendKind(legs)));
  const isSided = line.skills.length > 1 || mostly(open, ({ legs }) => sideOfLegs(legs) !== null);
  const straight = send === 'stopped' ? straightOf(input, open, mayAsk).filter(isWithinReach) : [];
  const sure = [...near, ...straight].filter(isSure).toSorted((a, b) => farFromSure(a) - farFromSure(b));
  return {
    ...line,
    candidates: open.toSorted((a, b) => farFromWanted(a) - farFromWanted(b)),
    known: firstFew(sure, KEPT_KNOWN, isKnown),
    straight: straight.filter(isOneThing),
    send,
    isSided,
  };
}

/** The first so many that are as wanted; the rest are not looked at. */
function firstFew(list: readonly Proposal[], most: number, is: (proposal: Proposal) => boolean): Proposal[] {
  const found: Proposal[] = [];
  for (const one of list) {
    if (found.length === most) break;
    if (is(one)) found.push(one);
  }
  return found;
}

function likeliest(all: readonly Proposal[]): Proposal[] {
  const best = Math.max(...all.map(({ least }) => least));
  return all.filter(({ least }) => least === best);
}

function commonest(kinds: readonly SendKind[]): SendKind {
  const count = (kind: SendKind) => kinds.filter((one) => one === kind).length;
  const order: readonly SendKind[] = ['stopped', 'clean', 'none'];
  return order.reduce((so, kind) => (count(kind) > count(so) ? kind : so));
}

const mostly = (list: readonly Proposal[], is: (proposal: Proposal) => boolean): boolean =>
  list.filter(is).length * 2 > list.length;

const OTHER_SIDE: Partial<Record<Skill, Skill>> = { 'cast-left': 'cast-right', 'cast-right': 'cast-left' };

/** The same chain cast to the other side; none for a chain without a side. */
function mirrored(input: NextInput, { legs, focus }: Proposal): Proposal[] {
  if (sideOfLegs(legs) === null) return [];
  const turned: LaidLeg[] = legs.map(({ skill, ask }) => ({ skill: OTHER_SIDE[skill] ?? skill, ask }));
  return [proposed(input, turned, focus)];
}

import { harderFields, type Skill } from '../../ability/index.ts';
import { isCleanSend, isLineToStop, relinked, straightThrough } from '../next/chains.ts';
import { BAND, easyRep, KNOWN_CHANCE, TOO_BIG_STRETCH } from '../next/choose.ts';
import { knownChains, type Proposal, proposals, proposed } from '../next/proposal.ts';
import type { NextInput } from '../next/session-state.ts';
import { castSide, type LaidLeg } from '../picture/laid-leg.ts';

/** What a rep is in the order of sends: stopped, run straight through, or no send at all. */
export type SendKind = 'stopped' | 'clean' | 'none';

export function sendKind(legs: readonly LaidLeg[]): SendKind {
  if (legs.some(({ skill }) => skill === 'stop')) return 'stopped';
  return isCleanSend(legs) ? 'clean' : 'none';
}

/** The side a chain casts to, `null` without a side cast. */
export function sideOfLegs(legs: readonly LaidLeg[]): 'left' | 'right' | null {
  for (const { skill } of legs) {
    const side = castSide(skill);
    if (side === 'left' || side === 'right') return side;
  }
  return null;
}

/** The part of the way at which a chain's stop comes, `null` without one. */
export function stopWay(legs: readonly LaidLeg[]): number | null {
  const stop = legs.find(({ skill }) => skill === 'stop');
  return stop ? (stop.ask.wayFraction ?? 0.1) : null;
}

/** A part of the way is noted in hundredths, metres in wholes: beyond this a stop is not on its line (our judgement, 2026). */
const OFF_LINE = 0.05;

/** Whether a chain's stop lies on its own line, as far as both are said: a record may hold one that does not. */
export function isStopOnLine(legs: readonly LaidLeg[]): boolean {
  const stop = legs.find(({ skill }) => skill === 'stop')?.ask;
  const lineM = legs.find(({ skill }) => skill === 'line')?.ask.distanceM;
  if (stop?.distanceM === undefined || lineM === undefined) return true;
  const is = stop.distanceM / Math.max(lineM, 1e-9);
  const said = stop.wayFraction ?? 0.1;
  return Math.abs(is - said) < OFF_LINE || Math.max(is, said) <= 0.1 || isLineToStop(legs);
}

/** Whether kit and age allow a chain. */
export type MayAsk = (legs: readonly LaidLeg[]) => boolean;

/**
 * What may be asked of one skill in a session: what went well lately as it was, one step harder and one easier, its stops in
 * other parts of the way, and the easy end. Each stated for the beginning of the session.
 */
export function candidatesFor(input: NextInput, skill: Skill, mayAsk: MayAsk): Proposal[] {
  const known = proposals(input, skill, ['harder', 'easier'], STEPPED_CHAINS);
  const all = [...known, ...elsewhere(input, skill), easyRep(input, skill)];
  const seen = new Set<string>();
  return all.filter((proposal) => {
    const key = JSON.stringify(proposal.legs.map(({ skill: part, ask }) => [part, ask]));
    if (seen.has(key) || !mayAsk(proposal.legs)) return false;
    seen.add(key);
    return true;
  });
}

/** Known chains that are tried harder and easier: the newest. */
const STEPPED_CHAINS = 5;

/** Parts of the way that stops are tried at, beside those of the record. */
const WAYS = [0.2, 0.35, 0.5, 0.65, 0.8] as const;
/** Known chains whose stop is tried elsewhere: the newest. */
const MOVED_CHAINS = 4;

function elsewhere(input: NextInput, skill: Skill): Proposal[] {
  const chains = knownChains(input, skill).filter(({ legs }) => sendKind(legs) === 'stopped');
  return chains.slice(0, MOVED_CHAINS).flatMap(({ legs, focus }) =>
    WAYS.flatMap((way) => {
      const moved = stoppedAt(legs, way);
      return moved === null ? [] : [proposed(input, moved, focus)];
    }),
  );
}

/** No stop is put nearer than the easy end (contract), in metres. */
const NEAREST_STOP_M = 5;

/** The chain with its stop at another part of the same line; `null` without a line and a stop, or where it is there already. */
export function stoppedAt(legs: readonly LaidLeg[], wayFraction: number): LaidLeg[] | null {
  const stop = legs.findIndex(({ skill }) => skill === 'stop');
  const ask = legs[stop]?.ask;
  const said = ask?.wayFraction ?? 0.1;
  const isToStop = isLineToStop(legs);
  const lineM = isToStop
    ? (ask?.distanceM ?? 0) / Math.max(0.1, said)
    : legs.find(({ skill }) => skill === 'line')?.ask.distanceM;
  if (!ask || lineM === undefined || Math.abs(said - wayFraction) < 0.02) return null;
  const stopM = lineM * wayFraction;
  const distanceM = stopM >= 10 ? Math.round(stopM) : Math.round(stopM * 10) / 10;
  if (distanceM < NEAREST_STOP_M) return null;
  // The line stays as long as it was, whatever the rounding.
  return relinked(legs, stop, { ...ask, wayFraction, distanceM }).map((leg) =>
    leg.skill === 'line' && !isToStop ? { ...leg, ask: { ...leg.ask, distanceM: lineM } } : leg,
  );
}

/** The same sends straight through, each once. */
export function straightOf(input: NextInput, stopped: readonly Proposal[], mayAsk: MayAsk): Proposal[] {
  const seen = new Set<string>();
  return stopped.flatMap(({ legs }) => {
    const straight = straightThrough(legs.map(({ skill, ask }) => ({ skill, ask })));
    if (straight === null || !mayAsk(straight)) return [];
    const key = JSON.stringify(straight);
    if (seen.has(key)) return [];
    seen.add(key);
    return [proposed(input, straight, 0)];
  });
}

/** A leg that never went well is asked at its easy end alone (contract, "Details"). */
function isNewAtEasyEnd({ legs }: Proposal): boolean {
  return legs.every((leg) => leg.step !== null || harderFields(leg.ask, {}, leg.skill).length === 0);
}

/**
 * Things raised against the bases, counted over the chain, whichever base is taken of those that tie: a plan is not to hang on
 * how a tie is broken. A later stop on the same line is one thing, its distance; on another line its part of the way is a
 * thing of its own.
 */
export function thingsRaised({ legs }: Proposal): Set<string> {
  const groups = legs.flatMap(({ step }) => step?.tied.flat() ?? []);
  return new Set(groups.map((group) => (group.includes('distanceM') ? 'distanceM' : (group[0] ?? ''))));
}

/** Raises one thing at most, by no more than a big step, and nothing in a leg that never went well. */
export function isOneThing(proposal: Proposal): boolean {
  return thingsRaised(proposal).size <= 1 && proposal.stretch <= TOO_BIG_STRETCH && isNewAtEasyEnd(proposal);
}

/** Every leg is within reach. */
export const isWithinReach = ({ least }: Proposal): boolean => least >= BAND.least;

/** Something that went well before in every leg, no harder now, and likely enough to be called known. */
export function isKnown(proposal: Proposal): boolean {
  return isHeld(proposal) && proposal.legs.every(({ step }) => step !== null) && isSure(proposal);
}

/** Raises nothing. */
export const isHeld = (proposal: Proposal): boolean =>
  proposal.raised.length === 0 && isNewAtEasyEnd(proposal);

/** Each leg is not missed in 85 of 100. */
export const isSure = ({ least }: Proposal): boolean => least >= KNOWN_CHANCE;

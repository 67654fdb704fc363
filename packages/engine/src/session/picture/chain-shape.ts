import type { Ask, HandlerPlace, Skill } from '../../ability/index.ts';
import { alongM, castBearingRad, type PlanePoint, SEND } from '../../ground/index.ts';
import { castSide, type LaidLeg } from './laid-leg.ts';
import { type WayEnd, wayEnds } from './way-ends.ts';

/** The way a chain of legs takes over the ground, metres from the send point, out to the north. */
export interface ChainShape {
  /** The leg that takes the dog out: `line`, `mark`, `hunt` or `null`. */
  readonly send: Skill | null;
  /** How far the send points, or how far the dog sits before a cast or a recall. */
  readonly outM: number;
  /** Where the stop comes, `null` without one. */
  readonly stopM: number | null;
  readonly castSide: 'left' | 'right' | 'back' | null;
  readonly castFrom: PlanePoint | null;
  readonly castTo: PlanePoint | null;
  readonly castM: number;
  /** The dog sits out there, and is not sent there by this chain. */
  readonly sit: boolean;
  readonly castFromSit: boolean;
  /** A recall or a delivery from a sit: the handler stays at the foot. */
  readonly comesHome: boolean;
  /** What lies at the end of the last way, `null` for nothing; a dummy may lie at a post. */
  readonly asked: WayEnd | null;
  /** What lies at the end of a way out that is stopped and cast elsewhere; `null` for nothing. */
  readonly passed: WayEnd | null;
  readonly others: number;
  readonly gapDeg: number;
  readonly handlerPlace: HandlerPlace;
  readonly cover: number;
}

/** Distance at the easy end of every ask (contract). */
const EASY_M = 5;
/** `steady`, `heel` and `leave` say no distance: what tempts is drawn this far off. Our judgement, 2026. */
const TEMPTED_AT_M = 8;

function find(legs: readonly LaidLeg[], wanted: (skill: Skill) => boolean): LaidLeg | undefined {
  return legs.find((leg) => wanted(leg.skill));
}

function most(legs: readonly LaidLeg[], value: (ask: Ask) => number | undefined): number {
  return legs.reduce((so, leg) => Math.max(so, value(leg.ask) ?? 0), 0);
}

/** Reads the shape of a chain from its legs' asks. Absent fields stand at their easy end. */
export function chainShape(legs: readonly LaidLeg[]): ChainShape {
  const send = find(legs, (skill) => skill === 'line' || skill === 'mark' || skill === 'hunt');
  const stop = find(legs, (skill) => skill === 'stop');
  const cast = find(legs, (skill) => castSide(skill) !== null);
  const recall = find(legs, (skill) => skill === 'recall');
  const still = find(legs, (skill) => skill === 'steady' || skill === 'heel' || skill === 'leave');
  const picksUp = legs.some(
    (leg) => leg.skill === 'pickup' || leg.skill === 'delivery' || leg.skill === 'hunt',
  );
  const lead = send ?? stop ?? cast ?? recall ?? still ?? legs[0];

  const stopM = stop ? (stop.ask.distanceM ?? EASY_M) : null;
  const sit = !send && !stop && (cast ?? recall) !== undefined;
  const outM = outDistanceM(send, stop, cast, recall, still, lead);
  const side = cast ? castSide(cast.skill) : null;
  const castFrom = cast ? alongM(SEND, 0, stopM ?? (send ? outM : (cast.ask.distanceM ?? EASY_M))) : null;
  const castM = cast?.ask.castM ?? EASY_M;
  const turnDeg = cast?.ask.turnDeg ?? (side === 'back' ? 180 : 90);
  const castTo = side && castFrom ? alongM(castFrom, castBearingRad(side, turnDeg), castM) : null;

  // A dog that sits out there is sent nowhere but by the cast.
  const wayOut = drawnOn(send, stop) ?? stop ?? (sit ? undefined : lead);
  const outAt = alongM(SEND, 0, outM);
  return {
    send: send?.skill ?? null,
    outM,
    stopM,
    castSide: side,
    castFrom,
    castTo,
    castM,
    sit,
    castFromSit: sit && cast !== undefined,
    comesHome: sit && recall !== undefined,
    ...wayEnds({ wayOut, outAt, cast, castTo, picksUp }),
    others: most(legs, (ask) => ask.otherDummies),
    gapDeg: Math.min(...legs.map((leg) => leg.ask.gapDeg ?? 180)),
    handlerPlace: lead?.ask.handlerPlace ?? 'between',
    cover: most(legs, (ask) => ask.cover),
  };
}

const draws = (leg: LaidLeg | undefined) =>
  leg?.ask.temptation !== undefined && leg.ask.temptation !== 'none';

/** The send, with what draws the dog on past its stop where the stop alone says it. */
function drawnOn(send: LaidLeg | undefined, stop: LaidLeg | undefined): LaidLeg | undefined {
  if (send === undefined || !draws(stop) || draws(send) || send.ask.blind === true) return send;
  return { ...send, ask: { ...send.ask, temptation: stop?.ask.temptation } };
}

function outDistanceM(
  send: LaidLeg | undefined,
  stop: LaidLeg | undefined,
  cast: LaidLeg | undefined,
  recall: LaidLeg | undefined,
  still: LaidLeg | undefined,
  lead: LaidLeg | undefined,
): number {
  if (still && lead === still) return still.ask.distanceM ?? TEMPTED_AT_M;
  const stopM = stop?.ask.distanceM ?? (stop ? EASY_M : 0);
  const expectedM = stop ? stopM / Math.max(0.1, stop.ask.wayFraction ?? 1) : undefined;
  // A line asked as far as its stop goes on, in the dog's eyes, to what draws it.
  const goesOn = draws(stop) && send?.ask.distanceM === stopM;
  const pointedM = goesOn ? expectedM : (send?.ask.distanceM ?? expectedM);
  const restM = cast?.ask.distanceM ?? recall?.ask.distanceM ?? lead?.ask.distanceM ?? EASY_M;
  return Math.max(pointedM ?? restM, stopM, EASY_M);
}

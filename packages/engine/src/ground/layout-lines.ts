import { finiteBetween } from '../quantity/index.ts';
import { bearingDegOf, gapDegAt } from './bearing.ts';
import type { Layout, PlanePoint, Thing } from './layout.ts';
import { clearanceToM } from './line-offset.ts';
import { distanceBetweenM } from './plane.ts';
import { windAcrossMPerS } from './wind-on-line.ts';

/** The thing that leaves a line the least room. */
export interface NearestThing {
  readonly thing: string;
  /** At the handler, between the line and the way to the thing, 0 to 180 degrees. */
  readonly gapDeg: number;
  /** From the stretch between the handler and what the line goes to. */
  readonly clearanceM: number;
}

/** One line of a layout: from the handler to a post or a dummy. */
export interface LayoutLine {
  readonly to: string;
  readonly distanceM: number;
  readonly bearingDeg: number;
  readonly paces: number;
  readonly nearest: NearestThing | null;
  /** Wind square to the line, positive when it blows from the left; left out where the wind is not told whole. */
  readonly windAcrossMPerS?: number;
  /** From the send point, where the handler stands apart from it. */
  readonly fromSend?: { readonly distanceM: number; readonly bearingDeg: number };
}

/** A handler's pace (contract, "layout"). */
export const PACE_M = 0.75;
/** A thing within this of the handler is no place to send to, nor to stand by (contract, "layout"). */
export const AT_HANDLER_M = 0.5;
/** From here on the send point counts as apart from the handler: an arm's length and a dog (our judgement, 2026). */
export const SEND_APART_M = 1;

/** Whether a line goes to a thing. */
export function isLineTo({ kind }: Thing): boolean {
  return kind === 'post' || kind === 'dummy';
}

/** The send point, where it lies apart from the handler; `null` where the dog is sent from the handler's side. */
export function sendApart({ handlerAt, sendFrom }: Layout): PlanePoint | null {
  return sendFrom !== undefined && distanceBetweenM(handlerAt, sendFrom) >= SEND_APART_M ? sendFrom : null;
}

/** Things within `AT_HANDLER_M` of the handler, as drawn: an error of the drawing. */
export function thingsAtHandler({ handlerAt, things }: Layout): readonly Thing[] {
  return things.filter((thing) => distanceBetweenM(handlerAt, thing) <= AT_HANDLER_M);
}

/**
 * Lines from the handler to every post and dummy, in the order they are drawn, each with the thing of any kind that
 * leaves it the least clearance (the first drawn, of equals).
 * @throws RangeError for a place that is not finite, a pace outside 0.3 to 1.5 m, or a thing at the handler
 */
export function layoutLines(layout: Layout, paceM: number = PACE_M): LayoutLine[] {
  finiteBetween('paceM', paceM, 0.3, 1.5);
  for (const { eastM, northM } of [layout.handlerAt, layout.sendFrom ?? layout.handlerAt, ...layout.things]) {
    finiteBetween('eastM', eastM, -1e6, 1e6);
    finiteBetween('northM', northM, -1e6, 1e6);
  }
  const tooNear = thingsAtHandler(layout)[0];
  if (tooNear)
    throw new RangeError(
      `things: expected none within ${AT_HANDLER_M} m of the handler, got ${tooNear.thing}`,
    );
  return layout.things.filter(isLineTo).map((to) => lineTo(layout, to, paceM));
}

function lineTo(layout: Layout, to: Thing, paceM: number): LayoutLine {
  const { handlerAt } = layout;
  const distanceM = distanceBetweenM(handlerAt, to);
  const bearingDeg = bearingDegOf(handlerAt, to);
  const acrossMPerS = windAcrossMPerS(layout, bearingDeg);
  const send = sendApart(layout);
  return {
    to: to.thing,
    distanceM,
    bearingDeg,
    paces: distanceM / paceM,
    nearest: nearestTo(layout, to),
    ...(acrossMPerS === null ? {} : { windAcrossMPerS: acrossMPerS }),
    ...(send === null
      ? {}
      : { fromSend: { distanceM: distanceBetweenM(send, to), bearingDeg: bearingDegOf(send, to) } }),
  };
}

function nearestTo({ handlerAt, things }: Layout, to: Thing): NearestThing | null {
  let nearest: NearestThing | null = null;
  for (const other of things) {
    if (other === to) continue;
    const clearanceM = clearanceToM(handlerAt, to, other);
    if (nearest === null || clearanceM < nearest.clearanceM)
      nearest = { thing: other.thing, gapDeg: gapDegAt(handlerAt, to, other), clearanceM };
  }
  return nearest;
}

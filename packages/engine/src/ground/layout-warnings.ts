import { bearingDegOf, gapDegAt } from './bearing.ts';
import type { Layout, PlanePoint, Thing } from './layout.ts';
import { isLineTo, sendApart } from './layout-lines.ts';
import { clearanceToM, lineOffset } from './line-offset.ts';
import { distanceBetweenM } from './plane.ts';
import { scentAcrossM, windOf } from './wind-on-line.ts';

/** How one other thing gets in the way of a line. */
export const LINE_WARNING_CODES = [
  'hazard-on-line',
  'hazard-near-line',
  'on-the-way',
  'beyond-in-line',
  'narrow-gap',
  'scent-across',
] as const;
export type LineWarningCode = (typeof LINE_WARNING_CODES)[number];

/** What a handler would call interference, with the figures that make it so. */
export type LayoutWarning =
  | {
      readonly code: LineWarningCode;
      readonly to: string;
      readonly thing: string;
      /** Between the line and the way to the thing, where the dog is sent from. */
      readonly gapDeg: number;
      readonly clearanceM: number;
      /** Of `scent-across`: how far downwind of the thing the line runs through its scent, at the nearest. */
      readonly downwindM?: number;
    }
  | { readonly code: 'passes-handler'; readonly to: string; readonly clearanceM: number }
  | { readonly code: 'longer-than-an-ask'; readonly to: string; readonly distanceM: number }
  | { readonly code: 'at-send-point'; readonly thing: string; readonly distanceM: number }
  | { readonly code: 'together'; readonly thing: string; readonly other: string; readonly distanceM: number }
  | { readonly code: 'send-apart'; readonly distanceM: number; readonly bearingDeg: number }
  | { readonly code: 'same-name'; readonly thing: string; readonly count: number }
  | { readonly code: 'wind-half-told'; readonly missing: 'windFromDeg' | 'windMPerS' }
  | { readonly code: 'no-line' };

/**
 * From which figures on something is interference (our judgement, 2026, common practice, no source): marks of a double are
 * set 30 degrees and more apart, so half of that is a narrow gap; a dog that runs a line drifts by a few metres.
 */
export const INTERFERENCE = {
  narrowDeg: 15,
  nearLineM: 5,
  onLineM: 1.5,
  nearHazardM: 5,
  beyondDeg: 8,
  passesHandlerM: 3,
  togetherM: 0.5,
  longestM: 400,
} as const;

/**
 * What may interfere on a layout, line by line in the order drawn, then of the layout as a whole. Lines are the dog's: from
 * the send point, where it lies apart from the handler. One thing gives one line one warning of place, the weightiest, and
 * beside it one of scent.
 */
export function layoutWarnings(layout: Layout): LayoutWarning[] {
  const send = sendApart(layout);
  const from = send ?? layout.handlerAt;
  const lines = layout.things.filter(isLineTo);
  return [
    ...lines.flatMap((to) => onLine(layout, from, to)),
    ...layout.things.flatMap((thing) => atSend(send, thing)),
    ...together(layout.things),
    ...sameNames(layout.things),
    ...sentApart(layout, send),
    ...halfWind(layout),
    ...(lines.length === 0 ? [{ code: 'no-line' } as const] : []),
  ];
}

function onLine(layout: Layout, from: PlanePoint, to: Thing): LayoutWarning[] {
  const distanceM = distanceBetweenM(from, to);
  // A line shorter than this has no direction to interfere with; `at-send-point` tells of it.
  if (distanceM < INTERFERENCE.togetherM) return [];
  const clearM = clearanceToM(from, to, layout.handlerAt);
  const passes = sendApart(layout) !== null && clearM < INTERFERENCE.passesHandlerM;
  return [
    ...layout.things.flatMap((other) => (other === to ? [] : between(layout, from, to, other))),
    ...(passes ? [{ code: 'passes-handler', to: to.thing, clearanceM: clearM } as const] : []),
    ...(distanceM > INTERFERENCE.longestM
      ? [{ code: 'longer-than-an-ask', to: to.thing, distanceM } as const]
      : []),
  ];
}

function between(layout: Layout, from: PlanePoint, to: Thing, other: Thing): LayoutWarning[] {
  const clearanceM = clearanceToM(from, to, other);
  const pair = { to: to.thing, thing: other.thing, gapDeg: gapDegAt(from, to, other), clearanceM };
  const place = codeOfPlace(from, to, other, pair);
  const wind = windOf(layout);
  const downwindM = other.kind === 'dummy' && wind !== null ? scentAcrossM(other, wind, from, to) : null;
  return [
    ...(place === null ? [] : [{ code: place, ...pair }]),
    ...(downwindM === null ? [] : [{ code: 'scent-across' as const, ...pair, downwindM }]),
  ];
}

function codeOfPlace(
  from: PlanePoint,
  to: Thing,
  other: Thing,
  { gapDeg, clearanceM }: { readonly gapDeg: number; readonly clearanceM: number },
): LineWarningCode | null {
  const { onLineM, nearHazardM, nearLineM, beyondDeg, narrowDeg, togetherM } = INTERFERENCE;
  if (other.kind === 'hazard') {
    if (clearanceM < onLineM) return 'hazard-on-line';
    return clearanceM < nearHazardM ? 'hazard-near-line' : null;
  }
  // A jump on the way is what the line is for, and a marker draws no dog.
  if (!isLineTo(other) || distanceBetweenM(from, other) < togetherM) return null;
  const isBeyond = lineOffset(from, to, other).alongM >= distanceBetweenM(from, to);
  if (isBeyond && gapDeg < beyondDeg) return 'beyond-in-line';
  if (!isBeyond && clearanceM < nearLineM) return 'on-the-way';
  return gapDeg < narrowDeg ? 'narrow-gap' : null;
}

function atSend(send: PlanePoint | null, { thing, ...at }: Thing): LayoutWarning[] {
  if (send === null) return [];
  const distanceM = distanceBetweenM(send, at);
  return distanceM < INTERFERENCE.togetherM ? [{ code: 'at-send-point', thing, distanceM }] : [];
}

function together(things: readonly Thing[]): LayoutWarning[] {
  return things.flatMap((a, i) =>
    things.slice(i + 1).flatMap((b) => {
      const distanceM = distanceBetweenM(a, b);
      const isOne = distanceM < INTERFERENCE.togetherM;
      return isOne ? [{ code: 'together', thing: a.thing, other: b.thing, distanceM } as const] : [];
    }),
  );
}

function sameNames(things: readonly Thing[]): LayoutWarning[] {
  const counts = new Map<string, number>();
  for (const { thing } of things) counts.set(thing, (counts.get(thing) ?? 0) + 1);
  return [...counts].flatMap(([thing, count]) =>
    count > 1 ? [{ code: 'same-name', thing, count } as const] : [],
  );
}

function sentApart({ handlerAt }: Layout, send: PlanePoint | null): LayoutWarning[] {
  if (send === null) return [];
  const distanceM = distanceBetweenM(handlerAt, send);
  return [{ code: 'send-apart', distanceM, bearingDeg: bearingDegOf(handlerAt, send) }];
}

function halfWind({ windFromDeg, windMPerS }: Layout): LayoutWarning[] {
  if (windMPerS === undefined && windFromDeg !== undefined)
    return [{ code: 'wind-half-told', missing: 'windMPerS' }];
  const needsWay = windFromDeg === undefined && windMPerS !== undefined && windMPerS > 0;
  return needsWay ? [{ code: 'wind-half-told', missing: 'windFromDeg' }] : [];
}

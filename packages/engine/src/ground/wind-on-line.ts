import { RAD_PER_DEG } from '../quantity/index.ts';
import type { Layout, PlanePoint } from './layout.ts';

/** Wind that is told whole: where it comes from and how fast it blows. */
export interface Wind {
  readonly fromDeg: number;
  readonly speedMPerS: number;
}

/** The layout's wind, `null` where none is told, where it is told by half, or in a calm. */
export function windOf({ windFromDeg, windMPerS }: Layout): Wind | null {
  if (windFromDeg === undefined || windMPerS === undefined || windMPerS === 0) return null;
  return { fromDeg: windFromDeg, speedMPerS: windMPerS };
}

/**
 * Wind square to a line, `v sin(line - from)` m/s: positive from the left of the line to its right. Calm is 0; `null` where
 * the wind is not told, or told by half.
 */
export function windAcrossMPerS(layout: Layout, lineBearingDeg: number): number | null {
  if (layout.windMPerS === 0) return 0;
  const wind = windOf(layout);
  return wind === null ? null : wind.speedMPerS * Math.sin((lineBearingDeg - wind.fromDeg) * RAD_PER_DEG);
}

/** How far a dummy's scent is taken to drift, and how wide it opens to either side (our judgement, 2026; no source). */
const DRIFT = { reachM: 40, halfAngleDeg: 15, leastMPerS: 0.5 } as const;

/**
 * The nearest downwind distance at which a dummy's scent lies across the stretch from `from` to `to`, `null` where it
 * does not. The scent is a wedge that opens downwind of the dummy; the stretch is clipped to it side by side (Cyrus1978).
 */
export function scentAcrossM(dummy: PlanePoint, wind: Wind, from: PlanePoint, to: PlanePoint): number | null {
  if (wind.speedMPerS < DRIFT.leastMPerS) return null;
  const windRad = (wind.fromDeg + 180) * RAD_PER_DEG;
  const [downEast, downNorth] = [Math.sin(windRad), Math.cos(windRad)];
  const inWedge = ({ eastM, northM }: PlanePoint) => {
    const [e, n] = [eastM - dummy.eastM, northM - dummy.northM];
    return { downM: e * downEast + n * downNorth, asideM: e * downNorth - n * downEast };
  };
  const start = inWedge(from);
  const end = inWedge(to);
  const slope = Math.tan(DRIFT.halfAngleDeg * RAD_PER_DEG);
  // Each side of the wedge as a figure that is 0 or more inside it.
  const sides = [
    (p: typeof start) => DRIFT.reachM - p.downM,
    (p: typeof start) => slope * p.downM - p.asideM,
    (p: typeof start) => slope * p.downM + p.asideM,
  ];
  let [enter, leave] = [0, 1];
  for (const side of sides) {
    const [atStart, atEnd] = [side(start), side(end)];
    if (atStart < 0 && atEnd < 0) return null;
    const crossing = atStart / (atStart - atEnd);
    if (atStart < 0) enter = Math.max(enter, crossing);
    else if (atEnd < 0) leave = Math.min(leave, crossing);
  }
  if (enter > leave) return null;
  const downAtM = (share: number) => start.downM + share * (end.downM - start.downM);
  return Math.max(0, Math.min(downAtM(enter), downAtM(leave)));
}

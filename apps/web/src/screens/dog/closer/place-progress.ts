import type { ProgressLeg, ProgressView } from '@sedgeline/projections';

/** A leg's place in the plot: shares of its width and height, from the left and from the top. */
export interface PlacedLeg {
  readonly leg: ProgressLeg;
  readonly x: number;
  readonly y: number;
}

export interface PlacedProgress {
  /** Paths in a plot of 1 by 1, chance 1 at the top. */
  readonly line: string;
  readonly band: string;
  readonly legs: readonly PlacedLeg[];
}

/** Room at both sides for the marks of the first and the last day, as a share of the width. */
const SIDE = 0.03;
/** Width of a day's marks, spread by the order of its legs, as a share of the mean step between sessions. */
const SPREAD = 0.8;
/** A point alone is drawn as wide as this. */
const ALONE = 0.08;

const n = (value: number): string => String(Math.round(value * 10_000) / 10_000);

/**
 * Where all goes in the picture of a skill's progress. Days keep their distance, so that a lay-off shows; the legs of one day, which
 * are minutes apart, are spread about it in their order.
 */
export function placeProgress({ points, legs }: Pick<ProgressView, 'points' | 'legs'>): PlacedProgress {
  const firstMs = points[0]?.atMs ?? 0;
  const spanMs = (points.at(-1)?.atMs ?? 0) - firstMs;
  const room = 1 - 2 * SIDE;
  const xAt = (atMs: number): number => (spanMs > 0 ? SIDE + (room * (atMs - firstMs)) / spanMs : 0.5);
  const dayX = new Map(points.map(({ session, atMs }) => [session, xAt(atMs)] as const));
  const width = Math.min(0.06, (SPREAD * room) / Math.max(1, points.length));

  const ofSession = new Map<string, number>();
  for (const { session } of legs) ofSession.set(session, (ofSession.get(session) ?? 0) + 1);
  const seen = new Map<string, number>();
  const placed = legs.map((leg): PlacedLeg => {
    const place = seen.get(leg.session) ?? 0;
    seen.set(leg.session, place + 1);
    const share = (place + 0.5) / ofSession.get(leg.session)! - 0.5;
    const x = (dayX.get(leg.session) ?? 0.5) + width * share;
    return { leg, x: Math.min(1, Math.max(0, x)), y: 1 - leg.chance };
  });

  // A single day has no line to draw: it is drawn as a short level one.
  const ends =
    spanMs > 0
      ? points.map((point) => ({ point, x: xAt(point.atMs) }))
      : points.slice(-1).flatMap((point) => [0.5 - ALONE, 0.5 + ALONE].map((x) => ({ point, x })));
  const path = (of: (point: (typeof points)[number]) => number, along: typeof ends): string[] =>
    along.map(({ point, x }) => `${n(x)} ${n(1 - of(point))}`);
  const low = path(({ smoothed }) => smoothed.interval90[0], [...ends].reverse());
  const high = path(({ smoothed }) => smoothed.interval90[1], ends);
  const middle = path(({ smoothed }) => smoothed.chance, ends);
  return {
    line: middle.length === 0 ? '' : `M${middle.join('L')}`,
    band: high.length === 0 ? '' : `M${[...high, ...low].join('L')}Z`,
    legs: placed,
  };
}

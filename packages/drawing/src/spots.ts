import type { Box, Spot } from './drawing.ts';

export const plus = (a: Spot, b: Spot, times = 1): Spot => ({ x: a.x + b.x * times, y: a.y + b.y * times });
export const apart = (a: Spot, b: Spot): number => Math.hypot(a.x - b.x, a.y - b.y);

/** Direction from one spot to another, length 1; straight out (up) where they are the same. */
export function towards(from: Spot, to: Spot): Spot {
  const length = apart(from, to);
  return length < 1e-6 ? { x: 0, y: -1 } : { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
}

/** The direction a quarter turn clockwise, as seen on the card. */
export const across = (direction: Spot): Spot => ({ x: -direction.y, y: direction.x });

/** Clockwise from up, in degrees, as SVG's `rotate` takes it. */
export const bearingDeg = (direction: Spot): number =>
  (Math.atan2(direction.x, -direction.y) * 180) / Math.PI;

/** A figure in a path: two decimals are a fiftieth of the thinnest stroke. */
export const n = (value: number): string => String(Math.round(value * 100) / 100 + 0);
export const spot = ({ x, y }: Spot): string => `${n(x)} ${n(y)}`;

export const inflate = (box: Box, by: number): Box => ({
  x: box.x - by,
  y: box.y - by,
  width: box.width + 2 * by,
  height: box.height + 2 * by,
});

/** Area two boxes share. */
export function overlap(a: Box, b: Box): number {
  const width = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
  const height = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y);
  return width > 0 && height > 0 ? width * height : 0;
}

export const around = (at: Spot, halfWidth: number, halfHeight = halfWidth): Box => ({
  x: at.x - halfWidth,
  y: at.y - halfHeight,
  width: 2 * halfWidth,
  height: 2 * halfHeight,
});

/** A stroke as a row of small boxes `every` so many units, for keeping labels off it. */
export function boxesAlong(from: Spot, to: Spot, halfWidth: number, every = 8): Box[] {
  const steps = Math.max(1, Math.ceil(apart(from, to) / every));
  return Array.from({ length: steps + 1 }, (_, i) =>
    around(
      { x: from.x + ((to.x - from.x) * i) / steps, y: from.y + ((to.y - from.y) * i) / steps },
      halfWidth,
    ),
  );
}

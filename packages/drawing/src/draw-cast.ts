import type { Mark, Spot } from './drawing.ts';
import { apart, plus, spot, towards } from './spots.ts';

/** Two short strokes that make an arrow's head at `tip`. */
export function arrowHead(tip: Spot, direction: Spot, size: number): string {
  const turn = (angle: number): Spot => ({
    x: direction.x * Math.cos(angle) - direction.y * Math.sin(angle),
    y: direction.x * Math.sin(angle) + direction.y * Math.cos(angle),
  });
  const wing = (angle: number): Spot => plus(tip, turn(angle), -size);
  return `M${spot(wing(0.56))} L${spot(tip)} L${spot(wing(-0.56))}`;
}

/**
 * A cast: leaves the stop the way the dog was going and bends to where it is sent. `room` is left before what lies at
 * its end, so that the head does not cover it; never more than a third of the way.
 */
export function drawCast(
  side: 'left' | 'right' | 'back',
  from: Spot,
  to: Spot,
  wayOn: Spot,
  room: number,
  head: number,
): Extract<Mark, { mark: 'cast' }> {
  const length = apart(from, to);
  const ahead = towards(from, to);
  const end = plus(to, ahead, -Math.min(room, length / 3));
  const sideways = Math.abs(wayOn.x * ahead.y - wayOn.y * ahead.x);
  const bend = Math.min(24, length * 0.34) * sideways;
  const first = plus(from, wayOn, bend);
  const second = plus(plus(end, ahead, -length * 0.5), wayOn, bend * 0.62);
  const path =
    bend < 1 ? `M${spot(from)} L${spot(end)}` : `M${spot(from)} C${spot(first)} ${spot(second)} ${spot(end)}`;
  const into = bend < 1 ? ahead : towards(second, end);
  const headPath = arrowHead(end, into, Math.min(head, length * 0.4));
  return {
    mark: 'cast',
    side,
    from,
    to,
    path,
    headPath,
    along: alongCurve(from, first, second, end, length),
  };
}

/** Spots on a cubic curve, about every eight units. */
function alongCurve(from: Spot, first: Spot, second: Spot, end: Spot, length: number): Spot[] {
  const steps = Math.max(2, Math.ceil(length / 8));
  return Array.from({ length: steps + 1 }, (_, i) => {
    const t = i / steps;
    const u = 1 - t;
    const at = (a: number, b: number, c: number, d: number): number =>
      u * u * u * a + 3 * u * u * t * b + 3 * u * t * t * c + t * t * t * d;
    return { x: at(from.x, first.x, second.x, end.x), y: at(from.y, first.y, second.y, end.y) };
  });
}

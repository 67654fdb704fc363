import type { CardBox, Mark, Spot } from './drawing.ts';
import { across, n, plus, spot, towards } from './spots.ts';

/** Where on the way the obstacle is drawn: past the middle, where the dog is on its own (our judgement, 2026). */
const ALONG = 0.56;

/** A ditch, a fence or water across the way from one spot to another; `null` on open ground. */
export function drawObstacle(
  level: number,
  from: Spot,
  to: Spot,
  longest: number,
  card: CardBox,
): (Extract<Mark, { mark: 'obstacle' }> & { readonly foot: Spot }) | null {
  const rounded = Math.round(level);
  if (!(rounded >= 1)) return null;
  const ahead = towards(from, to);
  const sideways = across(ahead);
  const middle = plus(from, { x: to.x - from.x, y: to.y - from.y }, ALONG);
  const half = roomSideways(middle, sideways, longest, card);
  const [one, other] = [plus(middle, sideways, half), plus(middle, sideways, -half)];
  const bulge = plus(middle, ahead, half * 0.16);
  const kind = rounded >= 3 ? 3 : rounded === 2 ? 2 : 1;
  const path = kind === 2 ? `M${spot(one)} L${spot(other)}` : `M${spot(one)} Q${spot(bulge)} ${spot(other)}`;
  const upright = (t: number): string => {
    const at = plus(one, { x: other.x - one.x, y: other.y - one.y }, t);
    return `M${spot(plus(at, ahead, -5))} l${n(ahead.x * 10)} ${n(ahead.y * 10)}`;
  };
  const posts = kind === 2 ? [0, 1 / 3, 2 / 3, 1].map(upright).join(' ') : '';
  return {
    mark: 'obstacle',
    level: kind,
    at: middle,
    from: one,
    to: other,
    path,
    posts,
    foot: one.y > other.y ? one : other,
  };
}

/** How far an obstacle may reach to both sides and still end on the card; a quarter of the longest at least. */
function roomSideways(middle: Spot, sideways: Spot, longest: number, card: CardBox): number {
  const edge = 9;
  const reach = (at: number, step: number, size: number): number =>
    Math.abs(step) < 1e-6 ? longest : Math.min(at - edge, size - edge - at) / Math.abs(step);
  const room = Math.min(reach(middle.x, sideways.x, card.width), reach(middle.y, sideways.y, card.height));
  return Math.min(longest, Math.max(room, longest / 4));
}

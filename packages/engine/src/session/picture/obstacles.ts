import { alongM, type RepObstacle, type RepStroke, SEND } from '../../ground/index.ts';
import { castSide, type LaidLeg } from './laid-leg.ts';

type Way = Omit<RepObstacle, 'level'>;

/**
 * What lies across the ways of a chain, each on the way of the leg that asks for it: a cast's on the cast, a stop's on
 * the line it comes on, a pick-up's on the last way, which the dog comes home over. `aheadM` is how far off what draws
 * the dog is, where it is sent nowhere. Metres.
 */
export function obstaclesOf(
  legs: readonly LaidLeg[],
  strokes: readonly RepStroke[],
  aheadM: number,
): RepObstacle[] {
  const ways = drawnWays(strokes, { on: 'ahead', from: SEND, to: alongM(SEND, 0, aheadM) });
  const levels = new Map<Way, number>();
  for (const leg of legs) {
    const level = leg.ask.obstacle ?? 0;
    const way = wayOf(leg, ways);
    if (level > 0) levels.set(way, Math.max(level, levels.get(way) ?? 0));
  }
  return ways.filter((way) => levels.has(way)).map((way) => ({ level: levels.get(way) ?? 0, ...way }));
}

/** Ways in the order in which they are run; never none. */
type Ways = readonly [Way, ...Way[]];

function drawnWays(strokes: readonly RepStroke[], ahead: Way): Ways {
  const [first, ...rest] = strokes.flatMap((stroke): Way[] =>
    stroke.kind === 'line' || stroke.kind === 'cast' || stroke.kind === 'recall'
      ? [{ on: stroke.kind, from: stroke.from, to: stroke.to }]
      : [],
  );
  return first ? [first, ...rest] : [ahead];
}

function wayOf({ skill }: LaidLeg, ways: Ways): Way {
  const wanted = castSide(skill) !== null ? 'cast' : skill === 'recall' ? 'recall' : null;
  const last = ways.at(-1) ?? ways[0];
  if (wanted !== null) return ways.find((way) => way.on === wanted) ?? last;
  return skill === 'pickup' || skill === 'delivery' ? last : ways[0];
}

import { type Random, seededRandom } from '@sedgeline/engine/numeric';
import { cleanSends, sidesInOrder, stopPlaces, type WeightedOrder } from '@sedgeline/engine/session';

/** Sessions as they are drawn, each as one order of weight 1. */
export function drawnCleanSends(
  sessions: number,
  sends: number,
  share: number,
  seed: number,
): WeightedOrder[] {
  const random = seededRandom(seed);
  return Array.from({ length: sessions }, () => ({
    order: cleanSends({ sends, share, random }).clean,
    weight: 1,
  }));
}

/** Of sessions in a row, each told the sides of those before: how often a rule of the last three was right of the next side. */
export interface SidesInARow {
  /** Share of sides that were what most of the last three sessions had at that place, where they were not torn. */
  readonly asBefore: number;
  /** Share of sessions that had the very order of one of the last three. */
  readonly repeated: number;
  readonly worstGuess: number;
  readonly apartFrom: number;
}

export function sidesInARow(sessions: number, count: number, seed: number): SidesInARow {
  const random = seededRandom(seed);
  const earlier: (readonly ('left' | 'right')[])[] = [];
  let right = 0;
  let all = 0;
  let repeated = 0;
  let apart = 0;
  let worstGuess = 0;
  for (let n = 0; n < sessions; n++) {
    const last = earlier.slice(-3);
    const { sides, bestGuess, apartFrom } = sidesInOrder({ count, earlier: last, random });
    sides.forEach((side, place) => {
      const rights = last.filter((before) => before[place] === 'right').length;
      if (2 * rights === last.length) return;
      all++;
      if (2 * rights > last.length === (side === 'right')) right++;
    });
    if (last.some((before) => before.join() === sides.join())) repeated++;
    worstGuess = Math.max(worstGuess, bestGuess.accuracy);
    apart += apartFrom;
    earlier.push(sides);
  }
  return { asBefore: right / all, repeated: repeated / sessions, worstGuess, apartFrom: apart / sessions };
}

/** Smallest and mean span of the stops of sessions, and how often one in the later half of the reach follows one in the earlier. */
export function placesOfStops(sessions: number, stops: number, least: number, most: number, random: Random) {
  const middle = (least + most) / 2;
  let smallest = 1;
  let mean = 0;
  let changed = 0;
  for (let n = 0; n < sessions; n++) {
    const { wayFractions, span } = stopPlaces({ stops, least, most, random });
    smallest = Math.min(smallest, span);
    mean += span / sessions;
    const changes = wayFractions.slice(1).filter((way, at) => way > middle !== wayFractions[at]! > middle);
    changed += changes.length / (sessions * (stops - 1));
  }
  return { smallest, mean, changed };
}

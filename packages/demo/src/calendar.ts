import type { Weather } from '@sedgeline/journal';
import { type Dice, rounded } from './dice.ts';
import { type DemoDog, type DemoGround, DOGS, GROUNDS } from './kennel-cast.ts';

const DAY_MS = 86_400_000;
/** A Saturday; 35 weeks on, 21 November 2026, is the last: the record ends on a fixed day. */
export const FIRST_DAY_MS = Date.UTC(2026, 2, 21);
const WEEKS = 35;
/** Nobody trains in these days, first and last. */
const HOLIDAY = { from: '2026-08-08', to: '2026-08-14' };

/** One session that will be held. */
export interface Outing {
  readonly dog: DemoDog;
  readonly ground: DemoGround;
  readonly startMs: number;
  readonly week: number;
  readonly weather: Weather;
}

const within = (dayMs: number, { from, to }: { readonly from: string; readonly to: string }): boolean =>
  dayMs >= Date.parse(from) && dayMs <= Date.parse(to);

/** Whether a dog may work on a day. */
export const isWorking = (dog: DemoDog, dayMs: number): boolean =>
  !within(dayMs, HOLIDAY) && !dog.layOffs.some((layOff) => within(dayMs, layOff));

/** Mean air temperature of each month on low ground in the middle of England, rounded (common knowledge, no source). */
const MEAN_C = [4, 5, 7, 9, 13, 16, 18, 18, 15, 11, 7, 5] as const;

function weatherOf(dayMs: number, dice: Dice): Weather {
  const meanC = MEAN_C[new Date(dayMs).getUTCMonth()] ?? 10;
  const airC = rounded(Math.min(26, meanC + 2 + 3 * dice.bell()));
  const windMPerS = rounded(Math.max(0, 3 + 1.8 * dice.bell()), 1);
  const humidityPct = rounded(Math.min(98, Math.max(35, 74 - airC + 9 * dice.bell())));
  return { airC, humidityPct, windMPerS, windFromDeg: dice.whole(0, 35) * 10 };
}

/** Draws from a list where each item has its number of turns. */
function byTurns<Item extends { readonly turns: number }>(items: readonly Item[], dice: Dice): Item {
  const [first] = items;
  if (first === undefined) throw new RangeError('items: expected at least one, got none');
  let left = dice.unit() * items.reduce((sum, { turns }) => sum + turns, 0);
  for (const item of items) {
    left -= item.turns;
    if (left < 0) return item;
  }
  return first;
}

/** Days of a week, from Saturday 0: the weekend, and an evening or two. */
const DAY_CHOICES = [
  [0, 3],
  [1, 4],
  [0, 2, 4],
  [0, 1, 4],
  [1, 3, 5],
  [0, 1, 3, 5],
] as const;

function dogFor(dayMs: number, isLast: boolean, dice: Dice): DemoDog | undefined {
  const working = DOGS.filter((dog) => isWorking(dog, dayMs));
  if (working.length === 0) return undefined;
  return isLast ? working[0] : byTurns(working, dice);
}

/** Every session of the eight months in time order, two to four a week, the last on the last day. */
export function outings(dice: Dice): readonly Outing[] {
  const list: Outing[] = [];
  for (let week = 0; week <= WEEKS; week += 1) {
    const days = week === WEEKS ? [0] : dice.pick(DAY_CHOICES);
    for (const day of days) {
      const dayMs = FIRST_DAY_MS + (week * 7 + day) * DAY_MS;
      const dog = dogFor(dayMs, week === WEEKS, dice);
      const weather = weatherOf(dayMs, dice);
      const grounds = GROUNDS.filter(({ fromWeek }) => fromWeek <= week);
      const ground = byTurns(grounds, dice);
      const isWeekend = day < 2;
      const startHour = isWeekend ? 9 : 17;
      const startMs = dayMs + startHour * 3_600_000 + dice.whole(0, 45) * 60_000;
      if (dog !== undefined) list.push({ dog, ground, startMs, week, weather });
    }
  }
  return list;
}

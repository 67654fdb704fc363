import type { Dice } from './dice.ts';

/** One day of work of one dog. */
export interface Day {
  readonly day: number;
  readonly ground: number;
  readonly reps: number;
}

export interface CalendarShape {
  readonly sessions: number;
  readonly firstDay: number;
  readonly grounds: number;
  readonly reps: readonly [least: number, most: number];
}

const HOME_SHARE = 0.55;
const LAY_OFF_CHANCE = 0.035;

/** Two to four sessions a week, now and then a lay-off of three to ten weeks, more than half of them on the home ground. */
export function calendarOf(dice: Dice, { sessions, firstDay, grounds, reps }: CalendarShape): Day[] {
  const days: Day[] = [];
  let day = firstDay;
  for (let n = 0; n < sessions; n++) {
    const away = grounds > 1 && !dice.chance(HOME_SHARE);
    const ground = away ? 1 + dice.below(grounds - 1) : 0;
    days.push({ day, ground, reps: reps[0] + dice.below(reps[1] - reps[0] + 1) });
    day += dice.chance(LAY_OFF_CHANCE) ? 21 + dice.below(50) : 1 + dice.below(4);
  }
  return days;
}

import { SEASON, type SessionDays } from './season-goal.ts';

const DAYS = 7;

/**
 * So many sessions a week, evenly apart; where the first falls is drawn. 0 is a lay-off.
 * @throws RangeError unless it is a number of 0 and more
 */
export function evenly(perWeek: number): SessionDays {
  if (!(perWeek >= 0 && perWeek < Infinity))
    throw new RangeError(`perWeek: expected a number >= 0, got ${perWeek}`);
  return (random, weeks) => {
    const first = random.uniform();
    const count = perWeek === 0 ? 0 : Math.ceil(weeks * perWeek - first);
    return Array.from({ length: Math.max(0, count) }, (_, n) => ((n + first) * DAYS) / perWeek);
  };
}

/**
 * Weeks as the record had them: a future takes a week of the record and goes on with the weeks that followed it, round to the
 * oldest again, now and then with another (stationary bootstrap, Politis1994), so that lay-offs come as long and as often as they
 * came. `sessionsByWeek` oldest first.
 * @throws RangeError unless there is a week, and each has a whole number of sessions
 */
export function asBefore(sessionsByWeek: readonly number[]): SessionDays {
  if (sessionsByWeek.length === 0 || sessionsByWeek.some((n) => !Number.isSafeInteger(n) || n < 0))
    throw new RangeError(`sessionsByWeek: expected whole numbers >= 0, got [${sessionsByWeek}]`);
  return (random, weeks) => {
    const days: number[] = [];
    let at = 0;
    for (let week = 0; week < weeks; week++) {
      const jumps = week === 0 || random.uniform() < SEASON.jumpChance;
      at = jumps ? Math.floor(random.uniform() * sessionsByWeek.length) : (at + 1) % sessionsByWeek.length;
      const sessions = sessionsByWeek[at]!;
      for (let n = 0; n < sessions; n++) days.push(DAYS * (week + (n + random.uniform()) / sessions));
    }
    return days;
  };
}

import type { SeasonForecast } from '@sedgeline/engine/season';

/** The lines of the weeks to come as paths in a plot of 1 by 1, chance 1 at the top. */
export interface PlacedSeason {
  readonly ready: string;
  readonly line: string;
  readonly band: string;
  /** Where a week stands, as a share of the width. */
  readonly xOf: (week: number) => number;
}

const n = (value: number): string => String(Math.round(value * 10_000) / 10_000);

/** Places a forecast's weeks from 0, which is now, to its last. A forecast of now alone is drawn as level lines. */
export function placeSeason(weeks: SeasonForecast['weeks']): PlacedSeason {
  const last = weeks.at(-1)?.week ?? 0;
  const xOf = (week: number): number => (last === 0 ? 0 : Math.min(1, Math.max(0, week / last)));
  const ends = weeks.length === 1 ? [...weeks, ...weeks] : weeks;
  const xAt = (at: number, week: number): number => (weeks.length === 1 ? at : xOf(week));
  const path = (of: (week: (typeof weeks)[number]) => number): string[] =>
    ends.map((week, at) => `${n(xAt(at, week.week))} ${n(1 - of(week))}`);
  const open = (points: readonly string[]): string => (points.length === 0 ? '' : `M${points.join('L')}`);
  const high = path(({ interval90 }) => interval90[1]);
  const low = path(({ interval90 }) => interval90[0]).toReversed();
  return {
    ready: open(path(({ probabilityReady }) => probabilityReady)),
    line: open(path(({ chance }) => chance)),
    band: high.length === 0 ? '' : `M${[...high, ...low].join('L')}Z`,
    xOf,
  };
}

/** Weeks at which the axis has a figure: every so-manieth, at most seven of them, the first and last among them. */
export function weekTicks(last: number): number[] {
  const step = [1, 2, 4, 8, 13].find((one) => last / one <= 7) ?? Math.ceil(last / 6);
  const ticks = Array.from({ length: Math.floor(last / step) + 1 }, (_, at) => at * step);
  const end = ticks.at(-1) ?? 0;
  if (end === last) return ticks;
  return last - end < step * 0.75 ? [...ticks.slice(0, -1), last] : [...ticks, last];
}

import type { SeasonForecast } from '@sedgeline/engine/season';

/** A forecast and what came of it: the first week in which the truth had every ask at its wanted chance; `null` past the horizon. */
export interface ForecastOutcome {
  readonly forecast: Pick<SeasonForecast, 'weeks' | 'readyInWeeks'>;
  readonly truth: number | null;
}

/** First week in which every chance is at its wanted one; `null` for none. `chances` by week, then by ask. */
export function readyWeek(chances: readonly (readonly number[])[], wanted: readonly number[]): number | null {
  const week = chances.findIndex((asks) => asks.every((chance, n) => chance >= wanted[n]!));
  return week < 0 ? null : week;
}

/** Whether the stated interval, p10 to p90 with both ends, holds the truth; `null` is past the horizon on either side. */
export function holds({ forecast, truth }: ForecastOutcome): boolean {
  const { p10, p90 } = forecast.readyInWeeks;
  const week = truth ?? Infinity;
  return week >= (p10 ?? Infinity) && week <= (p90 ?? Infinity);
}

/**
 * Where the truth lies in what was stated, 0..1, uniform if the statement is right: the weeks are whole, so a place within the week's
 * own share is drawn (randomised probability integral transform, Smith1985).
 */
export function placeOf({ forecast: { weeks }, truth }: ForecastOutcome, uniform: number): number {
  const upTo = (week: number) => (week < 0 ? 0 : weeks[week]!.probabilityReady);
  const below = truth === null ? upTo(weeks.length - 1) : upTo(truth - 1);
  const above = truth === null ? 1 : upTo(truth);
  return below + (above - below) * uniform;
}

/** Coverage of many forecasts. */
export interface Coverage {
  readonly forecasts: number;
  /** Those whose interval holds the truth. */
  readonly held: number;
  /** Those in the middle 80 in 100 of what was stated, the ends of whole weeks drawn. */
  readonly middle: number;
  /** Of those outside: the dog was ready sooner than was thought. */
  readonly sooner: number;
  readonly later: number;
  /** Truths within the horizon. */
  readonly reached: number;
}

export function coverageOf(outcomes: readonly ForecastOutcome[], uniform: () => number): Coverage {
  const places = outcomes.map((one) => placeOf(one, uniform()));
  return {
    forecasts: outcomes.length,
    held: outcomes.filter(holds).length,
    middle: places.filter((place) => place >= 0.1 && place <= 0.9).length,
    sooner: places.filter((place) => place < 0.1).length,
    later: places.filter((place) => place > 0.9).length,
    reached: outcomes.filter(({ truth }) => truth !== null).length,
  };
}

/** P(Bin(n, p) <= k), summed out. */
export function binomialCdf(k: number, n: number, p: number): number {
  let chance = (1 - p) ** n;
  let total = 0;
  for (let j = 0; j <= k; j++) {
    total += chance;
    chance *= ((n - j) / (j + 1)) * (p / (1 - p));
  }
  return Math.min(1, total);
}

/** Wanted: 80 in 100 within. A count that honest forecasts would fall short of once in a thousand runs is too few. */
export const WANTED = { share: 0.8, unlikely: 0.001 } as const;

/** Whether the middle holds as much as an honest statement would. */
export const isCovered = ({ middle, forecasts }: Coverage): boolean =>
  binomialCdf(middle, forecasts, WANTED.share) > WANTED.unlikely;

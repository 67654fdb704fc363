import type { GoalForecastView } from './forecast-of-goal.ts';

/**
 * The answer of `forecast`: the contract's fields, and beside them whose goal it is, the pace that is played, how each ask stands
 * now and how likely the goal is reached by its date. Where it can't be said yet `cantSay` says why, there are no weeks and no
 * quantiles, and `now` is null.
 */
export function forecastAnswer(view: GoalForecastView) {
  const { goal, dog, name, asks } = view;
  const head = { goal, dog, name, at: new Date(view.atMs).toISOString() };
  if (view.kind === 'cant-say') return { ...head, cantSay: view.why, ...NOTHING, asks };
  const { now, weeks, readyInWeeks, first } = view.forecast;
  return { ...head, perWeek: view.perWeek, now, weeks, readyInWeeks, first, by: view.by, asks };
}

const NOTHING = {
  perWeek: null,
  now: null,
  weeks: [],
  readyInWeeks: { p10: null, p50: null, p90: null },
  first: [],
  by: null,
} as const;

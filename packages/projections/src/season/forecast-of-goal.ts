import { type Ask, type Interval90, type Skill, shippedPriors } from '@sedgeline/engine/ability';
import { seededRandom } from '@sedgeline/engine/numeric';
import {
  asBefore,
  evenly,
  forecastGoal,
  gainShares,
  SEASON,
  type SeasonForecast,
} from '@sedgeline/engine/season';
import { readDate } from '@sedgeline/journal';
import type { GoalRecord, TrainingRecord } from '../record/training-record.ts';
import { KNOWN_LEGS } from '../standing/standing.ts';
import type { AbilityTimeline } from '../timeline/ability-timeline.ts';
import { ownPriors } from '../timeline/own-figures.ts';
import { ownPace } from './own-pace.ts';

const WEEK_MS = 7 * 86_400_000;
/** A goal's date is looked ahead to where it lies within a year. */
const WEEKS_AT_MOST = 52;

export interface ForecastOptions {
  readonly atMs: number;
  readonly seed: number;
  /** Sessions a week; the record's own weeks when `null`. */
  readonly perWeek: number | null;
}

/** One ask of a goal as it stands now. */
export interface GoalAskView {
  readonly skill: Skill;
  readonly ask: Ask;
  readonly wanted: number;
  /** Chance of good now. */
  readonly chance: number;
  readonly interval90: Interval90;
  readonly legs: number;
  /** False under ten legs at the skill: not known yet. */
  readonly known: boolean;
}

interface GoalView {
  readonly goal: string;
  readonly dog: string;
  readonly dogName: string;
  readonly name: string;
  readonly atMs: number;
  readonly asks: readonly GoalAskView[];
}

/** When a goal may be reached, or why that can't be said yet. */
export type GoalForecastView =
  | (GoalView & { readonly kind: 'cant-say'; readonly why: 'no-asks' | 'no-session' })
  | (GoalView & {
      readonly kind: 'forecast';
      /** Sessions a week that are played: as given, or the mean of the record's own weeks. */
      readonly perWeek: number;
      readonly isOwnPace: boolean;
      readonly forecast: SeasonForecast;
      /** The goal's date, if it is still to come and within a year: how likely the goal is reached by then. */
      readonly by: { readonly date: string; readonly week: number; readonly probabilityReady: number } | null;
    });

/** Whole weeks from a moment to a date; `null` where it has passed, or is a year off and more. */
function weeksTo(date: string | null, atMs: number): number | null {
  const reading = date === null ? null : readDate(date);
  if (reading === null || !reading.ok) return null;
  const weeks = Math.floor((reading.ms - atMs) / WEEK_MS);
  return weeks >= 0 && weeks <= WEEKS_AT_MOST ? weeks : null;
}

/**
 * Forecast of one goal of the record: the engine's particles (`forecastGoal`), from the walk's state with the kennel's own priors
 * and correction, at the pace told or at the record's own. Asks are put as in `chance`: fresh, on known ground, the day's form unknown.
 * @throws RangeError for a pace below 0 or that is no number, or a seed that is no whole number of 0 and more
 */
export function forecastOfGoal(
  record: TrainingRecord,
  timeline: AbilityTimeline,
  goal: GoalRecord,
  { atMs, seed, perWeek }: ForecastOptions,
): GoalForecastView {
  const { dog } = goal;
  const at = { session: null, ground: null, atMs, repsSinceBreak: 0 };
  const questions = goal.asks.map(({ skill, ask }) => timeline.question(dog, skill, ask, at, record));
  const asks = questions.map((question, n): GoalAskView => {
    const { chance, interval90 } = timeline.filter.forecast(question);
    const legs = timeline.walk(dog).legs[question.skill] ?? 0;
    const { skill, ask } = question;
    const wanted = goal.asks[n]!.chance;
    return {
      skill,
      ask,
      wanted,
      chance: chance.good,
      interval90: interval90.good,
      legs,
      known: legs >= KNOWN_LEGS,
    };
  });
  const dogName = record.dogs.get(dog)?.name ?? dog;
  const view: GoalView = { goal: goal.goal, dog, dogName, name: goal.name, atMs, asks };
  if (asks.length === 0) return { ...view, kind: 'cant-say', why: 'no-asks' };
  const { sessionsByWeek, share } = ownPace(record, dog, atMs);
  if (sessionsByWeek.length === 0) return { ...view, kind: 'cant-say', why: 'no-session' };
  const byWeek = weeksTo(goal.by, atMs);
  const { own } = timeline;
  const priors = ownPriors(own) ?? shippedPriors;
  const legs = timeline.stated.map(({ result }) => result).filter((one) => one.dog === dog);
  const forecast = forecastGoal(
    {
      snapshot: timeline.filter.snapshot(),
      priors,
      recalibration: own.recalibration,
      dog,
      asks: questions.map(({ skill, ask, context }, n) => ({
        skill,
        ask,
        context,
        wanted: goal.asks[n]!.chance,
      })),
      atMs,
      work: {
        sessionDays: perWeek === null ? asBefore(sessionsByWeek) : evenly(perWeek),
        share,
        gains: gainShares(legs, priors),
      },
      weeks: Math.max(SEASON.horizonWeeks, byWeek ?? 0),
    },
    seededRandom(seed),
  );
  return {
    ...view,
    kind: 'forecast',
    perWeek: perWeek ?? sessionsByWeek.reduce((sum, n) => sum + n, 0) / sessionsByWeek.length,
    isOwnPace: perWeek === null,
    forecast,
    by:
      byWeek === null || goal.by === null
        ? null
        : { date: goal.by, week: byWeek, probabilityReady: forecast.weeks[byWeek]!.probabilityReady },
  };
}

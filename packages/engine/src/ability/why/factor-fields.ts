import { easyAsk } from '../ask-range.ts';
import type { DemandName } from '../demands.ts';
import type { AskField } from '../harder-fields.ts';
import type { LegContext, LegQuestion } from '../leg.ts';

/** Where a demand comes from: a field of the ask, or something the program itself knows of the moment. */
type FactorSource = { readonly ask: AskField } | { readonly context: keyof LegContext } | null;

/** One row for each demand; `null` for the product of two, which has no field of its own. */
const SOURCES: Readonly<Record<DemandName, FactorSource>> = {
  distance: { ask: 'distanceM' },
  late: { ask: 'wayFraction' },
  temptation: { ask: 'temptation' },
  handler: { ask: 'handlerPlace' },
  cover: { ask: 'cover' },
  distraction: { ask: 'distraction' },
  obstacle: { ask: 'obstacle' },
  turn: { ask: 'turnDeg' },
  cast: { ask: 'castM' },
  others: { ask: 'otherDummies' },
  narrow: { ask: 'gapDeg' },
  blind: { ask: 'blind' },
  wait: { ask: 'waitS' },
  wind: { ask: 'windAcrossMPerS' },
  crew: { ask: 'crew' },
  newness: { context: 'earlierSessionsOnGround' },
  tired: { context: 'repsSinceBreak' },
  lapse: { context: 'daysSinceWorked' },
  'stops-running': { context: 'stopsRunning' },
  'late-temptation': null,
  young: { context: 'ageMonths' },
};

/** A value of an ask or of the moment; `null` where there is none (no ground named, no birth date, a product). */
export type FactorValue = number | string | boolean | null;

/** The field a factor comes from, `null` for the product of two. */
export function fieldOf(factor: DemandName): AskField | keyof LegContext | null {
  const source = SOURCES[factor];
  if (source === null) return null;
  return 'ask' in source ? source.ask : source.context;
}

/** A factor's value in a leg as it was asked; an absent field stands at its easy end. */
export function factorValue(factor: DemandName, { skill, ask, context }: LegQuestion): FactorValue {
  const source = SOURCES[factor];
  if (source === null) return null;
  return 'ask' in source ? (ask[source.ask] ?? easyAsk(skill)[source.ask]) : context[source.context];
}

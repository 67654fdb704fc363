import { type Ask, HANDLER_PLACES, type Skill, TEMPTATIONS } from './ask.ts';
import { checkAsk, checkContext } from './ask-range.ts';
import type { LegContext } from './leg.ts';

/** The demands of an ask, in the order of every vector of weights. */
export const DEMANDS = [
  'distance',
  'late',
  'temptation',
  'handler',
  'cover',
  'distraction',
  'obstacle',
  'turn',
  'cast',
  'others',
  'narrow',
  'blind',
  'wait',
  'wind',
  'crew',
  'newness',
  'tired',
  'lapse',
  'stops-running',
  'late-temptation',
  'young',
] as const;
export type DemandName = (typeof DEMANDS)[number];

// Steps of the scales: our judgement, 2026 (common practice, no source); about 1 is one ordinary step of the trade.
const TEMPTATION_STEP = [0, 0.5, 1.3, 2, 2.6, 3.5] as const;
const HANDLER_STEP = [0, 1, 1.5] as const;
const STOPS_RUNNING_SKILLS: ReadonlySet<Skill> = new Set<Skill>(['line', 'pickup', 'mark']);

/** Doublings beyond 5 m. */
function doublings(metres: number | undefined): number {
  return metres === undefined || metres <= 5 ? 0 : Math.log2(metres / 5);
}

/** Demand of a lay-off of so many days, 0 and more. */
export function lapseDemand(daysSinceWorked: number): number {
  return Math.log2(1 + daysSinceWorked / 7);
}

/** Demand of an age in months, 0 where it is not known. */
export function youngDemand(ageMonths: number | null): number {
  return ageMonths === null ? 0 : Math.min(1.5, Math.max(0, 12 - ageMonths) / 6);
}

function turnDemand(skill: Skill, turnDeg: number | undefined): number {
  if (turnDeg === undefined) return 0;
  if (skill === 'cast-back') return (180 - turnDeg) / 45;
  return skill === 'cast-left' || skill === 'cast-right' ? Math.abs(turnDeg - 90) / 45 : 0;
}

/**
 * Demands of a leg, `x_j >= 0`: 0 at the easy end, about 1 for one ordinary step of the trade. Log scales for
 * distance, cast, others, wait, crew and lapse; `newness = 1/(1 + earlier sessions on this ground)`; the order
 * is `DEMANDS`. Dimensionless. `out` (length 21) is filled and returned when given.
 * @throws RangeError naming the first field outside its range in the journal's contract
 */
export function demandVector(
  skill: Skill,
  ask: Ask,
  context: LegContext,
  out: Float64Array = new Float64Array(DEMANDS.length),
): Float64Array {
  checkAsk(ask);
  checkContext(context);
  const late = (Math.max(ask.wayFraction ?? 0.1, 0.1) - 0.1) / 0.3;
  const temptation = ask.temptation === undefined ? 0 : TEMPTATION_STEP[TEMPTATIONS.indexOf(ask.temptation)]!;
  const handler =
    ask.handlerPlace === undefined ? 0 : HANDLER_STEP[HANDLER_PLACES.indexOf(ask.handlerPlace)]!;
  const sessions = context.earlierSessionsOnGround;
  const age = context.ageMonths;
  out[0] = doublings(ask.distanceM);
  out[1] = late;
  out[2] = temptation;
  out[3] = handler;
  out[4] = ask.cover ?? 0;
  out[5] = ask.distraction ?? 0;
  out[6] = ask.obstacle ?? 0;
  out[7] = turnDemand(skill, ask.turnDeg);
  out[8] = doublings(ask.castM);
  out[9] = Math.log2(1 + (ask.otherDummies ?? 0));
  out[10] = Math.max(0, 60 - (ask.gapDeg ?? 180)) / 30;
  out[11] = ask.blind === true ? 1 : 0;
  out[12] = Math.log2(1 + (ask.waitS ?? 0) / 5);
  out[13] = (ask.windAcrossMPerS ?? 0) / 5;
  out[14] = Math.log2(1 + (ask.crew ?? 0));
  out[15] = sessions === null ? 0 : 1 / (1 + sessions);
  out[16] = Math.max(0, context.repsSinceBreak - 8) / 4;
  out[17] = lapseDemand(context.daysSinceWorked);
  out[18] = STOPS_RUNNING_SKILLS.has(skill) ? Math.min(5, context.stopsRunning) : 0;
  out[19] = late * temptation;
  out[20] = youngDemand(age);
  return out;
}

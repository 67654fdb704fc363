import { CARE_JUDGED, type Heat } from '../../weather/index.ts';
import type { NextInput } from '../next/session-state.ts';
import { idleDays, isAfterLayOff } from './holding-day.ts';
import type { PlanCaution, PlanCautionCode, PlanRequest } from './plan.ts';
import type { PlanInput } from './plan-input.ts';
import { YOUNG_MONTHS } from './plan-limits.ts';

/** What counts as a lay-off, little time and little known (our judgement, 2026). */
const FEW_REPS = 4;
const FEW_LEGS = 10;

export interface CautionFigures {
  readonly request: PlanRequest;
  readonly known: NextInput;
  readonly heat: Heat;
  readonly reps: number;
  readonly hasStops: boolean;
  /** Kit left something out, or everything. */
  readonly lacksKit: boolean;
  readonly rest: PlanInput['rest'];
  /** Locked reps that could not be had. */
  readonly locksLetGo: number;
}

/** What the handler should have in mind for this session, the weightiest first. */
export function cautionsOf(figures: CautionFigures): PlanCaution[] {
  const { request, known, heat, reps, hasStops, lacksKit, locksLetGo, rest } = figures;
  const { airC, humidityPct } = request.weather ?? {};
  const { ageMonths } = known;
  const legs = known.worked.reduce((so, row) => so + row.legs, 0);
  const is = (code: PlanCautionCode, when: boolean, more: Omit<PlanCaution, 'code'> = {}): PlanCaution[] =>
    when ? [{ code, ...more }] : [];
  return [
    ...is('on-rest', rest !== undefined, { count: rest?.daysLeft ?? undefined }),
    ...is('too-hot-to-work', heat === 'none', { airC, humidityPct }),
    ...is('heat', heat !== 'fine' || (airC ?? 0) >= CARE_JUDGED.warmC, { airC, humidityPct }),
    ...is('joints', ageMonths !== null && ageMonths < YOUNG_MONTHS, { ageMonths: ageMonths ?? undefined }),
    ...is('age-not-known', ageMonths === null),
    ...is('nothing-known-yet', legs < FEW_LEGS, { count: legs }),
    ...is('long-lay-off', isAfterLayOff(known), { count: Math.floor(idleDays(known)) }),
    ...is('new-ground', known.earlierSessionsOnGround === 0),
    ...is('little-time', heat === 'fine' && rest === undefined && !lacksKit && reps < FEW_REPS, {
      count: reps,
    }),
    ...is('little-kit', lacksKit),
    ...is('locks-let-go', locksLetGo > 0, { count: locksLetGo }),
    ...is('whistle', hasStops),
    { code: 'ask' },
  ];
}

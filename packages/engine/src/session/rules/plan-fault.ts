import type { Skill } from '../../ability/index.ts';

export const PLAN_FAULT_CODES = [
  'numbers-out-of-order',
  'no-legs',
  'ask-out-of-range',
  'chance-not-stated',
  'chance-differs',
  'side-differs',
  'stop-off-its-line',
  'fall-back-not-easier',
  'break-out-of-place',
  'minutes-not-stated',
  'nothing-lies-there',
  'others-differ',
  'gap-differs',
  'errand-without-thing',
  'lifts-what-is-not-there',
  'put-out-twice',
  'lies-out-unlaid',
  'left-out-of-the-layout',
  'moved-unsaid',
  'walk-unsaid',
  'more-than-the-kit',
] as const;
export type PlanFaultCode = (typeof PLAN_FAULT_CODES)[number];

/** What makes a plan no plan, whatever the rules say: it contradicts itself, the record or the ground. */
export interface PlanFault {
  readonly code: PlanFaultCode;
  /** Number `n` of the rep, or `null` for the plan as a whole. */
  readonly rep: number | null;
  readonly skill?: Skill | undefined;
  readonly thing?: string | undefined;
  readonly is?: number | undefined;
  readonly should?: number | undefined;
}

import type { Ask, Skill } from '../../ability/index.ts';
import type { PlannedRep } from '../next/next-answer.ts';
import type { PlanOrders } from './plan-orders.ts';
import type { RuleVerdict } from './rule-verdict.ts';

/** What a handler asks of a plan (contract, "A plan"). Lengths in metres, minutes in minutes. */
export interface PlanRequest {
  readonly dog: string;
  readonly minutes: number;
  readonly ground?: string | undefined;
  /** A drawn layout to be worked on. */
  readonly layout?: string | undefined;
  /** The skills to be worked; left out: whatever the dog needs. */
  readonly skills?: readonly Skill[] | undefined;
  /** What there is to put out; left out: as much as is wanted. */
  readonly kit?: PlanKit | undefined;
  readonly weather?: PlanWeather | undefined;
  readonly focus?: { readonly skill: Skill; readonly ask?: Ask | undefined } | undefined;
  /** The moment of the session, ISO 8601; goes before the moment the answer is asked for. */
  readonly notBefore?: string | undefined;
}

export interface PlanKit {
  readonly posts: number;
  readonly dummies: number;
}

/** The day, as far as it is known. */
export interface PlanWeather {
  readonly airC?: number | undefined;
  readonly humidityPct?: number | undefined;
  readonly windMPerS?: number | undefined;
  readonly windFromDeg?: number | undefined;
}

export interface PlanBreak {
  /** The number `n` of the rep after which it comes. */
  readonly afterRep: number;
  readonly minutes: number;
}

/** What the handler should have in mind: a stable code and its figures; the sentence is made at the edge. */
export interface PlanCaution {
  readonly code: PlanCautionCode;
  readonly airC?: number | undefined;
  readonly humidityPct?: number | undefined;
  readonly ageMonths?: number | undefined;
  readonly count?: number | undefined;
}

/** The first seven are the reminders of the catalogue of words; the others say what this plan could not know or have. */
export const PLAN_CAUTION_CODES = [
  'heat',
  'joints',
  'whistle',
  'launched',
  'livestock',
  'roads',
  'ask',
  'too-hot-to-work',
  'age-not-known',
  'nothing-known-yet',
  'long-lay-off',
  'new-ground',
  'little-time',
  'little-kit',
  'locks-let-go',
  'on-rest',
] as const;
export type PlanCautionCode = (typeof PLAN_CAUTION_CODES)[number];

/**
 * A session in the order in which it is worked. Reps are numbered 1, 2, 3 ... A thing that lies out keeps its name
 * (`thing`) from rep to rep until it is picked up or lifted, and the things that stay keep their distances from each
 * other; each rep's `before` says everything that is put out, taken up or walked since the rep before it. A dummy that a
 * rep picks up is gone after it.
 */
export interface Plan {
  readonly dog: string;
  readonly seed: number;
  /** The minutes that were asked for. */
  readonly minutes: number;
  readonly reps: readonly PlannedRep[];
  readonly breaks: readonly PlanBreak[];
  readonly rules: readonly RuleVerdict[];
  readonly cautions: readonly PlanCaution[];
  /** Minutes it takes, laying, walking and breaks among them. */
  readonly minutesExpected: { readonly p50: number; readonly p90: number };
  readonly order: PlanOrders;
}

import {
  type Plan,
  type PlanCaution,
  type PlannedLeg,
  type PlanRequest,
  planSession,
  type Reason,
  type RuleVerdict,
} from '@sedgeline/engine/session';
import { readTime } from '@sedgeline/journal';
import type { KennelOfFacts } from '../kennel-of-facts.ts';
import { planInput } from './plan-input.ts';

/** Says the parts of a plan in words: the one place where figures become sentences is handed in by the edge. */
export interface PlanSay {
  readonly rep: (reasons: readonly Reason[], legs: readonly PlannedLeg[]) => string;
  readonly caution: (caution: PlanCaution) => string;
  readonly rule: (verdict: RuleVerdict) => string;
}

/**
 * A plan for a request, as the record stands. `atMs` is the moment of the answer, before which the request's `notBefore` goes.
 * The request's layout, where the record has it, gives the wind that the request does not tell, and the kit that stands there.
 * @throws RangeError for a dog or a layout that no fact names
 */
export function planFor(kennel: KennelOfFacts, request: PlanRequest, atMs: number, seed: number): Plan {
  const { record } = kennel;
  if (!record.dogs.has(request.dog)) {
    throw new RangeError(`dog: expected one of the record's, got ${request.dog}`);
  }
  const moment = request.notBefore === undefined ? null : readTime(request.notBefore);
  const planned = onLayout(kennel, request);
  const input = planInput(record, kennel.timeline(), planned, moment?.ok ? moment.ms : atMs, seed);
  return planSession(input);
}

function onLayout({ record }: KennelOfFacts, request: PlanRequest): PlanRequest {
  if (request.layout === undefined) return request;
  const layout = record.layouts.get(request.layout);
  if (layout === undefined)
    throw new RangeError(`layout: expected one of the record's, got ${request.layout}`);
  const { windFromDeg, windMPerS, things } = layout;
  const count = (kind: 'post' | 'dummy') => things.filter((thing) => thing.kind === kind).length;
  return {
    ...request,
    kit: request.kit ?? { posts: count('post'), dummies: count('dummy') },
    weather: { windFromDeg, windMPerS, ...request.weather },
  };
}

/** The answer of `plan`, with its sentences. */
export function planAnswer(plan: Plan, say: PlanSay) {
  return {
    ...plan,
    reps: plan.reps.map((rep) => ({ ...rep, sentence: say.rep(rep.reasons, rep.legs) })),
    rules: plan.rules.map((verdict) => ({ ...verdict, sentence: say.rule(verdict) })),
    cautions: plan.cautions.map((caution) => ({ ...caution, sentence: say.caution(caution) })),
  };
}

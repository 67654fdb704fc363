import {
  editPlan,
  judgePlan,
  type KeptRep,
  type Plan,
  type PlanCaution,
  type PlanEdit,
  type PlanInput,
  type PlannedLeg,
  type PlanRequest,
  planSession,
  type Reason,
  type RuleVerdict,
} from '@sedgeline/engine/session';
import { readTime } from '@sedgeline/journal';
import type { KennelOfFacts } from '../kennel-of-facts.ts';
import { isAskedAlike } from '../record/asked-chain.ts';
import { planFacts } from './plan-facts.ts';
import { planInput } from './plan-input.ts';

/** Says the parts of a plan in words: the one place where figures become sentences is handed in by the edge. */
export interface PlanSay {
  readonly rep: (reasons: readonly Reason[], legs: readonly PlannedLeg[]) => string;
  readonly caution: (caution: PlanCaution) => string;
  readonly rule: (verdict: RuleVerdict) => string;
}

/** The moment a plan is for, and which chance. */
export interface PlanMoment {
  readonly atMs: number;
  readonly seed: number;
}

/**
 * A plan for a request, as the record stands, judged by the rules. `atMs` is the moment of the answer, before which the request's
 * `notBefore` goes. The request's layout, where the record has it, gives the wind that the request does not tell, and the kit that
 * stands there. `kept` are reps that the handler locked.
 * @throws RangeError for a dog or a layout that no fact names
 */
export function planFor(
  kennel: KennelOfFacts,
  request: PlanRequest,
  { atMs, seed }: PlanMoment,
  kept: readonly KeptRep[] = [],
): Plan {
  const input = inputFor(kennel, request, { atMs, seed }, kept);
  return judged(planSession(input), input);
}

/**
 * A plan with one change of the handler's, every rep stated anew and the whole judged by the rules (`editPlan`); `null` where
 * there is nothing else to be asked there. `request` and `atMs` are those the plan was made with.
 * @throws RangeError as `planFor` does, and for a change that names no rep or asks what is no ask
 */
export function editedPlan(
  kennel: KennelOfFacts,
  request: PlanRequest,
  plan: Plan,
  edit: PlanEdit,
  atMs: number,
): Plan | null {
  const input = inputFor(kennel, request, { atMs, seed: plan.seed });
  const edited = editPlan(input, plan, edit);
  return edited === null ? null : judged(edited, input);
}

function inputFor(
  kennel: KennelOfFacts,
  request: PlanRequest,
  { atMs, seed }: PlanMoment,
  kept: readonly KeptRep[] = [],
): PlanInput {
  const { record } = kennel;
  if (!record.dogs.has(request.dog)) {
    throw new RangeError(`dog: expected one of the record's, got ${request.dog}`);
  }
  const moment = request.notBefore === undefined ? null : readTime(request.notBefore);
  const planned = onLayout(kennel, request);
  return planInput(record, kennel.timeline(), planned, moment?.ok ? moment.ms : atMs, seed, kept);
}

/** What is said of a plan's rules is the judge's word, not the planner's. */
function judged(plan: Plan, input: PlanInput): Plan {
  const locked = (input.kept ?? []).flatMap(({ legs }) =>
    plan.reps.filter((rep) => isAskedAlike(rep.legs, legs)).map(({ n }) => n),
  );
  return { ...plan, rules: judgePlan(plan, planFacts(input, locked)) };
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

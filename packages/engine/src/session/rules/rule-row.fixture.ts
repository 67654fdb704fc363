import type { Plan } from '../plan/plan.ts';
import type { RuleMend, RuleName, RuleWhy } from '../plan/rule-verdict.ts';
import type { PlanFacts } from './plan-facts.ts';

/** What a row expects of a rule that is not kept. */
export interface NotKept {
  readonly why: Partial<RuleWhy>;
  readonly mend?: Partial<RuleMend>;
  readonly could?: boolean;
}

/** A plan made by hand and what one rule says of it: `null` for kept. Facts are the grown dog's unless they are given. */
export type RuleRow = readonly [
  rule: RuleName,
  name: string,
  plan: Plan,
  expected: NotKept | null,
  facts?: PlanFacts,
];

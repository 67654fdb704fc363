import type { Plan } from '../plan/plan.ts';
import { RULES, type RuleName, type RuleVerdict } from '../plan/rule-verdict.ts';

/** What is wrong with what a plan says of one rule. */
export interface FalseClaim {
  readonly rule: RuleName;
  readonly code:
    | 'claims-what-it-breaks'
    | 'owns-up-to-what-it-keeps'
    | 'could-have-been-kept'
    | 'says-nothing';
}

/**
 * Holds what a plan says of its rules against their verdicts. A plan may not claim a rule that it breaks, nor own up to a
 * rule that it keeps or that could have been kept, nor leave one out.
 */
export function falseClaims(plan: Plan, verdicts: readonly RuleVerdict[]): FalseClaim[] {
  return RULES.flatMap((rule): FalseClaim[] => {
    const said = plan.rules.filter((row) => row.rule === rule);
    const verdict = verdicts.find((row) => row.rule === rule);
    if (said.length !== 1 || said[0] === undefined || verdict === undefined) {
      return [{ rule, code: 'says-nothing' }];
    }
    if (said[0].kept) return verdict.kept ? [] : [{ rule, code: 'claims-what-it-breaks' }];
    if (verdict.kept) return [{ rule, code: 'owns-up-to-what-it-keeps' }];
    return verdict.couldHaveBeenKept === true ? [{ rule, code: 'could-have-been-kept' }] : [];
  });
}

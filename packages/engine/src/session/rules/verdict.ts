import type { RuleMend, RuleName, RuleVerdict, RuleWhy } from '../plan/rule-verdict.ts';

/** The verdict "kept". */
export const kept = (rule: RuleName): RuleVerdict => ({ rule, kept: true });

/** The verdict "not kept", with why, what would mend it and, where it can be told, whether it could have been kept. */
export function broken(
  rule: RuleName,
  why: RuleWhy,
  mend: RuleMend | null,
  couldHaveBeenKept?: boolean | undefined,
): RuleVerdict {
  return {
    rule,
    kept: false,
    why,
    ...(mend === null ? {} : { mend }),
    ...(couldHaveBeenKept === undefined ? {} : { couldHaveBeenKept }),
  };
}

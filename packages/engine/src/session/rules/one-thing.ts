import type { Plan } from '../plan/plan.ts';
import type { RuleVerdict } from '../plan/rule-verdict.ts';
import type { PlanFacts } from './plan-facts.ts';
import { namedIn, raisedIn, successesBefore } from './raised.ts';
import { broken, kept } from './verdict.ts';

const RULE = 'one-thing-at-a-time';

/**
 * A build rep raises one field of the ask against the base of each leg, counted over the chain; any other rep raises one
 * at most, since another name is no leave to raise two. A leg that never went well stands at the easy end, and a build
 * rep with such a leg need raise nothing. It can always be kept: by holding what is known. The first rep that breaks it is
 * told, with all that break it in the same way.
 */
export function oneThing(plan: Plan, facts: PlanFacts): RuleVerdict {
  const judged = plan.reps.map((rep, place) => {
    const raised = raisedIn(rep.legs, successesBefore(facts, plan, place), facts);
    const code =
      raised.beyondEasy.length > 0
        ? ('beyond-the-easy-end' as const)
        : raised.fields.length > 1
          ? ('raises-too-much' as const)
          : rep.purpose === 'build' && raised.fields.length === 0 && !raised.hasNew
            ? ('raises-nothing' as const)
            : null;
    return {
      n: rep.n,
      code,
      legs: rep.legs,
      fields: code === 'beyond-the-easy-end' ? raised.beyondEasy : raised.fields,
    };
  });
  const first = judged.find(({ code }) => code !== null);
  if (!first?.code) return kept(RULE);
  const { code, fields, legs } = first;
  const reps = judged.filter((rep) => rep.code === code).map(({ n }) => n);
  const mend = MENDS[code];
  if (code === 'raises-nothing') return broken(RULE, { code, reps }, { code: mend, reps }, true);
  return broken(
    RULE,
    { code, reps, fields, to: namedIn(legs, fields), is: fields.length, limit: 1 },
    { code: mend, reps, fields },
    true,
  );
}

const MENDS = {
  'beyond-the-easy-end': 'to-the-easy-end',
  'raises-too-much': 'keep-one-thing',
  'raises-nothing': 'call-it-vary',
} as const;

import type { Plan } from '../plan/plan.ts';
import { carriedFaults } from './carried-faults.ts';
import { laidFaults } from './laid-faults.ts';
import { checkFacts, type PlanFacts } from './plan-facts.ts';
import type { PlanFault } from './plan-fault.ts';
import { statedFaults } from './stated-faults.ts';

/**
 * What makes a plan no plan, whatever the rules of the trade say of it: figures that are none, chances that the record does
 * not give, layouts that are not what the legs ask for, and dummies that lie out though nobody put them there. Empty for a
 * plan that can be believed and walked. It shares no code with the search for a plan.
 * @throws RangeError where a figure of the facts is none (`checkFacts`)
 */
export function planFaults(plan: Plan, facts: PlanFacts): readonly PlanFault[] {
  checkFacts(facts);
  return [
    ...statedFaults(plan, facts),
    ...plan.reps.flatMap((rep) => laidFaults(rep, facts.kit)),
    ...carriedFaults(plan),
  ];
}

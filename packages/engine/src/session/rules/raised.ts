import { type Ask, type AskField, harderFields, type Skill } from '../../ability/index.ts';
import type { LaidLeg } from '../picture/laid-leg.ts';
import type { Plan } from '../plan/plan.ts';
import type { PlanFacts } from './plan-facts.ts';

/** The fields of a chain's asks that are named, each from the last leg that gives it. */
export function namedIn(legs: readonly LaidLeg[], fields: readonly AskField[]): Ask {
  const given = legs.flatMap(({ ask }) => fields.map((field) => [field, ask[field]] as const));
  return Object.fromEntries(given.filter(([, value]) => value !== undefined));
}

/** A base is one of so many of the last successes at the skill (contract, "Details"). */
const LAST_SUCCESSES = 10;

/** What a chain raises against the base of each leg. */
export interface Raised {
  /** The fields raised, counted over the chain: a field that several legs raise is one thing. */
  readonly fields: readonly AskField[];
  /** Fields beyond the easy end in a leg that never went well: there the easy end is the only fair ask. */
  readonly beyondEasy: readonly AskField[];
  /** Some leg never went well before. */
  readonly hasNew: boolean;
}

type Successes = ReadonlyMap<Skill, readonly Ask[]>;

/** What went well at each skill before the rep at `place` (from 0): the record's, then the plan's own earlier reps'. */
export function successesBefore(facts: PlanFacts, plan: Plan, place: number): Successes {
  const all = new Map<Skill, Ask[]>();
  const legs = plan.reps.slice(0, place).flatMap((rep) => rep.legs);
  for (const [skill, asks] of facts.successes) all.set(skill, asks.slice(-LAST_SUCCESSES));
  for (const { skill, ask } of legs) all.set(skill, [...(all.get(skill) ?? []), ask]);
  return new Map([...all].map(([skill, asks]) => [skill, asks.slice(-LAST_SUCCESSES)]));
}

/**
 * What a chain raises: each leg against its base, which is, among the last ten successes at the skill, the one from
 * which the fewest fields are harder, then the one of least stretch, then the newest. A stop or cast that comes later on the
 * same line raises one thing, its distance.
 */
export function raisedIn(legs: readonly LaidLeg[], successes: Successes, facts: PlanFacts): Raised {
  const fields = new Set<AskField>();
  const beyondEasy = new Set<AskField>();
  let hasNew = false;
  for (const { skill, ask } of legs) {
    const base = baseOf(skill, ask, successes.get(skill) ?? [], facts);
    if (base === null) hasNew = true;
    for (const group of harderFields(ask, base ?? {}, skill)) {
      for (const field of group.includes('distanceM') ? (['distanceM'] as const) : group) {
        (base === null ? beyondEasy : fields).add(field);
      }
    }
  }
  return { fields: [...fields], beyondEasy: [...beyondEasy], hasNew };
}

function baseOf(skill: Skill, ask: Ask, successes: readonly Ask[], facts: PlanFacts): Ask | null {
  const counted = successes.map((then) => ({ then, count: harderFields(ask, then, skill).length }));
  const fewest = Math.min(...counted.map(({ count }) => count));
  const nearest = counted.filter(({ count }) => count === fewest).reverse();
  const stretch = facts.stretch;
  if (stretch === undefined || nearest.length < 2) return nearest[0]?.then ?? null;
  const byStretch = nearest.map(({ then }) => ({ then, by: stretch(skill, ask, then) }));
  return byStretch.reduce((so, next) => (next.by < so.by ? next : so)).then;
}

import type { Ask, GradeChances, Skill } from '../../ability/index.ts';
import type { PlannedRep } from '../next/next-answer.ts';
import type { LaidLeg } from '../picture/laid-leg.ts';
import type { Plan, PlanKit, PlanWeather } from '../plan/plan.ts';

/**
 * What a plan is judged against: the dog, the day and the record. The functions are optional: with them the judge states
 * anew what a plan only claims, and can tell more often whether a rule could have been kept.
 */
export interface PlanFacts {
  /** Age in months, `null` where the birth date is not known: then no rule for the young is held against a plan. */
  readonly ageMonths: number | null;
  readonly weather?: PlanWeather | undefined;
  /** The skills asked for, where the request names them. */
  readonly skills?: readonly Skill[] | undefined;
  readonly kit?: PlanKit | undefined;
  /** Asks that went well at each skill, oldest first. */
  readonly successes: ReadonlyMap<Skill, readonly Ask[]>;
  /** Whole chains that went well lately. */
  readonly known?: readonly (readonly LaidLeg[])[] | undefined;
  /** Share of sends that this dog's record wants run straight through. */
  readonly cleanShareWanted?: number | undefined;
  /** The sends of the handler's last sessions in order, `true` for a clean one. */
  readonly lateOrders?: readonly (readonly boolean[])[] | undefined;
  /** Numbers of the reps that the handler will not have changed. */
  readonly locked?: readonly number[] | undefined;
  /**
   * Logits by which one ask of a skill is harder than another; left out, bases that tie go by the newest. `now` and `then`
   * are the very asks of the plan and of `successes`, so that their moments can be found by them.
   */
  readonly stretch?: ((skill: Skill, now: Ask, then: Ask) => number) | undefined;
  /** The chances of these legs asked in the place (from 0) of a rep of the plan, after its earlier reps and breaks. */
  readonly chances?:
    | ((plan: Plan, place: number, legs: readonly LaidLeg[]) => readonly GradeChances[])
    | undefined;
  /** Median minutes of a rep with what is laid and walked before it; left out, the plan's p50 is shared out evenly. */
  readonly repMinutes?: ((rep: PlannedRep) => number) | undefined;
}

/**
 * Checks the facts a plan is judged against.
 * @throws RangeError naming the figure that is no age, temperature, humidity or share
 */
export function checkFacts(facts: PlanFacts): void {
  const { ageMonths, weather, cleanShareWanted } = facts;
  within('ageMonths', ageMonths ?? 0, 0, 600);
  within('airC', weather?.airC ?? 0, -90, 70);
  within('humidityPct', weather?.humidityPct ?? 0, 0, 100);
  within('cleanShareWanted', cleanShareWanted ?? 0, 0, 1);
}

function within(name: string, value: number, least: number, most: number): void {
  if (!(value >= least && value <= most)) {
    throw new RangeError(`${name}: expected ${least}..${most}, got ${value}`);
  }
}

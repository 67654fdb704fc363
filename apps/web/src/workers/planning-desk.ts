import type { KeptRep, Plan, PlanEdit, PlanRequest } from '@sedgeline/engine/session';
import {
  editedPlan,
  forecastOfGoal,
  type GoalForecastView,
  type KennelOfFacts,
  lastGround,
  type PlanView,
  planFor,
  planView,
  type SeasonView,
  seasonOfDog,
} from '@sedgeline/projections';

/** Where a session is to be: where the dog was worked last, somewhere on record, somewhere new, or not told. */
export type GroundWish =
  | { readonly by: 'last' }
  | { readonly by: 'known'; readonly ground: string }
  | { readonly by: 'new'; readonly name: string }
  | { readonly by: 'none' };

/** What the handler wants of a plan. */
export interface PlanWish extends Omit<PlanRequest, 'ground' | 'layout' | 'notBefore'> {
  readonly where: GroundWish;
}

/** A plan in the making, as the screen holds it between two edits. */
export interface PlanInHand {
  readonly request: PlanRequest;
  readonly plan: Plan;
  readonly atMs: number;
}

/** What the screens of Plan and Season ask of the worker; `null` for a dog or a goal that no fact names. */
export type PlanningCalls = {
  /** A new plan; `kept` are the reps that the handler locked. */
  readonly plan: (of: {
    readonly wish: PlanWish;
    readonly seed: number;
    readonly kept: readonly KeptRep[];
  }) => Promise<PlanView | null>;
  /** The plan with one change; `null` where there is nothing else to be asked there. */
  readonly editPlan: (of: PlanInHand & { readonly edit: PlanEdit }) => Promise<PlanView | null>;
  /** A plan that was left, as it stands in the record of now. */
  readonly showPlan: (of: PlanInHand) => Promise<PlanView | null>;
  readonly season: (dog: string) => Promise<SeasonView | null>;
  /** `perWeek` is sessions a week, or `null` for the record's own pace. */
  readonly forecast: (of: {
    readonly goal: string;
    readonly perWeek: number | null;
  }) => Promise<GoalForecastView | null>;
};

/** The ground of a request where it is one that the record does not have yet: it counts as new. */
const NEW_GROUND = 'new ground';
/** Seed of the futures that are drawn: the same for everybody, so that a look back at a goal shows the same weeks. */
const FORECAST_SEED = 0;

/** The planning desk: plans, edits and forecasts, made from the open record. Nothing here writes. */
export function planningCalls(inUse: () => KennelOfFacts, nowMs: () => number): PlanningCalls {
  const requestOf = ({ where, ...wish }: PlanWish): PlanRequest => {
    const ground = groundOf(where, wish.dog);
    return ground === null ? wish : { ...wish, ground };
  };
  const groundOf = (where: GroundWish, dog: string): string | null => {
    switch (where.by) {
      case 'last':
        return lastGround(inUse(), dog);
      case 'known':
        return where.ground;
      case 'new':
        return NEW_GROUND;
      case 'none':
        return null;
    }
  };
  const isHere = (dog: string): boolean => inUse().record.dogs.has(dog);
  return {
    plan: async ({ wish, seed, kept }) => {
      if (!isHere(wish.dog)) return null;
      const request = requestOf(wish);
      const atMs = nowMs();
      return planView(inUse(), request, planFor(inUse(), request, { atMs, seed }, kept), atMs);
    },
    editPlan: async ({ request, plan, atMs, edit }) => {
      if (!isHere(request.dog)) return null;
      const edited = editedPlan(inUse(), request, plan, edit, atMs);
      return edited === null ? null : planView(inUse(), request, edited, atMs);
    },
    showPlan: async ({ request, plan, atMs }) =>
      isHere(request.dog) ? planView(inUse(), request, plan, atMs) : null,
    season: async (dog) => {
      const kennel = inUse();
      return seasonOfDog(kennel.record, kennel.timeline(), dog, nowMs());
    },
    forecast: async ({ goal, perWeek }) => {
      const kennel = inUse();
      const found = kennel.record.goals.get(goal);
      if (found === undefined) return null;
      const options = { atMs: nowMs(), seed: FORECAST_SEED, perWeek };
      return forecastOfGoal(kennel.record, kennel.timeline(), found, options);
    },
  };
}

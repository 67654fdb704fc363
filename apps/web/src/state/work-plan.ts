import type { PlanWeather } from '@sedgeline/engine/session';
import type { PlanView, TapFact } from '@sedgeline/projections';
import type { RecordName } from '../workers/kennel-calls.ts';
import type { GroundWish } from '../workers/planning-desk.ts';
import { append, newId } from './kennel.ts';
import { dropPlans } from './plan-drafts.ts';

/** A plan that is about to be worked. */
export interface PlanToWork {
  readonly view: PlanView;
  readonly wishes: { readonly where: GroundWish };
  readonly weather: PlanWeather;
  readonly locked: readonly number[];
}

/** Keeps the plan and opens its session, in one write; resolves with the session when it is on disk (or kept in memory). */
export async function workPlan(record: RecordName, toWork: PlanToWork): Promise<string> {
  const { dog } = toWork.view;
  const session = newId();
  await append(planFacts(toWork, { session, plan: newId(), newGround: newId() }));
  dropPlans({ record, dog });
  return session;
}

interface NewIds {
  readonly session: string;
  readonly plan: string;
  readonly newGround: string;
}

/** The facts of a plan that is worked: a new ground that has a name, the plan, the session with its weather. */
export function planFacts({ view, wishes, weather, locked }: PlanToWork, ids: NewIds): TapFact[] {
  const { dog, plan, request } = view;
  const { where } = wishes;
  const isNamed = where.by === 'new' && where.name !== '';
  const known = where.by === 'new' ? undefined : request.ground;
  const ground = isNamed ? ids.newGround : known;
  const place = ground === undefined ? {} : { ground };
  const seen = Object.fromEntries(Object.entries(weather).filter(([, value]) => value !== undefined));
  return [
    ...(isNamed
      ? [{ kind: 'ground-added' as const, body: { ground: ids.newGround, name: where.name } }]
      : []),
    {
      kind: 'session-planned',
      body: {
        plan: ids.plan,
        dog,
        minutes: plan.minutes,
        reps: plan.reps.map(({ n, purpose, legs }) => ({
          purpose,
          legs: legs.map(({ skill, ask }) => ({ skill, ask })),
          ...(locked.includes(n) ? { locked: true } : {}),
        })),
        breaks: plan.breaks.map(({ afterRep, minutes }) => ({ afterRep, minutes })),
        seed: plan.seed,
        ...place,
      },
    },
    {
      kind: 'session-opened',
      body: {
        session: ids.session,
        dog,
        plan: ids.plan,
        ...place,
        ...(Object.keys(seen).length === 0 ? {} : { weather: seen }),
      },
    },
  ];
}

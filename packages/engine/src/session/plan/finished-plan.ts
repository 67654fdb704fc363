import { sidesGuess } from '../order/index.ts';
import { sendKind } from './candidates.ts';
import { cautionsOf } from './cautions.ts';
import { claimsOf } from './claims.ts';
import { BREAK_MINUTES } from './duration-priors.ts';
import type { Stock } from './fill.ts';
import type { Attempt } from './mend.ts';
import { orderFigures } from './order-figures.ts';
import type { Plan } from './plan.ts';
import { plannedReps } from './planned-reps.ts';
import type { Setting } from './setting.ts';

/** A session that was put together, as a plan: its reps, breaks and minutes, what it says of its rules, and its cautions. */
export function finishedPlan(
  setting: Setting,
  stock: Stock,
  { reps, repMinutes, minutes }: Attempt,
  how: { readonly isDrawn: boolean; readonly locksLetGo: number },
): Plan {
  const { input, known, heat } = setting;
  const { request, seed } = input;
  return {
    dog: request.dog,
    seed,
    minutes: request.minutes,
    reps: plannedReps(stock, reps, known.cleanShareWanted, request.weather),
    breaks: reps.flatMap(({ slot }, n) =>
      slot.takesBreak ? [{ afterRep: n + 1, minutes: BREAK_MINUTES }] : [],
    ),
    rules: claimsOf({
      reps,
      minutes: request.minutes,
      p50: minutes.p50,
      repMinutes,
      ageMonths: known.ageMonths,
      heat,
      cleanShare: known.cleanShareWanted,
      lateOrders: input.lateOrders,
      isNewDog: [...known.successes.values()].every((list) => list.length === 0),
    }),
    cautions: cautionsOf({
      request,
      known,
      heat,
      reps: reps.length,
      hasStops: reps.some(({ legs }) => sendKind(legs) === 'stopped'),
      lacksKit: setting.isKitMissed(),
      locksLetGo: how.locksLetGo,
      rest: input.rest,
    }),
    minutesExpected: minutes,
    order: orderFigures(reps, known.cleanShareWanted, how.isDrawn, (count) =>
      sidesGuess(count, input.lateSides),
    ),
  };
}

import { seededRandom } from '../../numeric/index.ts';
import { focusOf } from '../next/chains.ts';
import { attempted, type Found, NOTHING } from './attempt.ts';
import type { Stock } from './fill.ts';
import { finishedPlan } from './finished-plan.ts';
import type { Plan } from './plan.ts';
import type { PlanInput } from './plan-input.ts';
import { type Setting, settingOf } from './setting.ts';

/**
 * A session for a dog, a ground and so many minutes: check, build, vary, clean, break, finish. What is asked comes from the
 * record as the next rep does (known chains, one step, the productive band), its orders are drawn, its minutes reckoned from
 * the journal's own rep times, and every rep is laid out after the one before. The same input gives the same plan. What cannot be
 * kept is owned up to in `rules`; where nothing can be worked the plan is empty and its cautions say why. Reps that the handler
 * locked (`kept`) stay as they are; where they can't all be had in the time, the kit and the dog's age, the last of them are
 * let go, and a caution says so.
 * @throws RangeError unless the request's minutes are over 0 and the seed is a whole number from 0
 */
export function planSession(input: PlanInput): Plan {
  const setting = settingOf(input);
  const locked = input.kept ?? [];
  const kept = locked.filter(({ legs }) => setting.mayAsk(legs)).slice(0, setting.most.reps);
  let made = sessionOf(setting, kept);
  while (made.found.reps.length === 0 && kept.length > 0) {
    kept.pop();
    made = sessionOf(setting, kept);
  }
  return finishedPlan(setting, made.stock, made.found, {
    isDrawn: kept.length === 0,
    locksLetGo: locked.length - kept.length,
  });
}

/** The first stock of which something comes, and what comes of it; the last one where nothing does. */
function sessionOf(setting: Setting, kept: NonNullable<PlanInput['kept']>): { stock: Stock; found: Found } {
  const { input, known, most, pace, record, mayAsk } = setting;
  const bounds = {
    most,
    pace,
    cleanShare: known.cleanShareWanted,
    lateOrders: input.lateOrders,
    lateSides: input.lateSides,
    kept: kept.map((rep) => ({ ...rep, focus: focusOf(rep.legs, input.request.focus?.skill ?? null) })),
    randomOf: (draw: number) => seededRandom(mixed(input.seed, draw)),
  };
  let made: { stock: Stock; found: Found } = {
    stock: { record, lines: [], mayAsk, hurry: 1 },
    found: NOTHING,
  };
  for (const stock of setting.stocks()) {
    made = { stock, found: attempted(stock, bounds) };
    if (made.found.reps.length > 0 || made.found.isTooLong) break;
  }
  return made;
}

/** A seed for each draw of a plan: the plan's own, stirred (the finaliser of a 32-bit hash). */
function mixed(seed: number, draw: number): number {
  let hash = (seed ^ Math.imul(Math.floor(seed / 2 ** 32) + draw + 1, 0x9e3779b1)) >>> 0;
  hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b) >>> 0;
  hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35) >>> 0;
  return (hash ^ (hash >>> 16)) >>> 0;
}

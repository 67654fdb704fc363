import type { Ask, Skill } from '@sedgeline/engine/ability';
import { type Plan, type PlanRequest, planSession } from '@sedgeline/engine/session';
import { createKennel } from '../kennel-of-facts.ts';
import { TrainingDay, type WrittenLeg } from '../work/training-day.fixture.ts';
import { planInput } from './plan-input.ts';

export const DAY_MS = 86_400_000;
const LINE: Ask = { distanceM: 30, temptation: 'placed-dummy' };
const HOME: readonly WrittenLeg[] = [{ skill: 'pickup' }, { skill: 'delivery', ask: { distanceM: 30 } }];
const at = (wayFraction: number): Ask => ({ distanceM: Math.round(30 * wayFraction), wayFraction });

/** What is different about a dog, beside two months of ordinary work at home. */
export interface DogHistory {
  readonly born?: string;
  /** Every so-manieth leg at a skill is missed; left out, every twelfth. */
  readonly missEvery?: Partial<Record<Skill, number>>;
  /** Clean sends on which it hangs back. */
  readonly hangsBack?: boolean;
  readonly sessions?: number;
  /** The last session again, for two dogs that end alike: all goes well in it. */
  readonly goodLast?: boolean;
}

/** An invented dog that recalls, goes out, stops and is cast either way from a stop, at home; a session every third day. */
export function trainedDog(history: DogHistory = {}): TrainingDay {
  const { born = '2022-05-01', missEvery = {}, hangsBack = false, sessions = 10, goodLast = false } = history;
  const day = new TrainingDay('2026-01-10T09:00:00Z').dog('wren', { born });
  const done: Partial<Record<Skill, number>> = {};
  let isLast = false;
  const rep = (legs: readonly WrittenLeg[], more: Readonly<Record<string, unknown>> = {}) => {
    const graded: WrittenLeg[] = [];
    for (const leg of legs) {
      done[leg.skill] = (done[leg.skill] ?? 0) + 1;
      const isMissed = !(isLast && goodLast) && (done[leg.skill] ?? 0) % (missEvery[leg.skill] ?? 12) === 0;
      graded.push({ ...leg, grade: isMissed ? 'missed' : 'good' });
      if (isMissed) break;
    }
    day.rep(graded, more);
  };
  for (let session = 0; session < sessions; session++) {
    isLast = session === sessions - 1;
    day.wait(3 * 24 * 60).open(`s${session}`, 'wren', { ground: 'home' });
    rep([{ skill: 'recall', ask: { distanceM: 20 } }]);
    for (const side of ['cast-left', 'cast-right'] as const) {
      const way = session % 2 === 0 ? 0.5 : 0.7;
      rep([
        { skill: 'line', ask: LINE },
        { skill: 'stop', ask: at(way) },
        { skill: side, ask: { ...at(way), castM: 12, temptation: 'placed-dummy', otherDummies: 1 } },
        ...HOME,
      ]);
    }
    rep([
      { skill: 'line', ask: LINE },
      { skill: 'stop', ask: at(0.3) },
    ]);
    rep([{ skill: 'line', ask: LINE }, ...HOME], {
      clean: true,
      expectation: hangsBack ? 'hangs-back' : 'none',
    });
    rep([{ skill: 'steady', ask: { waitS: 10 } }]);
  }
  return day;
}

/** A plan for the dog a day after its last session, or so many. */
export function planOf(
  day: TrainingDay,
  request: Partial<PlanRequest> = {},
  { seed = 1, days = 1 }: { readonly seed?: number; readonly days?: number } = {},
): Plan {
  return planSession(inputOf(day, request, { seed, days }));
}

const KENNELS = new WeakMap<TrainingDay, ReturnType<typeof createKennel>>();

/** The day's facts folded once: a day that is planned for is written to its end. */
function kennelOf(day: TrainingDay) {
  let kennel = KENNELS.get(day);
  if (kennel === undefined) {
    kennel = createKennel();
    kennel.add(day.facts);
    KENNELS.set(day, kennel);
  }
  return kennel;
}

/** What `planOf` plans from. */
export function inputOf(
  day: TrainingDay,
  request: Partial<PlanRequest> = {},
  { seed = 1, days = 1 }: { readonly seed?: number; readonly days?: number } = {},
) {
  const kennel = kennelOf(day);
  const whole: PlanRequest = { dog: 'wren', minutes: 15, ground: 'home', ...request };
  return planInput(kennel.record, kennel.timeline(), whole, day.atMs + days * DAY_MS, seed);
}

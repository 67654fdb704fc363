import type { Ask, Skill } from '@sedgeline/engine/ability';
import { type NextInput, wantedCleanShare } from '@sedgeline/engine/session';
import type { TrainingRecord } from '../record/training-record.ts';
import type { AbilityTimeline } from '../timeline/ability-timeline.ts';
import { ageMonths, earlierSessionsOnGround } from '../timeline/dog-walk.ts';
import { atHandOn } from './at-hand.ts';

const DAY_MS = 86_400_000;

/** A moment at which a dog is to be asked something; no session where it is one yet to come. */
export interface AskingMoment {
  readonly session: string | null;
  readonly ground: string | null;
  readonly atMs: number;
  readonly repsSinceBreak: number;
}

/** What the record says of a dog at a moment, whatever the session did so far. */
export type KnownOfDog = Pick<
  NextInput,
  | 'filter'
  | 'question'
  | 'successes'
  | 'worked'
  | 'goals'
  | 'ageMonths'
  | 'earlierSessionsOnGround'
  | 'atHand'
  | 'repsSinceBreak'
  | 'cleanShareWanted'
>;

/**
 * What a plan and the choice of the next rep both know of a dog. `asAsked` completes an ask with what the day adds to it; `wanted`
 * are asks that are wanted beside the goals'.
 */
export function knownOfDog(
  record: TrainingRecord,
  timeline: AbilityTimeline,
  dog: string,
  at: AskingMoment,
  {
    asAsked = (ask) => ask,
    wanted = [],
  }: { readonly asAsked?: (ask: Ask) => Ask; readonly wanted?: readonly Ask[] } = {},
): KnownOfDog {
  const walk = timeline.walk(dog);
  const skills = Object.keys(walk.legs) as Skill[];
  const goals = [...record.goals.values()].filter((goal) => goal.dog === dog).flatMap((goal) => goal.asks);
  return {
    filter: timeline.filter,
    question: (skill: Skill, ask: Ask) => timeline.question(dog, skill, asAsked(ask), at, record),
    successes: new Map(skills.map((skill) => [skill, walk.successes[skill] ?? []])),
    worked: skills.map((skill) => ({
      skill,
      legs: walk.legs[skill] ?? 0,
      daysSince: Math.max(0, (at.atMs - (walk.lastWorkedMs[skill] ?? at.atMs)) / DAY_MS),
    })),
    goals,
    ageMonths: ageMonths(record.dogs.get(dog) ?? null, at.atMs),
    earlierSessionsOnGround: earlierSessionsOnGround(walk, at.session, at.ground),
    atHand: atHandOn(record, dog, at.ground, [...goals.map(({ ask }) => ask), ...wanted]),
    repsSinceBreak: at.repsSinceBreak,
    cleanShareWanted: wantedCleanShare(walk.cleanSends),
  };
}

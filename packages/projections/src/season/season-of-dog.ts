import { SKILLS } from '@sedgeline/engine/ability';
import type { TrainingRecord } from '../record/training-record.ts';
import { statedAsks } from '../standing/standing.ts';
import type { AbilityTimeline } from '../timeline/ability-timeline.ts';
import type { SeasonView } from '../views/season-view.ts';

/** A dog's goals in the order of the record, and what a goal may be made from. `null` for a dog that no fact names. */
export function seasonOfDog(
  record: TrainingRecord,
  timeline: AbilityTimeline,
  dog: string,
  atMs: number,
): SeasonView | null {
  const found = record.dogs.get(dog);
  if (found === undefined) return null;
  const { legs } = timeline.walk(dog);
  const skills = SKILLS.map((skill) => ({
    skill,
    legs: legs[skill] ?? 0,
    asks: statedAsks(record, timeline, dog, skill, atMs),
  }));
  return {
    dog,
    dogName: found.name,
    sessions: record.sessions.filter((session) => session.dog === dog && session.reps.length > 0).length,
    goals: [...record.goals.values()].filter((goal) => goal.dog === dog),
    skills: skills.toSorted((a, b) => Number(b.legs > 0) - Number(a.legs > 0)),
  };
}

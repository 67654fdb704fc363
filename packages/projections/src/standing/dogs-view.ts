import { SKILLS, type Skill } from '@sedgeline/engine/ability';
import { grouped } from '../grouped.ts';
import { restNow } from '../record/rest-now.ts';
import type { SessionRecord, TrainingRecord } from '../record/training-record.ts';
import type { AbilityTimeline } from '../timeline/ability-timeline.ts';
import { ageMonths } from '../timeline/dog-walk.ts';
import type { DogRow, DogsView } from '../views/views.ts';
import { usualAsk } from './reference-asks.ts';

const DAY_MS = 86_400_000;
const MINUTE_MS = 60_000;
/** A skill slips when it lay this long and the chance of good at its usual ask fell by this much (our judgement, 2026). */
const SLIPPING = { days: 14, chance: 0.04 } as const;

/** Minutes from a session's opening to its last sign of work. */
function workedMinutes(session: SessionRecord): number {
  const lastMs = Math.max(
    session.openedAtMs,
    session.closedAtMs ?? 0,
    session.reps.at(-1)?.atMs ?? 0,
    session.breaks.at(-1)?.atMs ?? 0,
  );
  return Math.min(180, (lastMs - session.openedAtMs) / MINUTE_MS);
}

function slipping(
  record: TrainingRecord,
  timeline: AbilityTimeline,
  dog: string,
  nowMs: number,
): DogRow['slipping'] {
  const { lastWorkedMs } = timeline.walk(dog);
  return Object.entries(lastWorkedMs).flatMap(([name, workedMs]) => {
    const skill = name as Skill;
    if (nowMs - workedMs < SLIPPING.days * DAY_MS) return [];
    const chanceAt = (atMs: number) => {
      const at = { session: null, ground: null, atMs, repsSinceBreak: 0 };
      return timeline.filter.forecast(timeline.question(dog, skill, usualAsk(skill), at, record)).chance.good;
    };
    const then = chanceAt(workedMs);
    const now = chanceAt(nowMs);
    return then - now >= SLIPPING.chance ? [{ skill, then, now }] : [];
  });
}

/** The kennel at a glance: who was worked when, what slips, and which session is open. */
export function dogsView(record: TrainingRecord, timeline: AbilityTimeline, nowMs: number): DogsView {
  const sessionsOf = grouped(record.sessions, (session) => session.dog);
  return {
    dogs: [...record.dogs.values()].map(({ dog, name, rest }): DogRow => {
      const sessions = sessionsOf.get(dog) ?? [];
      const walk = timeline.walk(dog);
      const worked = SKILLS.filter((skill) => walk.legs[skill] !== undefined);
      return {
        dog,
        name,
        ageMonths: ageMonths(record.dogs.get(dog) ?? null, nowMs),
        legs: worked.reduce((so, skill) => so + (walk.legs[skill] ?? 0), 0),
        sessions: sessions.length,
        lastWorkedMs: sessions.at(-1)?.openedAtMs ?? null,
        rest: restNow(rest, nowMs),
        openSession: sessions.findLast((session) => session.closedAtMs === null)?.session ?? null,
        skills: worked
          .map((skill) => ({
            skill,
            lastWorkedMs: walk.lastWorkedMs[skill] ?? 0,
            legs: walk.legs[skill] ?? 0,
          }))
          .sort((a, b) => b.lastWorkedMs - a.lastWorkedMs),
        slipping: slipping(record, timeline, dog, nowMs),
        minutesThisWeek: sessions
          .filter((session) => nowMs - session.openedAtMs < 7 * DAY_MS && session.openedAtMs <= nowMs)
          .reduce((so, session) => so + workedMinutes(session), 0),
      };
    }),
    grounds: [...record.grounds.values()].filter(({ isPutAway }) => !isPutAway),
    facts: record.facts,
    setAside: record.setAside,
    unknown: record.unknown,
  };
}

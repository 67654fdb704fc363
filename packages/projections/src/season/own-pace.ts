import type { Skill } from '@sedgeline/engine/ability';
import type { SessionRecord, TrainingRecord } from '../record/training-record.ts';

const WEEK_MS = 7 * 86_400_000;
/** Weeks of the record that speak for the weeks to come, and sessions that say how often a skill is worked (our judgement, 2026). */
const WEEKS_AT_MOST = 26;
const SESSIONS_AT_MOST = 20;
/** A goal is set for what was never worked: half of the sessions will be about it (our judgement, 2026). */
const SHARE_OF_NEW = 0.5;

/** How a dog has been worked of late. */
export interface OwnPace {
  /** Sessions of each of the latest weeks, oldest first; weeks end at the moment asked for. Empty with no session. */
  readonly sessionsByWeek: readonly number[];
  /** Share of the latest sessions in which a skill was worked, add-one; half for one that never was. */
  readonly share: (skill: Skill) => number;
}

/** Reads a dog's pace from the record: its sessions up to `atMs` in which a rep stands. */
export function ownPace(record: TrainingRecord, dog: string, atMs: number): OwnPace {
  const sessions = record.sessions.filter(
    (one) => one.dog === dog && one.openedAtMs <= atMs && one.reps.some(({ legs }) => legs.length > 0),
  );
  const weekOf = ({ openedAtMs }: SessionRecord) => Math.floor((atMs - openedAtMs) / WEEK_MS);
  const weeks = sessions.length === 0 ? 0 : Math.min(WEEKS_AT_MOST, 1 + Math.max(...sessions.map(weekOf)));
  const sessionsByWeek = Array.from({ length: weeks }, () => 0);
  for (const session of sessions) {
    const ago = weekOf(session);
    if (ago < weeks) sessionsByWeek[weeks - 1 - ago]! += 1;
  }
  const worked = sessions.map(
    ({ reps }) => new Set(reps.flatMap(({ legs }) => legs.map(({ skill }) => skill))),
  );
  const lately = worked.slice(-SESSIONS_AT_MOST);
  return {
    sessionsByWeek,
    share: (skill) => {
      if (!worked.some((skills) => skills.has(skill))) return SHARE_OF_NEW;
      return (lately.filter((skills) => skills.has(skill)).length + 1) / (lately.length + 2);
    },
  };
}

import type { RepRecord } from '../record/training-record.ts';
import type { RepSummary } from '../views/views.ts';

/** What a list of reps tells of one. */
export function repSummary(rep: RepRecord): RepSummary {
  return {
    rep: rep.rep,
    atMs: rep.atMs,
    legs: rep.legs,
    clean: rep.clean,
    expectation: rep.expectation,
    purpose: rep.purpose,
    amendments: rep.amendments,
    note: rep.note,
    reward: rep.reward,
    gotItAnyway: rep.gotItAnyway,
    fromMemory: rep.fromMemory,
    voices: rep.voices,
  };
}

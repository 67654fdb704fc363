import type { FitProgress, Skill } from '@sedgeline/engine/ability';
import type { Fact } from '@sedgeline/journal';
import type { AskedLeg, TrainingRecord } from './record/training-record.ts';
import type { JoinProposal, ListenedSound } from './sound/join-reps.ts';
import type { FitNote } from './timeline/kennel-fits.ts';
import type { RepHistoryView } from './views/rep-history-view.ts';
import type { DogsView, JudgedRep, StandingView, WorkView } from './views/views.ts';

/** How the handler turns the rep in hand: one step harder, one easier, or straight through with no stop. */
export type Turn = 'harder' | 'easier' | 'clean';

/** A rep asked by hand. */
export interface AskedRep {
  readonly legs: readonly AskedLeg[];
  readonly clean: boolean;
  readonly purpose: string | null;
  /** The number in the session's plan that it stands for. */
  readonly planRep?: number | undefined;
}

/**
 * Facts in, views out: the one thing the worker and the command line hold. Adding facts one by one or all at once,
 * in any order, gives the same views.
 */
export interface Kennel {
  readonly record: TrainingRecord;
  add(facts: readonly Fact[]): void;
  /**
   * What the walk through the record knew before its last session, as JSON can hold it, to open the same record with next
   * time (`createKennel`). The same object until another session begins; `null` with no session
   * before the last, and while a fit is wanted.
   */
  walkNote(): unknown;
  /**
   * The fitting of the kennel's own priors that the record has come to, in steps between which taps may come; `null` when there
   * is none to be made. When it ends the views are new, and its note may be kept (`createKennel`).
   */
  fitting(): Generator<FitProgress, FitNote> | null;
  dogs(nowMs: number): DogsView;
  /** `null` for a dog that no fact names. */
  standing(dog: string, atMs: number): StandingView | null;
  /** `null` for a session that no fact names. `seed` decides which sends are run clean. */
  work(session: string, atMs: number, seed: number): WorkView | null;
  /** What became of a rep since it was recorded, step by step; `null` for one that no fact names. */
  history(rep: string): RepHistoryView | null;
  /** Which of what was heard may belong to which rep; nothing is kept. `null` for a session that no fact names. */
  listen(session: string, sound: ListenedSound): JoinProposal | null;
  /** Chances, steps and drawing of a rep the handler chose himself. */
  judge(session: string, rep: AskedRep, atMs: number): JudgedRep;
  /** The rep in hand turned harder, easier or clean; `null` where there is nothing that way. */
  turn(session: string, rep: AskedRep, turn: Turn, atMs: number): JudgedRep | null;
  /** The chain a skill is first worked in (the last one used, or the usual one). */
  chainFor(session: string, skill: Skill, atMs: number): JudgedRep;
}

import type { Grade, Skill } from '@sedgeline/engine/ability';
import type { RepPicture } from '@sedgeline/engine/ground';
import type { AskedLeg } from '../record/training-record.ts';
import type { RepSummary } from './views.ts';

/** A skill as a session asked it: how often, and from where to where. */
export interface AskedSkill {
  readonly skill: Skill;
  readonly times: number;
  /** How far a cast was to carry the dog, else how far away it was asked; `null` where no distance was told. */
  readonly overM: { readonly nearest: number; readonly farthest: number } | null;
}

/** One session as a field card: whose, when, where, what was asked, and how its legs went. */
export interface SessionRow {
  readonly session: string;
  readonly dog: string;
  readonly dogName: string;
  readonly groundName: string | null;
  readonly openedAtMs: number;
  readonly closedAtMs: number | null;
  readonly reps: number;
  readonly legs: Readonly<Record<Grade, number>>;
  /** The skill asked most often first. Pick-up and delivery go without saying where something else was asked. */
  readonly asked: readonly AskedSkill[];
  /** The rep that the session's card draws, by its number; `null` where none stands. */
  readonly drawn: { readonly repNumber: number; readonly picture: RepPicture } | null;
}

/** Every session of a record, the newest first. */
export interface SessionsView {
  readonly sessions: readonly SessionRow[];
}

/** Where a rep is to be looked for on a film of its session. */
export interface RepFilmed {
  readonly film: string;
  readonly name: string;
  readonly atS: number;
}

/** A whistle or a click that was joined to a rep, the first of it in a sound. */
export interface RepHeard {
  readonly sound: string;
  readonly name: string;
  readonly atS: number;
  /** Of the sound itself, where it was kept on a device; `null` where only what was heard is. */
  readonly sha256: string | null;
}

/** A rep to look back on: drawn as it was asked, with the ways to its film and sound. */
export interface RepBack extends RepSummary {
  /** The whole chain, with what was not reached. */
  readonly asked: readonly AskedLeg[];
  readonly picture: RepPicture;
  readonly filmed: readonly RepFilmed[];
  readonly heard: readonly RepHeard[];
}

/** One session to look back on: its reps that stand, in order. */
export interface SessionBackView extends SessionRow {
  readonly done: readonly RepBack[];
}

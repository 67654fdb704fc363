import type { Ask, Grade, Skill } from '@sedgeline/engine/ability';
import type { StoreFailure } from '@sedgeline/journal';
import type {
  AskedRep,
  Cause,
  DogsView,
  Expectation,
  JudgedRep,
  PatternsView,
  ProgressView,
  ProofingView,
  RepHistoryView,
  Reward,
  StandingView,
  TapFact,
  Turn,
  WhyView,
  WorkView,
} from '@sedgeline/projections';
import type { BroughtBack } from '@sedgeline/words';
import type { BackCalls } from './back-desk.ts';
import type { FilmCalls } from './film-desk.ts';
import type { GroundCalls } from './ground-desk.ts';
import type { ListenCalls } from './listen-desk.ts';
import type { PlanningCalls } from './planning-desk.ts';

/** Which record is in use: one's own, or the invented one. They never share a database. */
export type RecordName = 'mine' | 'demo';

/** What the handler does on Work; each that records something is on disk before it is answered. */
export type Tap =
  | { readonly do: 'grade'; readonly grade: Grade }
  | { readonly do: 'rest-good' }
  | { readonly do: 'ended' }
  | { readonly do: 'cause'; readonly cause: Cause }
  | { readonly do: 'expectation'; readonly expectation: Expectation }
  | {
      readonly do: 'amend-leg';
      readonly rep: string;
      readonly leg: number;
      readonly grade: Grade;
      readonly cause: Cause | null;
    }
  | { readonly do: 'strike'; readonly rep: string }
  | { readonly do: 'restore'; readonly rep: string }
  | { readonly do: 'blew'; readonly when: 'earlier' | 'later' }
  | { readonly do: 'reward'; readonly rep: string; readonly reward: readonly Reward[] }
  | { readonly do: 'got-it'; readonly rep: string; readonly got: boolean }
  | {
      readonly do: 'from-memory';
      /** The rep it came after; `null` where it was the first. */
      readonly after: string | null;
      readonly legs: readonly { readonly skill: Skill; readonly ask: Ask; readonly grade: Grade }[];
    }
  | {
      readonly do: 'voice';
      readonly rep: string;
      readonly voice: string;
      readonly lengthS: number;
      readonly bytes: number;
      readonly sha256: string;
      readonly type: string;
    }
  | { readonly do: 'voice-drop'; readonly rep: string; readonly voice: string }
  | { readonly do: 'undo' }
  | { readonly do: 'turn'; readonly turn: Turn }
  | { readonly do: 'choose'; readonly rep: AskedRep }
  | { readonly do: 'skill'; readonly skill: Skill }
  | { readonly do: 'as-suggested' }
  | { readonly do: 'break'; readonly minutes: number }
  | { readonly do: 'break-over' }
  | { readonly do: 'note'; readonly note: string }
  | { readonly do: 'close' };

/** What may still be said of what was just recorded; gone at the next grade. */
export type After =
  | {
      readonly about: 'cause';
      readonly rep: string;
      readonly repNumber: number;
      readonly leg: number;
      readonly skill: Skill;
      readonly grade: Grade;
      readonly cause: Cause | null;
      readonly isRunThrough: boolean;
    }
  | {
      readonly about: 'expectation';
      readonly rep: string;
      readonly repNumber: number;
      readonly expectation: Expectation | null;
    };

/** Work as the screen shows it: the record's view, and what the handler chose by hand for the rep to come. */
export interface WorkScreen {
  readonly view: WorkView;
  readonly chosen: JudgedRep | null;
  readonly after: After | null;
  /** Changes with every tap: a tap made on an older picture of the screen is let fall (a bounce of the thumb). */
  readonly turnCount: number;
}

/** What became of a tap. */
export type TapAnswer =
  | {
      readonly kind: 'recorded';
      readonly rep: string;
      readonly repNumber: number;
      readonly legs: readonly { readonly skill: Skill; readonly grade: Grade }[];
      readonly saved: boolean;
    }
  | { readonly kind: 'done'; readonly saved: boolean }
  | { readonly kind: 'nothing-that-way' }
  | { readonly kind: 'stale' };

/** Facts that could not be written, and why; they are kept in memory and tried again. */
export interface NotSaved {
  readonly count: number;
  readonly failure: StoreFailure;
}

/** Views the worker sends of its own accord. `rough` views come from the last checkpoint, before the facts are read. */
export type KennelPush =
  | { readonly view: 'dogs'; readonly record: RecordName; readonly rough: boolean; readonly dogs: DogsView }
  | {
      readonly view: 'standing';
      readonly record: RecordName;
      readonly dog: string;
      readonly standing: StandingView | null;
    }
  | {
      readonly view: 'work';
      readonly record: RecordName;
      readonly rough: boolean;
      readonly session: string;
      readonly work: WorkScreen | null;
    }
  | { readonly view: 'not-saved'; readonly record: RecordName; readonly notSaved: NotSaved | null }
  | {
      readonly view: 'damage';
      readonly record: RecordName;
      readonly damage: readonly { readonly where: string; readonly message: string }[];
    }
  | {
      /** Record and second copy were compared: what came back by it, and how many facts there are now. */
      readonly view: 'copies';
      readonly record: RecordName;
      readonly restored: number;
      readonly hasCopy: boolean;
      readonly facts: number;
    }
  /** How far the device's time is behind what is on record, milliseconds. */
  | { readonly view: 'behind'; readonly record: RecordName; readonly behindMs: number }
  | { readonly view: 'record-left'; readonly record: RecordName };

type DeskCalls = BackCalls & FilmCalls & GroundCalls & ListenCalls & PlanningCalls;

/** What the screens may ask of the worker. */
export type KennelCalls = DeskCalls & {
  /** Opens a record; resolves when its facts are read. Which session is open comes first, by a rough view. */
  readonly open: (record: RecordName) => Promise<{ readonly openSession: string | null }>;
  /** Says which standing and which session are on the screen: these are pushed after every change. */
  readonly watch: (what: {
    readonly standing?: string | null;
    readonly session?: string | null;
  }) => Promise<void>;
  /** Adds facts; resolves when they are on disk, or when they are kept for another try. */
  readonly append: (facts: readonly TapFact[]) => Promise<{ readonly saved: boolean }>;
  readonly tap: (tap: {
    readonly session: string;
    readonly turnCount: number;
    readonly tap: Tap;
  }) => Promise<TapAnswer>;
  /** Why a rep went as it did; `null` for one that does not stand in the record. */
  readonly why: (rep: string) => Promise<WhyView | null>;
  /** What became of a rep, step by step; `null` for one that no fact names. */
  readonly history: (rep: string) => Promise<RepHistoryView | null>;
  /** What shows over months in a dog's record; `null` for one that no fact names. Takes the worker up to a second. */
  readonly patterns: (dog: string) => Promise<PatternsView | null>;
  /** How a dog came on at a skill; `null` for a dog that no fact names. Takes the worker about as long as one replay. */
  readonly progress: (of: { readonly dog: string; readonly skill: Skill }) => Promise<ProgressView | null>;
  /** What a dog has been tried at in a skill, and how it went, as of now; `null` for a dog that no fact names. */
  readonly proofing: (of: { readonly dog: string; readonly skill: Skill }) => Promise<ProofingView | null>;
  /** Looks at the record again as of now: the screen was away for a while. */
  readonly refresh: () => Promise<void>;
  /** Tries to write again what is in memory alone. */
  readonly retry: () => Promise<{ readonly saved: boolean }>;
  /** Those of some ids that any fact of the record speaks of, whatever its kind. */
  readonly spokenOf: (ids: readonly string[]) => Promise<readonly string[]>;
  /** Every fact of the record as JSON Lines. */
  readonly factsAsLines: () => Promise<string>;
  /** Adds those facts of an export that the record lacks; tells what the file held. */
  readonly bringBack: (text: string) => Promise<BroughtBack & { readonly saved: boolean }>;
  /** The facts that could not be written, as JSON Lines. */
  readonly notSavedAsLines: () => Promise<string>;
  /** Closes and deletes the invented record. */
  readonly leaveDemo: () => Promise<void>;
};

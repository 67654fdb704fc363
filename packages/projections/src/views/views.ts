import type { Ask, GradeChances, Interval90, Skill } from '@sedgeline/engine/ability';
import type { RepPicture } from '@sedgeline/engine/ground';
import type { NextAnswer, PlannedRep, Reason } from '@sedgeline/engine/session';
import type {
  AskedLeg,
  DogRecord,
  Expectation,
  LegRecord,
  Reward,
  ToldRecord,
  VoiceRecord,
} from '../record/training-record.ts';
import type { TapFact } from '../tap-fact.ts';

/** One line of the Dogs screen. */
export interface DogRow {
  readonly dog: string;
  readonly name: string;
  readonly ageMonths: number | null;
  readonly legs: number;
  readonly sessions: number;
  readonly lastWorkedMs: number | null;
  /** Not to be worked for now. */
  readonly rest: DogRecord['rest'];
  readonly openSession: string | null;
  /** Skills worked, most lately first, with days since. */
  readonly skills: readonly { readonly skill: Skill; readonly lastWorkedMs: number; readonly legs: number }[];
  /** What slips: the chance of good at the usual ask has fallen since the skill was last worked. */
  readonly slipping: readonly { readonly skill: Skill; readonly then: number; readonly now: number }[];
  /** Minutes worked in the last seven days, from first to last fact of each session. */
  readonly minutesThisWeek: number;
}

export interface DogsView {
  readonly dogs: readonly DogRow[];
  readonly grounds: readonly { readonly ground: string; readonly name: string }[];
  readonly facts: number;
  readonly setAside: number;
  readonly unknown: number;
}

/** A named ask of a skill with its stated chance of good. */
export interface StandingAsk {
  readonly name: 'easy' | 'usual' | 'far';
  readonly ask: Ask;
  readonly chance: number;
  readonly interval90: Interval90;
}

/** What was told of a dog at a skill, as it stands. */
export interface ToldView {
  /** 0: never yet; `null`: not told. */
  readonly farthestM: number | null;
  readonly ground: ToldRecord['ground'];
  readonly atMs: number;
  /** The share of the start it gave that legs have not outweighed, 1 before any. */
  readonly left: number;
}

export interface SkillStanding {
  readonly skill: Skill;
  readonly legs: number;
  /** Fewer than 10 legs: "not known yet". */
  readonly known: boolean;
  readonly ability: { readonly mean: number; readonly sd: number };
  readonly asks: readonly StandingAsk[];
  /** The same with every leg counted against the dog, where it differs by more than 0.05 in a chance of good. */
  readonly countingEverything:
    | readonly { readonly name: StandingAsk['name']; readonly chance: number }[]
    | null;
  /** Codes of what has never gone well: `new-ground`, `dummy-out`, `thrown`, `far`, `cover`, `blind`, ... */
  readonly unproved: readonly { readonly code: string; readonly value?: number | undefined }[];
  readonly lastWorkedMs: number | null;
  /** What was told of it; `null` where nothing is. */
  readonly told: ToldView | null;
  /** Recent legs, oldest first, at most 20. */
  readonly recent: readonly {
    readonly rep: string;
    readonly grade: LegRecord['grade'];
    readonly cause: LegRecord['cause'];
  }[];
}

export interface StandingView {
  readonly dog: string;
  readonly name: string;
  readonly atMs: number;
  /** Not to be worked for now. */
  readonly rest: DogRecord['rest'];
  readonly legs: number;
  readonly skills: readonly SkillStanding[];
  /** How often the stated chances were right: the calibration of every leg of this dog. */
  readonly honesty: {
    readonly legs: number;
    /** `null` while no leg was scored. */
    readonly logLoss: number | null;
    readonly alwaysAverageLogLoss: number | null;
    readonly bins: readonly { readonly stated: number; readonly happened: number; readonly legs: number }[];
    /** Since when, and from what, the priors are this kennel's own; `null` while they are the shipped ones. */
    readonly fit: { readonly fromMs: number; readonly dogs: number; readonly legs: number } | null;
    /** A correction in use: below 1 the chances are drawn in, above 1 drawn out. */
    readonly recalibration: { readonly fromMs: number; readonly slope: number; readonly legs: number } | null;
  };
}

export interface RepSummary {
  readonly rep: string;
  readonly atMs: number;
  readonly legs: readonly LegRecord[];
  readonly clean: boolean;
  readonly expectation: Expectation;
  readonly purpose: string | null;
  readonly amendments: number;
  readonly note: string | null;
  readonly reward: readonly Reward[] | null;
  readonly gotItAnyway: boolean;
  readonly fromMemory: boolean;
  readonly voices: readonly VoiceRecord[];
}

/** Dogs worked in turn: a session each, in the order in which they were opened. */
export interface InTurnView {
  readonly class: string;
  readonly dogs: readonly {
    readonly session: string;
    readonly dog: string;
    readonly name: string;
    readonly reps: number;
    readonly isOpen: boolean;
  }[];
}

/** All that Work shows about one session. */
export interface WorkView {
  readonly session: string;
  readonly dog: string;
  readonly dogName: string;
  readonly groundName: string | null;
  readonly openedAtMs: number;
  readonly closedAtMs: number | null;
  readonly focus: Skill | null;
  /** 1-based number of the rep in hand. */
  readonly repNumber: number;
  /** A chain in progress: its rep is on disk, some of its legs are graded. */
  readonly inHand: {
    readonly rep: string;
    readonly graded: readonly LegRecord[];
    readonly chain: readonly AskedLeg[];
    readonly clean: boolean;
    readonly purpose: string | null;
    readonly reward: readonly Reward[] | null;
    readonly gotItAnyway: boolean;
    readonly voices: readonly VoiceRecord[];
  } | null;
  /** The dogs worked in turn with this one; `null` where it is worked alone. */
  readonly inTurn: InTurnView | null;
  /** The chain in hand, or the one suggested: what the card draws and the pad grades. */
  readonly asked: PlannedRep | null;
  readonly picture: RepPicture | null;
  readonly next: NextAnswer;
  readonly breakRunning: { readonly startedAtMs: number; readonly minutes: number } | null;
  readonly repsSinceBreak: number;
  readonly lastBreakOrStartMs: number;
  readonly done: readonly RepSummary[];
  /** Reps that were taken out by hand, with the strikes that bringing them back takes back. */
  readonly struck: readonly (RepSummary & { readonly struckBy: readonly string[] })[];
  /** The last tap that can be undone, with the facts that undo it; `null` when there is none, or the session is closed. */
  readonly undo: { readonly rep: string; readonly fact: string; readonly facts: readonly TapFact[] } | null;
  readonly cleanShareWanted: number;
}

/** A chance of a proposed rep, asked for after the handler changed it by hand. */
export interface JudgedRep {
  readonly rep: PlannedRep;
  readonly picture: RepPicture;
  readonly chain: { readonly noneMissed: number; readonly allGood: number; readonly interval90: Interval90 };
  readonly reasons: readonly Reason[];
}

/** The chance answer of the command line and the screens. */
export interface ChanceView {
  readonly chance: GradeChances;
  readonly interval90: { readonly good: Interval90; readonly notMissed: Interval90 };
  readonly logOdds: { readonly mean: number; readonly sd: number };
  readonly because: readonly { readonly factor: string; readonly logit: number }[];
  readonly legs: number;
}

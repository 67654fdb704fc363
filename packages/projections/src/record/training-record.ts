import type { Ask, Grade, Skill, ToldGround } from '@sedgeline/engine/ability';
import type { Layout } from '@sedgeline/engine/ground';
import type { OrderKey } from '@sedgeline/journal';
import type { FilmRecord } from '../film/film-record.ts';
import type { SoundRecord } from '../sound/sound-record.ts';

/** Whose a leg that was not good was. */
export type Cause = 'dog' | 'handler' | 'setup' | 'unsure';
/** What a dog sent without a stop showed. */
export type Expectation = 'none' | 'hangs-back' | 'stops-unasked';

export type Reward = 'marker' | 'food' | 'play' | 'retrieve' | 'praise';

/** A voice note that was not thrown away. */
export interface VoiceRecord {
  readonly voice: string;
  readonly atMs: number;
  readonly lengthS: number;
  readonly sha256: string;
}

/** A leg as the record finally has it. `cause` is `null` on a good leg, `dog` where it was left out. */
export interface LegRecord {
  readonly skill: Skill;
  readonly ask: Ask;
  readonly grade: Grade;
  readonly cause: Cause | null;
  readonly latencyS?: number | undefined;
  readonly note?: string | undefined;
  /** The ask that was planned, where the leg was done otherwise. */
  readonly planned?: Ask | undefined;
}

/** One thing of a chain that is planned. */
export interface AskedLeg {
  readonly skill: Skill;
  readonly ask: Ask;
}

/** A repetition as the record finally has it: amended where it was amended. */
export interface RepRecord {
  readonly rep: string;
  readonly session: string;
  /** Place in the journal's order: reps are worked in this order. */
  readonly orderKey: OrderKey;
  readonly atMs: number;
  readonly legs: readonly LegRecord[];
  readonly clean: boolean;
  readonly expectation: Expectation;
  readonly layout: string | null;
  readonly dummiesOut: number | null;
  readonly note: string | null;
  readonly struck: boolean;
  /** The strikes made by hand (not an undone tap) that stand: what bringing it back takes back. */
  readonly struckBy: readonly string[];
  readonly amendments: number;
  /** What it was rewarded with; `null` where nobody said. */
  readonly reward: readonly Reward[] | null;
  /** True where a miss paid the dog all the same. */
  readonly gotItAnyway: boolean;
  /** Put in afterwards, in its place. */
  readonly fromMemory: boolean;
  /** What was said of it; the sound lies on the device that heard it. */
  readonly voices: readonly VoiceRecord[];
  /** The chain as planned, where the program recorded it. */
  readonly chain: readonly AskedLeg[] | null;
  readonly purpose: string | null;
  /** The number in the session's plan that the rep stands for. */
  readonly planRep: number | null;
  /** True when the handler said the chain ended before its last leg. */
  readonly ended: boolean;
}

export interface BreakRecord {
  readonly orderKey: OrderKey;
  readonly atMs: number;
  readonly minutes: number;
}

export interface SessionRecord {
  readonly session: string;
  readonly dog: string;
  readonly ground: string | null;
  readonly handler: string | null;
  readonly layout: string | null;
  /** The plan that it follows. */
  readonly plan: string | null;
  /** The class in which its dog is worked in turn with others. */
  readonly class: string | null;
  readonly orderKey: OrderKey;
  readonly openedAtMs: number;
  readonly closedAtMs: number | null;
  readonly focus: Skill | null;
  readonly windMPerS: number | null;
  readonly windFromDeg: number | null;
  readonly airC: number | null;
  readonly humidityPct: number | null;
  /** Reps that stand, in order; struck ones are in `struckReps`. */
  readonly reps: readonly RepRecord[];
  readonly struckReps: readonly RepRecord[];
  readonly breaks: readonly BreakRecord[];
  /** A break that was begun and not yet ended. */
  readonly breakRunning: { readonly startedAtMs: number; readonly minutes: number } | null;
  readonly note: string | null;
}

export interface DogRecord {
  readonly dog: string;
  readonly name: string;
  readonly bornMs: number | null;
  readonly sex: string | null;
  readonly breed: string | null;
  /** Not to be worked before that moment (`null`: until it is said to be over). */
  readonly rest: { readonly untilMs: number | null } | null;
  readonly runSpeedMPerS: number | null;
}

export interface GroundRecord {
  readonly ground: string;
  readonly name: string;
  /** Where it lies, where both figures are told. */
  readonly at: { readonly latDeg: number; readonly lonDeg: number } | null;
  readonly note: string | null;
  /** Offered no more; what was worked there keeps its name. */
  readonly isPutAway: boolean;
}

export interface LayoutRecord extends Layout {
  readonly layout: string;
  readonly ground: string | null;
  readonly name: string | null;
  /** When it was drawn as it stands. */
  readonly drawnAtMs: number;
  /** Offered no more; it keeps its drawing. */
  readonly isPutAway: boolean;
}

export interface HandlerRecord {
  readonly handler: string;
  readonly name: string;
  readonly reactionS: number | null;
}

/** A session that was planned and kept, as it was last changed. */
export interface PlanRecord {
  readonly plan: string;
  readonly dog: string;
  readonly atMs: number;
  readonly minutes: number;
  readonly ground: string | null;
  readonly layout: string | null;
  readonly seed: number | null;
  /** Numbered 1, 2, 3 ... in their order. */
  readonly reps: readonly {
    readonly purpose: string;
    readonly legs: readonly AskedLeg[];
    readonly locked: boolean;
  }[];
  readonly breaks: readonly { readonly afterRep: number; readonly minutes: number }[];
}

/** What was told of a dog at a skill, or (`isWithdrawn`) that nothing is any more. */
export interface ToldRecord {
  readonly dog: string;
  readonly skill: Skill;
  /** 0: never yet; `null`: not told. */
  readonly farthestM: number | null;
  readonly ground: ToldGround | null;
  readonly isWithdrawn: boolean;
  /** Place in the journal's order: it counts from there on. */
  readonly orderKey: OrderKey;
  readonly atMs: number;
}

export interface GoalRecord {
  readonly goal: string;
  readonly dog: string;
  readonly name: string;
  readonly by: string | null;
  readonly asks: readonly { readonly skill: Skill; readonly ask: Ask; readonly chance: number }[];
}

/** Everything that happened, folded: the same for any order and any split of the same facts. */
export interface TrainingRecord {
  readonly dogs: ReadonlyMap<string, DogRecord>;
  readonly grounds: ReadonlyMap<string, GroundRecord>;
  readonly handlers: ReadonlyMap<string, HandlerRecord>;
  readonly layouts: ReadonlyMap<string, LayoutRecord>;
  readonly goals: ReadonlyMap<string, GoalRecord>;
  readonly plans: ReadonlyMap<string, PlanRecord>;
  /** Everything that was told of the dogs, in the journal's order. */
  readonly told: readonly ToldRecord[];
  /** By the order in which they were opened. */
  readonly sessions: readonly SessionRecord[];
  /** By the order in which they were linked. */
  readonly films: readonly FilmRecord[];
  /** Those that were not dropped, by the order in which they were heard. */
  readonly sounds: readonly SoundRecord[];
  /** Facts whose session, dog or rep is not there yet (a merge may bring it), and facts of unknown kinds. */
  readonly setAside: number;
  readonly unknown: number;
  readonly facts: number;
  /** Time of the journal's last fact; `null` for an empty journal. */
  readonly lastAtMs: number | null;
}

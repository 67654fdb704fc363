import { joinCalls, type OwnWhistle, type SoundCall, SURE_FROM, soundCalls } from '@sedgeline/engine/sound';
import type { SoundHeard } from '@sedgeline/journal';
import type { TappedRep } from './tapped-reps.ts';
import { type LegWant, wantedCalls } from './wanted-calls.ts';

/** A sound that was listened to, before anything of it is kept. */
export interface ListenedSound {
  readonly lengthS: number;
  /** When it begins by the clock of the taps, milliseconds, and how far that may be off; `null` where nobody knows. */
  readonly starts: { readonly atMs: number; readonly withinS: number } | null;
  readonly whistles: SoundHeard['whistles'];
  readonly clicks: SoundHeard['clicks'];
}

/** A blast or click that may be a leg's own. */
export interface JoinCandidate extends SoundCall {
  readonly sureness: number;
}

/** What may be joined to one leg (`leg` null: to the rep, a click). */
export interface ProposedJoin {
  readonly rep: string;
  readonly leg: number | null;
  readonly wanted: LegWant['kind'];
  /** The likeliest first. */
  readonly candidates: readonly JoinCandidate[];
  /** Sure enough to be proposed, and not among others with the same whistle; else it is asked. */
  readonly isSure: boolean;
}

/** Where a rep lies on the sound, as far as its taps tell. */
export interface RepOnSound extends TappedRep {
  /** Its first and last tap, seconds on the sound, the usual lateness of the thumb taken off; may lie outside. */
  readonly fromS: number;
  readonly toS: number;
}

/** What joining comes to: nothing of it is applied. */
export interface JoinProposal {
  readonly calls: readonly SoundCall[];
  readonly reps: readonly RepOnSound[];
  readonly joins: readonly ProposedJoin[];
  /** How many calls the reps ask for: where there are some and no join, none of what was heard fits well enough. */
  readonly wanted: number;
  /** Reps from memory: their taps say nothing of when they were. */
  readonly untimed: number;
}

/** Only what has at least this chance is worth a question (our judgement, 2026). */
const ASKED_FROM = 0.3;

/** Joins what was heard to the reps that were tapped; see `joinCalls` in the engine and docs/joining.md. Pure: nothing is kept. */
export function joinReps(
  reps: readonly TappedRep[],
  sound: ListenedSound,
  own: OwnWhistle | null,
): JoinProposal {
  const timed = reps.filter(({ isTimed }) => isTimed);
  const wants = timed.flatMap(({ rep, legs, clicked }) =>
    wantedCalls(legs, clicked).map((want) => ({ ...want, rep })),
  );
  const calls = soundCalls(sound.whistles, sound.clicks);
  const starts =
    sound.starts === null ? null : { atS: sound.starts.atMs / 1000, withinS: sound.starts.withinS };
  const joined = joinCalls({ wants, calls, lengthS: sound.lengthS, starts, own });
  // With no want there is nothing to find the clock by but what is known of the beginning.
  const shiftS = wants.length === 0 ? (starts?.atS ?? timed[0]?.legs[0]?.tappedAtS ?? 0) : joined.shiftS;
  return {
    calls,
    reps: timed.map((rep) => ({
      ...rep,
      fromS: (rep.legs[0]?.tappedAtS ?? 0) - shiftS,
      toS: (rep.legs.at(-1)?.tappedAtS ?? 0) - shiftS,
    })),
    joins: wants.flatMap(({ rep, leg, kind }, n): ProposedJoin[] => {
      const candidates = (joined.wants[n] ?? []).map(({ call, sureness }) => ({ ...calls[call]!, sureness }));
      const [best] = candidates;
      if (best === undefined || best.sureness < ASKED_FROM) return [];
      return [
        { rep, leg, wanted: kind, candidates, isSure: best.sureness >= SURE_FROM && !joined.isCrowded },
      ];
    }),
    wanted: wants.length,
    untimed: reps.length - timed.length,
  };
}

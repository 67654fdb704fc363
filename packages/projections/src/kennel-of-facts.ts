import { type Counting, type FitProgress, fittingKennel, type Skill } from '@sedgeline/engine/ability';
import type { NextAnswer } from '@sedgeline/engine/session';
import type { Fact } from '@sedgeline/journal';
import type { AskedRep, Kennel, Turn } from './kennel.ts';
import { RecordBuilder } from './record/record-builder.ts';
import type { RepThread } from './record/rep-thread.ts';
import type { SessionRecord, TrainingRecord } from './record/training-record.ts';
import { type JoinProposal, joinReps, type ListenedSound } from './sound/join-reps.ts';
import { ownWhistleOf } from './sound/own-whistle-of.ts';
import { tappedReps } from './sound/tapped-reps.ts';
import { dogsView } from './standing/dogs-view.ts';
import { standingView } from './standing/standing.ts';
import { AbilityTimeline } from './timeline/ability-timeline.ts';
import { type FitNote, KennelFits, type WantedFit } from './timeline/kennel-fits.ts';
import { readTimelineState, type TimelineState, writeTimelineState } from './timeline/timeline-state.ts';
import type { RepHistoryView } from './views/rep-history-view.ts';
import type { DogsView, JudgedRep, StandingView, WorkView } from './views/views.ts';
import { judgedAmongOthers, othersInTurn } from './work/in-turn.ts';
import { chainRep, judgeRep, turnRep } from './work/judge.ts';
import { repHistory } from './work/rep-history.ts';
import { nextInSession, pictureConditions, workView } from './work/work-view.ts';

/** Holds facts, the record they fold to and the engine's walk through it; see `Kennel`. */
class KennelOfFacts implements Kennel {
  readonly #builder = new RecordBuilder();
  readonly #fits: KennelFits;
  #timelines: Readonly<Record<Counting, AbilityTimeline>>;
  #noted: TimelineState | null = null;
  #note: unknown = null;

  constructor(stored: TimelineState | null, fits: KennelFits) {
    this.#fits = fits;
    this.#timelines = {
      excused: new AbilityTimeline({ stored, fits }),
      everything: new AbilityTimeline({ counting: 'everything', fits }),
    };
  }

  add(facts: readonly Fact[]): void {
    this.#builder.add(facts);
  }

  get record(): TrainingRecord {
    return this.#builder.record();
  }

  timeline(counting: Counting = 'excused'): AbilityTimeline {
    const timeline = this.#timelines[counting];
    timeline.update(this.record);
    return timeline;
  }

  /** A walk of its own through other facts of this kennel: its past, say. Shares the kennel's fitted priors. */
  walkBeside(): AbilityTimeline {
    return new AbilityTimeline({ fits: this.#fits });
  }

  walkNote(): unknown {
    const state = this.timeline().state();
    if (state !== this.#noted) {
      this.#noted = state;
      this.#note = state === null ? null : writeTimelineState(state);
    }
    return this.#note;
  }

  fitting(): Generator<FitProgress, FitNote> | null {
    const { wanted } = this.#fits;
    return wanted === null ? null : this.#fit(wanted);
  }

  *#fit({ key, legs }: WantedFit): Generator<FitProgress, FitNote> {
    const answer = yield* fittingKennel(legs);
    this.#fits.put(key, answer);
    // The past is walked again beside what is in use, which goes on answering until the new one is whole.
    const excused = new AbilityTimeline({ fits: this.#fits });
    yield* excused.updating(this.record);
    this.#timelines = {
      excused,
      everything: new AbilityTimeline({ counting: 'everything', fits: this.#fits }),
    };
    return [key, answer];
  }

  dogs(nowMs: number): DogsView {
    return dogsView(this.record, this.timeline(), nowMs);
  }

  standing(dog: string, atMs: number): StandingView | null {
    const timelines = { excused: this.timeline(), everything: this.timeline('everything') };
    return standingView(this.record, timelines, dog, atMs);
  }

  work(session: string, atMs: number, seed: number): WorkView | null {
    const found = this.#session(session);
    if (found === null) return null;
    return workView(this.record, this.timeline(), found, this.#threads(found), atMs, seed);
  }

  next(session: string, atMs: number, seed: number): NextAnswer | null {
    const found = this.#session(session);
    return found === null ? null : nextInSession(this.record, this.timeline(), found, atMs, seed).next;
  }

  history(rep: string): RepHistoryView | null {
    const thread = this.#builder.repThread(rep);
    return thread === null ? null : repHistory(thread);
  }

  listen(session: string, sound: ListenedSound): JoinProposal | null {
    const found = this.#session(session);
    if (found === null) return null;
    const reps = tappedReps(this.record, found, (rep) => this.#builder.repThread(rep));
    return joinReps(reps, sound, ownWhistleOf(this.record, found.handler));
  }

  judge(session: string, rep: AskedRep, atMs: number): JudgedRep {
    const at = this.#at(session, atMs);
    return judgedAmongOthers(judgeRep(at.input, rep, at.conditions), at.others);
  }

  turn(session: string, rep: AskedRep, turn: Turn, atMs: number): JudgedRep | null {
    const at = this.#at(session, atMs);
    const turned = turnRep(at.input, rep, turn, at.conditions);
    return turned === null ? null : judgedAmongOthers(turned, at.others);
  }

  chainFor(session: string, skill: Skill, atMs: number): JudgedRep {
    const at = this.#at(session, atMs);
    return judgedAmongOthers(chainRep(at.input, skill, at.conditions), at.others);
  }

  #session(session: string): SessionRecord | null {
    return this.record.sessions.find((one) => one.session === session) ?? null;
  }

  #threads(session: SessionRecord): RepThread[] {
    return [...session.reps, ...session.struckReps]
      .map(({ rep }) => this.#builder.repThread(rep))
      .filter((thread) => thread !== null);
  }

  #at(session: string, atMs: number) {
    const found = this.#session(session);
    if (found === null)
      throw new RangeError(`session: expected one of the record's sessions, got ${session}`);
    const { input } = nextInSession(this.record, this.timeline(), found, atMs, 0);
    const others = othersInTurn(this.record, found);
    return { input, others, conditions: pictureConditions(this.record, found) };
  }
}

export interface KennelOptions {
  /**
   * What `walkNote` gave for the same record, read back from anywhere: what is none, or no longer fits the facts, is let fall.
   */
  readonly walkNote?: unknown;
  /** When the kennel's own priors are fitted: as a walk comes to them, or by whoever holds the kennel (`fitting`). */
  readonly fits?: 'at-once' | 'later';
  /** Fits made earlier, as `fitting` gave them. */
  readonly fitNotes?: readonly FitNote[];
}

/** A kennel with no facts yet. */
export function createKennel({
  walkNote,
  fits = 'at-once',
  fitNotes = [],
}: KennelOptions = {}): KennelOfFacts {
  return new KennelOfFacts(readTimelineState(walkNote), new KennelFits(fits, fitNotes));
}

export type { KennelOfFacts };

import type {
  AbilityFilter,
  Ask,
  Counting,
  FitProgress,
  LegQuestion,
  Skill,
} from '@sedgeline/engine/ability';
import type { TrainingRecord } from '../record/training-record.ts';
import { contextOf, type DogWalk } from './dog-walk.ts';
import { KennelFits } from './kennel-fits.ts';
import type { OwnFigures } from './own-figures.ts';
import { type HeardWord, RecordWalk, type StatedLeg, type WalkState } from './record-walk.ts';
import { fingerprint, toldFingerprint } from './rep-fingerprint.ts';
import { RepOrder, type SameSoFar } from './rep-order.ts';
import { type TimelineState, timelineState } from './timeline-state.ts';

interface Checkpoint extends WalkState {
  readonly reps: number;
  /** Legs stated before it; `null` where it was taken up from a stored state, without them. */
  readonly legs: number | null;
}

/** Reps walked at one go, where others wait: some ten milliseconds on a phone (our judgement, 2026). */
const REPS_A_STEP = 250;

export interface TimelineOptions {
  readonly counting?: Counting;
  /** A state to begin at, where it fits the record. */
  readonly stored?: TimelineState | null;
  /** Where the kennel's own priors come from; made at once when left out. */
  readonly fits?: KennelFits;
}

/**
 * The engine's walk through a record: every leg's chances from what came strictly before it, and the state after the
 * last. After a change only what follows the first changed rep of the last session is walked again; the
 * outcome equals a walk from scratch (fuzzed in `ability-timeline.property.test.ts`). A walk may begin at a stored
 * state instead of at the first rep; then the legs before it are stated only when somebody asks for them.
 */
export class AbilityTimeline {
  readonly #counting: Counting;
  readonly #fits: KennelFits;
  readonly #order = new RepOrder();
  #stored: TimelineState | null;
  #checkpoint: Checkpoint | null = null;
  #walk: RecordWalk;

  constructor({
    counting = 'excused',
    stored = null,
    fits = new KennelFits('at-once'),
  }: TimelineOptions = {}) {
    this.#counting = counting;
    this.#stored = stored;
    this.#fits = fits;
    this.#walk = new RecordWalk(counting, fits, null, noPast());
  }

  get filter(): AbilityFilter {
    return this.#walk.filter;
  }

  /** What the walk has learnt of its own figures: priors fitted to this kennel, a recalibration. */
  get own(): OwnFigures {
    return this.#walk.own;
  }

  /** Every leg with what was stated before it, in order. */
  get stated(): readonly StatedLeg[] {
    return this.#wholePast().stated;
  }

  /** What was told of the dogs, each with how many legs had been stated before it. */
  get heard(): readonly HeardWord[] {
    return this.#wholePast().heard;
  }

  walk(dog: string): DogWalk {
    return this.#walk.walk(dog);
  }

  /** Brings the walk up to a record. */
  update(record: TrainingRecord): void {
    const walked = this.#order.reps.length;
    const same = this.#order.update(record);
    const { reps, told } = this.#order;
    if (same.reps === walked && same.reps === reps.length && this.#walk.told === same.told) {
      if (same.told === told.length) return;
    }
    const isUnwalked = walked === 0 && this.#walk.told === 0;
    this.#walkFrom(isUnwalked ? this.#takeUpStored() : this.#goBack(same, walked));
  }

  /** `update` in steps of some hundred reps, between which others may be served. No `update` may come in between. */
  *updating(record: TrainingRecord): Generator<FitProgress> {
    const walked = this.#order.reps.length;
    const same = this.#order.update(record);
    yield* this.#steps(this.#goBack(same, walked));
  }

  /**
   * The state before the last session, to begin the next walk at; the same object until another session begins. `null` while a
   * fit is wanted: who begins there would go without it for good.
   */
  state(): TimelineState | null {
    const checkpoint = this.#checkpoint;
    if (checkpoint === null || checkpoint.own.lacksFit) return null;
    if (this.#stored?.reps === checkpoint.reps && this.#stored.filter === checkpoint.filter)
      return this.#stored;
    const { legs: _, reps, ...walk } = checkpoint;
    this.#stored = timelineState(walk, {
      reps,
      fingerprint: fingerprint(this.#order.reps, reps),
      toldFingerprint: toldFingerprint(this.#order.told, walk.told),
    });
    return this.#stored;
  }

  /** The question that a leg would be, asked now. */
  question(
    dog: string,
    skill: Skill,
    ask: Ask,
    at: { session: string | null; ground: string | null; atMs: number; repsSinceBreak: number },
    record: TrainingRecord,
  ): LegQuestion {
    const context = contextOf(this.walk(dog), record.dogs.get(dog) ?? null, skill, at);
    return { dog, skill, session: at.session, atMs: at.atMs, ask, context };
  }

  #walkFrom(from: number): void {
    const steps = this.#steps(from);
    while (steps.next().done !== true);
  }

  /** Walks on from a rep to the last, keeping the state before the last session; yields every so often. */
  *#steps(from: number): Generator<FitProgress> {
    const { reps } = this.#order;
    const last = reps.at(-1)?.session.session;
    const keepAt = reps.findIndex(({ session }) => session.session === last);
    for (let n = from; n < reps.length; n++) {
      const rep = reps[n]!;
      if (n % REPS_A_STEP === 0) yield { steps: n, most: reps.length };
      this.#hear(n);
      if (this.#walk.isDue && this.#walk.begins(rep)) {
        if (this.#walk.past === null) {
          n = this.#beginning() - 1;
          continue;
        }
        this.#walk.settle(() => fingerprint(reps, n), rep.rep.atMs);
      }
      if (n === keepAt && this.#checkpoint?.reps !== n) {
        this.#checkpoint = { reps: n, legs: this.#walk.past?.stated.length ?? null, ...this.#walk.state() };
      }
      this.#walk.take(rep);
    }
    this.#hear(reps.length);
  }

  /** Hears what was told before the rep of that number and was not heard yet. */
  #hear(place: number): void {
    const { told } = this.#order;
    for (let n = this.#walk.told; n < told.length && told[n]!.place <= place; n++) this.#walk.hear(told[n]!);
  }

  #wholePast() {
    if (this.#walk.past === null) this.#walkFrom(this.#beginning());
    return this.#walk.past ?? noPast();
  }

  /** Begins at the stored state where it fits the record, at the first rep where it does not. */
  #takeUpStored(): number {
    const stored = this.#stored;
    const { reps } = this.#order;
    if (stored === null || stored.reps > reps.length || stored.reps === 0) return 0;
    if (stored.fingerprint !== fingerprint(reps, stored.reps)) return 0;
    if (!this.#hasHeardRightly(stored)) return 0;
    this.#checkpoint = { ...stored, legs: null };
    return this.#goBack({ reps: stored.reps, told: stored.told }, 0);
  }

  /** Whether a stored state heard just what was told before its place. */
  #hasHeardRightly({ reps, told: heard, toldFingerprint: made }: TimelineState): boolean {
    const { told } = this.#order;
    if (heard > told.length || made !== toldFingerprint(told, heard)) return false;
    return (told[heard - 1]?.place ?? 0) <= reps && (told[heard]?.place ?? reps) >= reps;
  }

  /** Goes back to the last state that what is the same leads to; says how many reps it has seen. */
  #goBack(same: SameSoFar, walked: number): number {
    if (same.reps === walked && this.#walk.told <= same.told) return walked;
    const checkpoint = this.#checkpoint;
    if (checkpoint === null || checkpoint.reps > same.reps || checkpoint.told > same.told)
      return this.#beginning();
    const { past } = this.#walk;
    const kept =
      checkpoint.legs === null || past === null
        ? null
        : { stated: past.stated.slice(0, checkpoint.legs), heard: past.heard.slice(0, checkpoint.told) };
    this.#walk = new RecordWalk(this.#counting, this.#fits, checkpoint, kept);
    return checkpoint.reps;
  }

  #beginning(): number {
    this.#checkpoint = null;
    this.#walk = new RecordWalk(this.#counting, this.#fits, null, noPast());
    return 0;
  }
}

function noPast() {
  return { stated: [], heard: [] };
}

import {
  type AbilityFilter,
  type Ask,
  type Counting,
  createAbilityFilter,
  type LegForecast,
  type LegQuestion,
  type LegResult,
  legWeight,
  restoreAbilityFilter,
  type Skill,
} from '@sedgeline/engine/ability';
import { askedChain } from '../record/asked-chain.ts';
import type { Cause, RepRecord, TrainingRecord } from '../record/training-record.ts';
import { beginSession, bookRep, contextOf, type DogWalk, newDogWalk } from './dog-walk.ts';
import { fingerprint } from './rep-fingerprint.ts';
import { type OrderedRep, RepOrder } from './rep-order.ts';
import { copyWalks, type TimelineState } from './timeline-state.ts';

/** A leg with the chances stated before it. */
export interface StatedLeg {
  readonly rep: string;
  /** Counts from 0 within its rep. */
  readonly leg: number;
  readonly result: LegResult;
  readonly forecast: LegForecast;
  readonly cause: Cause | null;
}

interface Checkpoint extends Omit<TimelineState, 'form' | 'fingerprint'> {
  /** Legs stated before it; `null` where it was taken up from a stored state, without them. */
  readonly legs: number | null;
}

/**
 * The engine's walk through a record: every leg's chances from what came strictly before it, and the state after the
 * last. After a change only what follows the first changed rep of the last session is walked again; the
 * outcome equals a walk from scratch (fuzzed in `ability-timeline.property.test.ts`). A walk may begin at a stored
 * state instead of at the first rep; then the legs before it are stated only when somebody asks for them.
 */
export class AbilityTimeline {
  readonly #counting: Counting;
  readonly #order = new RepOrder();
  #stored: TimelineState | null;
  /** Legs stated so far; `null` while those before a stored state are not. */
  #stated: StatedLeg[] | null = [];
  #filter: AbilityFilter = createAbilityFilter();
  #walks = new Map<string, DogWalk>();
  #checkpoint: Checkpoint | null = null;

  constructor(counting: Counting = 'excused', stored: TimelineState | null = null) {
    this.#counting = counting;
    this.#stored = stored;
  }

  get filter(): AbilityFilter {
    return this.#filter;
  }

  /** Every leg with what was stated before it, in order. */
  get stated(): readonly StatedLeg[] {
    if (this.#stated === null) this.#walkFrom(this.#beginning());
    return this.#stated ?? [];
  }

  walk(dog: string): DogWalk {
    return this.#walks.get(dog) ?? newDogWalk();
  }

  /** Brings the walk up to a record. */
  update(record: TrainingRecord): void {
    const walked = this.#order.reps.length;
    const same = this.#order.update(record);
    if (same === walked && same === this.#order.reps.length) return;
    this.#walkFrom(walked === 0 ? this.#takeUpStored() : this.#goBack(same, walked));
  }

  /** The state before the last session, to begin the next walk at; the same object until another session begins. */
  state(): TimelineState | null {
    const checkpoint = this.#checkpoint;
    if (checkpoint === null) return null;
    if (this.#stored?.reps === checkpoint.reps && this.#stored.filter === checkpoint.filter)
      return this.#stored;
    const { reps, filter, walks } = checkpoint;
    this.#stored = {
      form: 'timeline-1',
      reps,
      fingerprint: fingerprint(this.#order.reps, reps),
      filter,
      walks,
    };
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

  /** Walks on from a rep to the last, keeping the state before the last session. */
  #walkFrom(from: number): void {
    const { reps } = this.#order;
    const last = reps.at(-1)?.session.session;
    const keepAt = reps.findIndex(({ session }) => session.session === last);
    for (let n = from; n < reps.length; n++) {
      if (n === keepAt && this.#checkpoint?.reps !== n) this.#keep(n);
      this.#take(reps[n]!);
    }
  }

  /** Begins at the stored state where it fits the record, at the first rep where it does not. */
  #takeUpStored(): number {
    const stored = this.#stored;
    const { reps } = this.#order;
    if (stored === null || stored.reps > reps.length || stored.reps === 0) return 0;
    if (stored.fingerprint !== fingerprint(reps, stored.reps)) return 0;
    this.#checkpoint = { ...stored, legs: null };
    return this.#goBack(stored.reps, 0);
  }

  /** Goes back to the last state that the first `same` reps lead to; says how many reps it has seen. */
  #goBack(same: number, walked: number): number {
    if (same === walked) return same;
    const checkpoint = this.#checkpoint;
    if (checkpoint === null || checkpoint.reps > same) return this.#beginning();
    this.#filter = restoreAbilityFilter(checkpoint.filter);
    this.#walks = copyWalks(checkpoint.walks);
    if (checkpoint.legs === null || this.#stated === null) this.#stated = null;
    else this.#stated.length = checkpoint.legs;
    return checkpoint.reps;
  }

  #beginning(): number {
    this.#checkpoint = null;
    this.#filter = createAbilityFilter();
    this.#walks = new Map();
    this.#stated = [];
    return 0;
  }

  #keep(reps: number): void {
    this.#checkpoint = {
      reps,
      legs: this.#stated?.length ?? null,
      filter: this.#filter.snapshot(),
      walks: copyWalks(this.#walks),
    };
  }

  #take({ rep, session, dog, repsSinceBreak }: OrderedRep): void {
    let walk = this.#walks.get(session.dog);
    if (walk === undefined) {
      walk = newDogWalk();
      this.#walks.set(session.dog, walk);
    }
    beginSession(walk, session);
    const at = { session: session.session, ground: session.ground, atMs: rep.atMs, repsSinceBreak };
    // All legs of a rep are asked in one go: their context is that of the rep's beginning.
    const contexts = rep.legs.map((leg) => contextOf(walk, dog, leg.skill, at));
    for (const [n, leg] of rep.legs.entries()) {
      const result: LegResult = {
        dog: session.dog,
        skill: leg.skill,
        session: session.session,
        atMs: rep.atMs,
        ask: leg.ask,
        context: contexts[n]!,
        grade: leg.grade,
        weight: legWeight(leg.grade, leg.cause ?? undefined, this.#counting),
      };
      const forecast = this.#filter.observe(result);
      this.#stated?.push({ rep: rep.rep, leg: n, result, forecast, cause: leg.cause });
      bookSuccess(walk, rep, n, result);
    }
    bookRep(walk, rep);
  }
}

/** Last ten good legs of a skill; fair ones only while there is no good one (contract: what a success is). */
function bookSuccess(walk: DogWalk, rep: RepRecord, leg: number, result: LegResult): void {
  if (result.grade === 'missed') return;
  const list = walk.successes[result.skill] ?? [];
  walk.successes[result.skill] = list;
  const success = { rep: rep.rep, leg, question: result, grade: result.grade, asked: askedChain(rep) };
  const hasGood = list.some((one) => one.grade === 'good');
  if (result.grade === 'fair' && hasGood) return;
  if (result.grade === 'good' && !hasGood) list.length = 0;
  list.push(success);
  if (list.length > 10) list.shift();
}

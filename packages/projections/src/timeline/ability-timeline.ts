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
import { beginSession, bookRep, contextOf, copyDogWalk, type DogWalk, newDogWalk } from './dog-walk.ts';
import { isSameRep, type OrderedRep, repsInOrder } from './reps-in-order.ts';

/** A leg with the chances stated before it. */
export interface StatedLeg {
  readonly rep: string;
  /** Counts from 0 within its rep. */
  readonly leg: number;
  readonly result: LegResult;
  readonly forecast: LegForecast;
  readonly cause: Cause | null;
}

interface Checkpoint {
  readonly reps: number;
  readonly legs: number;
  readonly filter: unknown;
  readonly walks: ReadonlyMap<string, DogWalk>;
}

/**
 * The engine's walk through a record: every leg's chances from what came strictly before it, and the state after the
 * last. After a change only what follows the first changed rep of the last session is walked again; the
 * outcome equals a walk from scratch (fuzzed in `ability-timeline.property.test.ts`).
 */
export class AbilityTimeline {
  readonly #counting: Counting;
  #reps: readonly OrderedRep[] = [];
  #stated: StatedLeg[] = [];
  #filter: AbilityFilter = createAbilityFilter();
  #walks = new Map<string, DogWalk>();
  #checkpoint: Checkpoint | null = null;

  constructor(counting: Counting = 'excused') {
    this.#counting = counting;
  }

  get filter(): AbilityFilter {
    return this.#filter;
  }

  /** Every leg with what was stated before it, in order. */
  get stated(): readonly StatedLeg[] {
    return this.#stated;
  }

  walk(dog: string): DogWalk {
    return this.#walks.get(dog) ?? newDogWalk();
  }

  /** Brings the walk up to a record. */
  update(record: TrainingRecord): void {
    const reps = repsInOrder(record);
    const same = sameUpTo(this.#reps, reps);
    if (same === this.#reps.length && same === reps.length) return;
    const from = this.#goBack(same);
    const lastSession = reps.at(-1)?.session.session;
    const keepAt = reps.findIndex(({ session }) => session.session === lastSession);
    this.#reps = reps;
    for (let i = from; i < reps.length; i++) {
      if (i === keepAt && this.#checkpoint?.reps !== i) this.#keep(i);
      this.#take(reps[i]!);
    }
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

  /** Goes back to the last state that the first `same` reps lead to; says how many reps it has seen. */
  #goBack(same: number): number {
    if (same === this.#reps.length) return same;
    const checkpoint = this.#checkpoint;
    if (checkpoint !== null && checkpoint.reps <= same) {
      this.#filter = restoreAbilityFilter(checkpoint.filter);
      this.#walks = copyWalks(checkpoint.walks);
      this.#stated.length = checkpoint.legs;
      return checkpoint.reps;
    }
    this.#checkpoint = null;
    this.#filter = createAbilityFilter();
    this.#walks = new Map();
    this.#stated = [];
    return 0;
  }

  #keep(reps: number): void {
    this.#checkpoint = {
      reps,
      legs: this.#stated.length,
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
      this.#stated.push({
        rep: rep.rep,
        leg: n,
        result,
        forecast: this.#filter.observe(result),
        cause: leg.cause,
      });
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

function copyWalks(walks: ReadonlyMap<string, DogWalk>): Map<string, DogWalk> {
  return new Map([...walks].map(([dog, walk]) => [dog, copyDogWalk(walk)] as const));
}

function sameUpTo(a: readonly OrderedRep[], b: readonly OrderedRep[]): number {
  const most = Math.min(a.length, b.length);
  let same = 0;
  while (same < most && isSameRep(a[same]!, b[same]!)) same++;
  return same;
}

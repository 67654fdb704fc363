import {
  type AbilityFilter,
  type Ask,
  type Cause,
  type Counting,
  correctForecast,
  createAbilityFilter,
  type GradeChances,
  type LegForecast,
  type LegResult,
  legWeight,
  recalibrate,
  recalibratedFilter,
  restoreAbilityFilter,
  type Skill,
} from '@sedgeline/engine/ability';
import { askedChain } from '../record/asked-chain.ts';
import type { RepRecord } from '../record/training-record.ts';
import {
  ageMonths,
  beginSession,
  bookRep,
  contextOf,
  copyDogWalk,
  type DogWalk,
  newDogWalk,
} from './dog-walk.ts';
import type { KennelFits } from './kennel-fits.ts';
import {
  fitTriesBy,
  isFitDue,
  NO_OWN_FIGURES,
  type OwnFigures,
  ownPriors,
  RECALIBRATION_LEGS,
  recalibrationTriesBy,
} from './own-figures.ts';
import type { OrderedRep, OrderedTold } from './rep-order.ts';

/** A leg with the chances stated before it. */
export interface StatedLeg {
  readonly rep: string;
  /** Counts from 0 within its rep. */
  readonly leg: number;
  readonly result: LegResult;
  readonly forecast: LegForecast;
  /** The chances before any recalibration. */
  readonly plain: GradeChances;
  readonly cause: Cause | null;
  /** It was to be stopped nearer than it was: the whistle came later than planned. */
  readonly wasBlownLate: boolean;
}

/** Where a walk stands: enough to go on from. */
export interface WalkState {
  /** The filter's snapshot, made with the priors of `own`. */
  readonly filter: unknown;
  readonly walks: ReadonlyMap<string, DogWalk>;
  readonly own: OwnFigures;
  /** How many of the things told it has heard. */
  readonly told: number;
}

/** Something told, and how many legs had been stated before it. */
export interface HeardWord {
  readonly after: number;
  readonly told: OrderedTold;
}

/** What a walk stated and heard so far, in order. */
export interface WalkedPast {
  readonly stated: StatedLeg[];
  readonly heard: HeardWord[];
}

/** One walk through the reps, in their order: the engine's filter, each dog's own account, and the kennel's own figures. */
export class RecordWalk {
  readonly #counting: Counting;
  readonly #fits: KennelFits;
  readonly #walks: Map<string, DogWalk>;
  #own: OwnFigures;
  #plain: AbilityFilter;
  #shown: AbilityFilter;
  #told: number;
  /** `null` where the walk went on from a state: what was stated before it is not here. */
  readonly past: WalkedPast | null;

  constructor(counting: Counting, fits: KennelFits, from: WalkState | null, past: WalkedPast | null) {
    this.#counting = counting;
    this.#fits = fits;
    this.#own = from?.own ?? NO_OWN_FIGURES;
    this.#walks = from === null ? new Map() : copyWalks(from.walks);
    const priors = ownPriors(this.#own);
    this.#plain = from === null ? createAbilityFilter(priors) : restoreAbilityFilter(from.filter, priors);
    this.#shown = this.#corrected();
    this.#told = from?.told ?? 0;
    this.past = past;
  }

  /** The filter as it is shown: recalibrated where that was earned. */
  get filter(): AbilityFilter {
    return this.#shown;
  }

  get own(): OwnFigures {
    return this.#own;
  }

  /** How many of the things told it has heard. */
  get told(): number {
    return this.#told;
  }

  walk(dog: string): DogWalk {
    return this.#walks.get(dog) ?? newDogWalk();
  }

  state(): WalkState {
    return {
      filter: this.#plain.snapshot(),
      walks: copyWalks(this.#walks),
      own: this.#own,
      told: this.#told,
    };
  }

  /** Hears what was told of a dog: from here on it counts. */
  hear(told: OrderedTold): void {
    tellFilter(this.#plain, told);
    this.#told += 1;
    this.past?.heard.push({ after: this.past.stated.length, told });
  }

  /** Whether a rep begins its session. */
  begins({ session }: OrderedRep): boolean {
    return this.#walks.get(session.dog)?.newness[session.session] === undefined;
  }

  /** Whether the kennel's own figures are to be looked at before the next session. */
  get isDue(): boolean {
    return isFitDue(this.#own) || recalibrationTriesBy(this.#own.scored) > this.#own.recalibrationTries;
  }

  /** Looks at the kennel's own figures, from the legs so far; `key` names the reps walked. Needs the past. */
  settle(key: () => string, fromMs: number): void {
    const stated = this.past?.stated ?? [];
    if (isFitDue(this.#own)) {
      const answer = this.#fits.of(key(), () => excused(stated));
      const { scored, fits } = this.#own;
      this.#own = { ...this.#own, fitTries: fitTriesBy(scored), lacksFit: answer === null };
      if (answer?.kind === 'fitted') this.#own = { ...this.#own, fits: [...fits, { ...answer, fromMs }] };
      if (answer?.kind === 'fitted') this.#learnAgain();
    }
    const tries = recalibrationTriesBy(this.#own.scored);
    if (tries > this.#own.recalibrationTries) {
      const outcomes = stated.filter(({ result }) => result.weight > 0).slice(-RECALIBRATION_LEGS);
      const answer = recalibrate(
        outcomes.map(({ plain, result }) => ({ chance: plain, grade: result.grade })),
      );
      const recalibration =
        answer.kind === 'earned'
          ? {
              slope: answer.slope,
              notMissedIntercept: answer.notMissedIntercept,
              goodIntercept: answer.goodIntercept,
              interval90: answer.interval90,
              legs: outcomes.length,
              fromMs,
            }
          : null;
      this.#own = { ...this.#own, recalibrationTries: tries, recalibration };
    }
    this.#shown = this.#corrected();
  }

  take({ rep, session, dog, repsSinceBreak }: OrderedRep): void {
    let walk = this.#walks.get(session.dog);
    if (walk === undefined) {
      walk = newDogWalk();
      this.#walks.set(session.dog, walk);
    }
    beginSession(walk, session);
    const at = { session: session.session, ground: session.ground, atMs: rep.atMs, repsSinceBreak };
    // All legs of a rep are asked in one go: their context is that of the rep's beginning.
    const contexts = rep.legs.map((leg) => contextOf(walk, dog, leg.skill, at));
    let scored = 0;
    for (const [n, leg] of rep.legs.entries()) {
      const { skill, ask, grade, cause, planned } = leg;
      const result: LegResult = {
        dog: session.dog,
        skill,
        session: session.session,
        atMs: rep.atMs,
        ask,
        context: contexts[n]!,
        grade,
        weight: legWeight(grade, cause ?? undefined, this.#counting),
      };
      const plain = this.#plain.observe(result);
      const { recalibration } = this.#own;
      const forecast = recalibration === null ? plain : correctForecast(plain, recalibration);
      this.past?.stated.push({
        rep: rep.rep,
        leg: n,
        result,
        forecast,
        plain: plain.chance,
        cause,
        wasBlownLate: isStopLate(skill, planned, ask),
      });
      bookSuccess(walk, rep, n, result);
      if (legWeight(grade, cause ?? undefined, 'excused') > 0) scored += 1;
    }
    bookRep(walk, rep);
    this.#own = { ...this.#own, scored: this.#own.scored + scored };
  }

  #corrected(): AbilityFilter {
    const { recalibration } = this.#own;
    return recalibration === null ? this.#plain : recalibratedFilter(this.#plain, recalibration);
  }

  /** The past again under the kennel's own priors: for what comes next, not for what was stated. */
  #learnAgain(): void {
    const filter = createAbilityFilter(ownPriors(this.#own));
    const { stated, heard } = this.past ?? { stated: [], heard: [] };
    replayPast(filter, stated, heard, ({ result }) => filter.observe(result));
    this.#plain = filter;
  }
}

/** Takes a filter through a past: each leg by `take`, and what was told in between at its place. */
export function replayPast(
  filter: AbilityFilter,
  stated: readonly StatedLeg[],
  heard: readonly HeardWord[],
  take: (leg: StatedLeg) => void,
): void {
  let word = 0;
  const hearTill = (after: number) => {
    for (; word < heard.length && heard[word]!.after <= after; word++) tellFilter(filter, heard[word]!.told);
  };
  for (const [n, leg] of stated.entries()) {
    hearTill(n);
    take(leg);
  }
  hearTill(stated.length);
}

function tellFilter(filter: AbilityFilter, { told, dog }: OrderedTold): void {
  const { farthestM, ground, atMs } = told;
  const level = told.isWithdrawn ? null : { farthestM, ground, ageMonths: ageMonths(dog, atMs) };
  filter.tell(told.dog, told.skill, atMs, level);
}

/** The legs as they count by default, whatever this walk counts: both ways of counting share the kennel's figures. */
function excused(stated: readonly StatedLeg[]): readonly LegResult[] {
  return stated.map(({ result, cause }) => ({
    ...result,
    weight: legWeight(result.grade, cause ?? undefined, 'excused'),
  }));
}

/** A stop comes late from so many metres beyond the place planned: what is nearer is a step of the handler's (our judgement, 2026). */
const LATE_M = 1;

function isStopLate(skill: Skill, planned: Ask | undefined, done: Ask): boolean {
  if (skill !== 'stop' || planned?.distanceM === undefined || done.distanceM === undefined) return false;
  return done.distanceM - planned.distanceM >= LATE_M;
}

function copyWalks(walks: ReadonlyMap<string, DogWalk>): Map<string, DogWalk> {
  return new Map([...walks].map(([dog, walk]) => [dog, copyDogWalk(walk)] as const));
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

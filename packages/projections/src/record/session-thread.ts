import {
  type BreakStarted,
  type BreakTaken,
  compareKeys,
  type SessionClosed,
  type SessionFocused,
  type SessionOpened,
} from '@sedgeline/journal';
import { earlier, insertInOrder, type Keyed, later } from './keyed.ts';
import type { RepThread } from './rep-thread.ts';
import type { RepRecord, SessionRecord } from './training-record.ts';

/** Every fact about one session, and its reps. */
export class SessionThread {
  #opened: Keyed<SessionOpened> | null = null;
  #closed: Keyed<SessionClosed> | null = null;
  #focused: Keyed<SessionFocused> | null = null;
  #breakStarted: Keyed<BreakStarted> | null = null;
  readonly #breaks: Keyed<BreakTaken>[] = [];
  readonly reps = new Set<RepThread>();
  #session: SessionRecord | null = null;
  facts = 0;

  addOpened(fact: Keyed<SessionOpened>): void {
    this.#opened = earlier(this.#opened, fact);
    this.#touchedByFact();
  }

  addClosed(fact: Keyed<SessionClosed>): void {
    this.#closed = later(this.#closed, fact);
    this.#touchedByFact();
  }

  addFocused(fact: Keyed<SessionFocused>): void {
    this.#focused = later(this.#focused, fact);
    this.#touchedByFact();
  }

  addBreakStarted(fact: Keyed<BreakStarted>): void {
    this.#breakStarted = later(this.#breakStarted, fact);
    this.#touchedByFact();
  }

  addBreak(fact: Keyed<BreakTaken>): void {
    insertInOrder(this.#breaks, fact);
    this.#touchedByFact();
  }

  /** Says that one of its reps changed. */
  touched(): void {
    this.#session = null;
  }

  #touchedByFact(): void {
    this.facts += 1;
    this.touched();
  }

  get opened(): Keyed<SessionOpened> | null {
    return this.#opened;
  }

  /** The session as it stands; `null` while the fact that opened it is not there. */
  session(): SessionRecord | null {
    if (this.#session === null && this.#opened !== null) this.#session = this.#folded(this.#opened);
    return this.#session;
  }

  #folded(opened: Keyed<SessionOpened>): SessionRecord {
    const reps = [...this.reps].map((thread) => thread.rep()).filter((rep) => rep !== null);
    reps.sort((a, b) => compareKeys(a.orderKey, b.orderKey));
    const { body } = opened;
    return {
      session: body.session,
      dog: body.dog,
      ground: body.ground ?? null,
      handler: body.handler ?? null,
      layout: body.layout ?? null,
      plan: body.plan ?? null,
      class: body.class ?? null,
      orderKey: opened.key,
      openedAtMs: opened.atMs,
      closedAtMs: this.#closed?.atMs ?? null,
      focus: this.#focused?.body.skill ?? null,
      windMPerS: body.weather?.windMPerS ?? null,
      windFromDeg: body.weather?.windFromDeg ?? null,
      airC: body.weather?.airC ?? null,
      humidityPct: body.weather?.humidityPct ?? null,
      reps: reps.filter((rep) => !rep.struck),
      struckReps: reps.filter((rep) => rep.struck),
      breaks: this.#breaks.map(({ key, atMs, body: taken }) => ({
        orderKey: key,
        atMs,
        minutes: taken.minutes,
      })),
      breakRunning: this.#breakRunning(reps),
      note: this.#closed?.body.note ?? null,
    };
  }

  /** A break that was begun is over when a break was taken, a rep recorded or the session closed after it. */
  #breakRunning(reps: readonly RepRecord[]): SessionRecord['breakRunning'] {
    const started = this.#breakStarted;
    if (started === null) return null;
    const isOver = [this.#breaks.at(-1)?.key, reps.at(-1)?.orderKey, this.#closed?.key].some(
      (key) => key !== undefined && compareKeys(key, started.key) > 0,
    );
    return isOver ? null : { startedAtMs: started.atMs, minutes: started.body.minutes };
  }
}

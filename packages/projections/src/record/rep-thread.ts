import type { RepAmended, RepEnded, RepRecorded } from '@sedgeline/journal';
import { earlier, insertInOrder, type Keyed, later } from './keyed.ts';
import type { LegRecord, RepRecord } from './training-record.ts';

/** Every fact about one rep. The rep that stands is what they come to, whatever order they arrived in. */
export class RepThread {
  #recorded: Keyed<RepRecorded> | null = null;
  #ended: Keyed<RepEnded> | null = null;
  readonly #amended: Keyed<RepAmended>[] = [];
  #strikes = 0;
  #rep: RepRecord | null = null;
  /** Facts held here. */
  facts = 0;

  addRecorded(fact: Keyed<RepRecorded>): void {
    this.#recorded = earlier(this.#recorded, fact);
    this.#touched();
  }

  addAmended(fact: Keyed<RepAmended>): void {
    insertInOrder(this.#amended, fact);
    this.#touched();
  }

  addEnded(fact: Keyed<RepEnded>): void {
    this.#ended = later(this.#ended, fact);
    this.#touched();
  }

  /** Once struck, always struck: merged anywhere, in any order. */
  addStruck(): void {
    this.#strikes += 1;
    this.#touched();
  }

  get session(): string | null {
    return this.#recorded?.body.session ?? null;
  }

  /** Amendments in order: what undo walks back through. */
  get amendments(): readonly Keyed<RepAmended>[] {
    return this.#amended;
  }

  get recorded(): Keyed<RepRecorded> | null {
    return this.#recorded;
  }

  get ended(): Keyed<RepEnded> | null {
    return this.#ended;
  }

  /** The rep as the record finally has it; `null` while the fact that recorded it is not there. */
  rep(): RepRecord | null {
    if (this.#rep === null && this.#recorded !== null) this.#rep = this.#folded(this.#recorded);
    return this.#rep;
  }

  #touched(): void {
    this.facts += 1;
    this.#rep = null;
  }

  #folded(recorded: Keyed<RepRecorded>): RepRecord {
    const { body } = recorded;
    let { legs, clean, expectation, note } = body;
    for (const { body: amended } of this.#amended) {
      legs = amended.legs ?? legs;
      clean = amended.clean ?? clean;
      expectation = amended.expectation ?? expectation;
      note = amended.note ?? note;
    }
    return {
      rep: body.rep,
      session: body.session,
      orderKey: recorded.key,
      atMs: recorded.atMs,
      legs: legs.map(
        (leg): LegRecord => ({
          skill: leg.skill,
          ask: leg.ask,
          grade: leg.grade,
          cause: leg.grade === 'good' ? null : (leg.cause ?? 'dog'),
          ...(leg.latencyS === undefined ? {} : { latencyS: leg.latencyS }),
          ...(leg.note === undefined ? {} : { note: leg.note }),
          ...(leg.planned === undefined ? {} : { planned: leg.planned }),
        }),
      ),
      clean: clean ?? false,
      expectation: expectation ?? 'none',
      layout: body.layout ?? null,
      dummiesOut: body.dummiesOut ?? null,
      note: note ?? null,
      struck: this.#strikes > 0,
      amendments: this.#amended.length,
      chain: body.chain ?? null,
      purpose: body.purpose ?? null,
      planRep: body.planRep ?? null,
      ended: this.#ended !== null && this.#ended.body.ended !== false,
    };
  }
}

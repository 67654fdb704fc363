import type {
  RepAmended,
  RepEnded,
  RepRecorded,
  RepRestored,
  RepStruck,
  VoiceDropped,
  VoiceNoted,
} from '@sedgeline/journal';
import { earlier, insertInOrder, type Keyed } from './keyed.ts';
import type { LegRecord, RepRecord, VoiceRecord } from './training-record.ts';

/** Every fact about one rep. The rep that stands is what they come to, whatever order they arrived in. */
export class RepThread {
  #recorded: Keyed<RepRecorded> | null = null;
  readonly #ends: Keyed<RepEnded>[] = [];
  readonly #amended: Keyed<RepAmended>[] = [];
  readonly #strikes: Keyed<RepStruck>[] = [];
  readonly #restored: Keyed<RepRestored>[] = [];
  readonly #voices: Keyed<VoiceNoted>[] = [];
  readonly #dropped = new Set<string>();
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
    insertInOrder(this.#ends, fact);
    this.#touched();
  }

  /** Struck while one strike is not taken back: merged anywhere, in any order. */
  addStruck(fact: Keyed<RepStruck>): void {
    insertInOrder(this.#strikes, fact);
    this.#touched();
  }

  addRestored(fact: Keyed<RepRestored>): void {
    insertInOrder(this.#restored, fact);
    this.#touched();
  }

  addVoice(fact: Keyed<VoiceNoted>): void {
    insertInOrder(this.#voices, fact);
    this.#touched();
  }

  addVoiceDropped({ body }: Keyed<VoiceDropped>): void {
    this.#dropped.add(body.voice);
    this.#touched();
  }

  get session(): string | null {
    return this.#recorded?.body.session ?? null;
  }

  /** Amendments in order: what undo walks back through. */
  get amendments(): readonly Keyed<RepAmended>[] {
    return this.#amended;
  }

  get strikes(): readonly Keyed<RepStruck>[] {
    return this.#strikes;
  }

  get restored(): readonly Keyed<RepRestored>[] {
    return this.#restored;
  }

  get recorded(): Keyed<RepRecorded> | null {
    return this.#recorded;
  }

  /** What was said last of whether its chain is over. */
  get ended(): Keyed<RepEnded> | null {
    return this.#ends.at(-1) ?? null;
  }

  get ends(): readonly Keyed<RepEnded>[] {
    return this.#ends;
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
    let { legs, clean, expectation, note, reward, gotItAnyway } = body;
    for (const { body: amended } of this.#amended) {
      legs = amended.legs ?? legs;
      clean = amended.clean ?? clean;
      expectation = amended.expectation ?? expectation;
      note = amended.note ?? note;
      reward = amended.reward ?? reward;
      gotItAnyway = amended.gotItAnyway ?? gotItAnyway;
    }
    const takenBack = new Set(this.#restored.map((restored) => restored.body.undoes));
    const strikes = this.#strikes.filter(({ key }) => !takenBack.has(key.id));
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
      struck: strikes.length > 0,
      struckBy: strikes.every((strike) => strike.body.undoes === undefined)
        ? strikes.map(({ key }) => key.id)
        : [],
      amendments: this.#amended.length,
      reward: reward ?? null,
      gotItAnyway: gotItAnyway ?? false,
      fromMemory: body.fromMemory ?? false,
      voices: this.#voices
        .filter((noted) => !this.#dropped.has(noted.body.voice))
        .map(({ atMs, body: { voice, lengthS, sha256 } }): VoiceRecord => ({ voice, atMs, lengthS, sha256 })),
      chain: body.chain ?? null,
      purpose: body.purpose ?? null,
      planRep: body.planRep ?? null,
      ended: this.ended !== null && this.ended.body.ended !== false,
    };
  }
}

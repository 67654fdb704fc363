import type { Ask, Skill } from '@sedgeline/engine/ability';
import type { Fact } from '@sedgeline/journal';
import type { Cause } from '../record/training-record.ts';

/** One leg of a rep that is written down: skill, ask and what came of it. */
export interface WrittenLeg {
  readonly skill: Skill;
  readonly ask?: Ask;
  readonly grade?: 'good' | 'fair' | 'missed';
  readonly cause?: Cause;
}

/** Writes an invented journal by hand, a minute after another: the record that a test reasons about. */
export class TrainingDay {
  readonly facts: Fact[] = [];
  #atMs: number;
  #session = '';

  constructor(at: string) {
    this.#atMs = Date.parse(at);
  }

  get atMs(): number {
    return this.#atMs;
  }

  get session(): string {
    return this.#session;
  }

  dog(dog: string, more: Readonly<Record<string, unknown>> = {}): this {
    return this.write('dog-added', { dog, name: dog, ...more });
  }

  open(session: string, dog: string, more: Readonly<Record<string, unknown>> = {}): this {
    this.#session = session;
    return this.write('session-opened', { session, dog, ...more });
  }

  focus(skill: Skill): this {
    return this.write('session-focused', { session: this.#session, skill });
  }

  rep(legs: readonly WrittenLeg[], more: Readonly<Record<string, unknown>> = {}): this {
    const written = legs.map(({ skill, ask = {}, grade = 'good', cause }) => ({
      skill,
      ask,
      grade,
      ...(cause === undefined ? {} : { cause }),
    }));
    return this.write('rep-recorded', {
      rep: `rep-${this.facts.length}`,
      session: this.#session,
      legs: written,
      ...more,
    });
  }

  wait(minutes: number): this {
    this.#atMs += minutes * 60_000;
    return this;
  }

  write(kind: string, body: Readonly<Record<string, unknown>>): this {
    this.#atMs += 60_000;
    this.facts.push({ id: `fact-${this.facts.length}`, kind, at: new Date(this.#atMs).toISOString(), body });
    return this;
  }
}

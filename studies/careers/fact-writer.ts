import type { CareerFact } from './career.ts';

/** Writes the facts of a career, each with an id of its own. */
export class FactWriter {
  readonly #facts: { readonly atMs: number; readonly fact: CareerFact }[] = [];
  readonly #prefix: string;

  constructor(prefix: string) {
    this.#prefix = prefix;
  }

  write(kind: string, atMs: number, body: CareerFact['body']): void {
    const id = `${this.#prefix}-${String(this.#facts.length).padStart(6, '0')}`;
    this.#facts.push({ atMs, fact: { id, kind, at: new Date(atMs).toISOString(), body } });
  }

  inTimeOrder(): CareerFact[] {
    return [...this.#facts].sort((a, b) => a.atMs - b.atMs).map(({ fact }) => fact);
  }
}

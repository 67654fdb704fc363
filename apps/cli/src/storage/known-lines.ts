import { type Fact, type FactLine, readJournal, type StoredFacts, storedFact } from '@sedgeline/journal';

const LINE_END = 0x0a;

/**
 * What a file store remembers of its file between two appends: the lines, and where each id stands. Facts are parsed anew
 * from their lines when they are asked for, so that no caller can change what the store compares with (rule S8).
 */
export class KnownLines {
  readonly #lines: string[];
  readonly #lineOf: Map<string, number>;
  #size: number;
  #end: Uint8Array;

  constructor(bytes: Uint8Array, lines: string[], lineOf: Map<string, number>) {
    this.#lines = lines;
    this.#lineOf = lineOf;
    this.#size = bytes.length;
    this.#end = bytes.slice(bytes.lastIndexOf(LINE_END) + 1);
  }

  /** Size of the file in bytes. */
  get size(): number {
    return this.#size;
  }

  /** What follows the last line end: nothing, a line that is whole but for its end, or a torn one. */
  get end(): Uint8Array {
    return this.#end;
  }

  /** Whether what follows the last line end was torn off in mid-write. */
  get endIsTorn(): boolean {
    const text = new TextDecoder().decode(this.#end).trim();
    return text !== '' && storedFact(text) === undefined;
  }

  /** What the file says under this id, if it can be read. */
  factOf(id: string): Fact | undefined {
    const line = this.#lineOf.get(id);
    return line === undefined ? undefined : storedFact(this.#lines[line]?.trim());
  }

  /** Takes note of lines that were appended, `bytes` of them. */
  add(lines: readonly FactLine[], bytes: number): void {
    for (const { id, line } of lines) this.#lineOf.set(id, this.#lines.push(line) - 1);
    this.#size += bytes;
    this.#end = new Uint8Array();
  }
}

/** Reads the bytes of a journal file: what a caller is given, and what the store remembers. */
export function readJournalBytes(bytes: Uint8Array): {
  readonly stored: StoredFacts;
  readonly known: KnownLines;
} {
  const text = new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes);
  const { facts, lines, errors, damagedTextLines } = readJournal(text);
  const damage = errors.map(({ line, field, message }) => ({
    where: field === '' ? `line ${line}` : `line ${line}, ${field}`,
    message,
  }));
  if (!isUtf8(bytes)) {
    for (const line of damagedTextLines) {
      damage.push({ where: `line ${line}`, message: 'a text of this line is not UTF-8; the fact is kept' });
    }
  }
  const lineOf = new Map(facts.map((fact, i) => [fact.id, lines[i]! - 1]));
  return { stored: { facts, damage }, known: new KnownLines(bytes, text.split('\n'), lineOf) };
}

function isUtf8(bytes: Uint8Array): boolean {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return true;
  } catch (error) {
    if (error instanceof TypeError) return false;
    throw error;
  }
}

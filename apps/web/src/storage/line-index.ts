import { storedFact } from '@sedgeline/journal';
import { appendBytes, readBytes, type SyncFile } from './opfs-file.ts';

const LINE_END = 0x0a;
const ID_FIRST = '{"id":"';
const text = new TextDecoder();
const bytesOf = new TextEncoder();

/**
 * Which facts a file of lines holds and where: read on from where it was left, so that what another tab appended is known at
 * the price of reading that alone.
 */
export class LineIndex {
  readonly #places = new Map<string, { readonly at: number; readonly length: number }>();
  #size = 0;

  get ids(): ReadonlySet<string> {
    return new Set(this.#places.keys());
  }

  /** Reads what was added since the last time; begins anew where the file has become shorter. */
  readOn(file: SyncFile): void {
    if (file.getSize() < this.#size) {
      this.#places.clear();
      this.#size = 0;
    }
    const bytes = readBytes(file, this.#size);
    let start = 0;
    for (let end = bytes.indexOf(LINE_END); end !== -1; end = bytes.indexOf(LINE_END, start)) {
      const id = lineId(text.decode(bytes.subarray(start, end)));
      if (id !== undefined) this.#places.set(id, { at: this.#size + start, length: end - start });
      start = end + 1;
    }
    this.#size += start;
  }

  /** The line of a fact, as it stands in the file. */
  line(file: SyncFile, id: string): string | undefined {
    const place = this.#places.get(id);
    if (place === undefined) return undefined;
    const bytes = new Uint8Array(place.length);
    file.read(bytes, { at: place.at });
    return text.decode(bytes);
  }

  /**
   * Appends lines in one write, flushed. A last line that a cut power left without its end is cut away first, unless
   * only the end is missing: it was never acknowledged.
   */
  append(file: SyncFile, lines: readonly string[]): void {
    const torn = readBytes(file, this.#size);
    if (torn.length > 0) {
      if (storedFact(text.decode(torn)) === undefined) file.truncate(this.#size);
      else appendBytes(file, Uint8Array.of(LINE_END));
    }
    appendBytes(file, bytesOf.encode(lines.map((line) => `${line}\n`).join('')));
    this.readOn(file);
  }
}

/** The id of a line, looked for where it is written first; `undefined` where the line does not read. */
function lineId(line: string): string | undefined {
  const end = line.indexOf('"', ID_FIRST.length);
  if (line.startsWith(ID_FIRST) && line.endsWith('}') && end > 0) {
    const id = line.slice(ID_FIRST.length, end);
    if (!id.includes('\\')) return id;
  }
  return storedFact(line)?.id;
}

import { type FactLine, newLines, type StoredFacts, type StoreResult, storedFact } from '@sedgeline/journal';
import { withFileLock } from './file-lock.ts';
import { type FileSystem, whereThere } from './file-system.ts';
import { appendDurably, setTornEndAside } from './journal-file.ts';
import { type KnownLines, readJournalBytes } from './known-lines.ts';
import { readPending, removePending, writePending } from './pending-file.ts';

/** A journal file that several processes may write: every change happens under its lock, after what was left is settled. */
export class SharedJournal {
  readonly #files: FileSystem;
  readonly #path: string;
  readonly #lockWaitMs: number;
  #known: { readonly lines: KnownLines; readonly version: string } | null = null;

  constructor(files: FileSystem, path: string, lockWaitMs: number) {
    this.#files = files;
    this.#path = path;
    this.#lockWaitMs = lockWaitMs;
  }

  /** Appends those of the lines that are not there, durably, all or none. */
  append(lines: readonly FactLine[]): Promise<StoreResult<{ readonly added: number }>> {
    return this.#locked(async () => {
      await this.#settle();
      const there = await this.#knownNow();
      const toWrite = newLines(lines, (id) => there.factOf(id));
      if (!toWrite.ok) return toWrite;
      const added = toWrite.value.length;
      if (added > 1) await this.#writeWithPending(toWrite.value);
      else if (added === 1) await this.#write(toWrite.value);
      return { ok: true, value: { added } };
    });
  }

  /** Reads the file. Needs the lock only where another process may be at work, or was stopped at it. */
  async read(): Promise<StoredFacts> {
    const read = await this.#readAnew();
    const isSettled = !read.known.endIsTorn && (await readPending(this.#files, this.#path)) === null;
    if (isSettled && this.#known?.version === (await this.#version())) return read.stored;
    const settled = this.#locked(async () => {
      await this.#settle();
      return this.#readAnew();
    });
    // Where no lock can be had (a folder that may not be written to) the first look counts.
    const again = await settled.catch(() => read);
    return again.stored;
  }

  /** Forgets what was read: the file is looked at afresh the next time. */
  forget(): void {
    this.#known = null;
  }

  /** Completes an append of several facts that was cut off after its note of intent was whole; drops one that was not. */
  async #settle(): Promise<void> {
    const pending = await readPending(this.#files, this.#path);
    if (pending === null) return;
    const there = await this.#knownNow();
    const missing = pending.flatMap((line) => {
      const fact = storedFact(line);
      return fact === undefined || there.factOf(fact.id) !== undefined ? [] : [{ id: fact.id, line }];
    });
    if (missing.length > 0) await this.#write(missing);
    await removePending(this.#files, this.#path);
  }

  async #writeWithPending(lines: readonly FactLine[]): Promise<void> {
    try {
      await writePending(this.#files, this.#path, lines.map((one) => `${one.line}\n`).join(''));
      await this.#write(lines);
    } catch (error) {
      await removePending(this.#files, this.#path);
      throw error;
    }
    // The lines are on disk: a note that cannot be removed now finds them there when it is settled.
    await removePending(this.#files, this.#path).catch(() => undefined);
  }

  async #write(lines: readonly FactLine[]): Promise<void> {
    let there = await this.#knownNow();
    if (there.endIsTorn) {
      await setTornEndAside(this.#files, this.#path, there.size, there.end);
      there = (await this.#readAnew()).known;
    }
    const start = there.end.length > 0 ? '\n' : '';
    const bytes = new TextEncoder().encode(start + lines.map((one) => `${one.line}\n`).join(''));
    await appendDurably(this.#files, this.#path, bytes, there.size);
    there.add(lines, bytes.length);
    this.#known = { lines: there, version: await this.#version() };
  }

  async #knownNow(): Promise<KnownLines> {
    if (this.#known !== null && this.#known.version === (await this.#version())) return this.#known.lines;
    return (await this.#readAnew()).known;
  }

  async #readAnew() {
    const version = await this.#version();
    const read = readJournalBytes(await whereThere(this.#files.readFile(this.#path), new Uint8Array()));
    this.#known = { lines: read.known, version };
    return read;
  }

  async #version(): Promise<string> {
    const found = await whereThere(this.#files.stat(this.#path), null);
    return found === null ? 'none' : `${found.ino} ${found.size} ${found.mtimeMs}`;
  }

  #locked<T>(work: () => Promise<T>): Promise<T> {
    return withFileLock(this.#files, `${this.#path}.lock`, this.#lockWaitMs, work);
  }
}

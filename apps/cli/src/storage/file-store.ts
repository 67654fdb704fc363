import {
  appendLines,
  type FactLine,
  type FactStore,
  newLines,
  type StoreFailure,
  type StoreResult,
} from '@sedgeline/journal';
import { fileFailure } from './file-failure.ts';
import { LOCK_WAIT_MS, withFileLock } from './file-lock.ts';
import { diskFileSystem, type FileSystem, whereThere } from './file-system.ts';
import { appendDurably, setTornEndAside } from './journal-file.ts';
import { type KnownLines, readJournalBytes } from './known-lines.ts';
import { notePath, readNoteFile, writeNoteFile } from './note-file.ts';

const CLOSED: StoreFailure = { code: 'STORE_CLOSED', message: 'the store was closed' };

/**
 * A journal kept as JSON Lines in a file, which is made at the first append; its folder must be there. Appends with
 * `O_APPEND`, then fsync of the file and, when it is new, of the folder. Writers in several processes take turns by a
 * lock file, `…lock`; readers need none. A last line that was torn off is told at `load`, and set aside into `…torn` at
 * the next append. An append cut off by a power cut may leave the first of its facts, each whole: none was acknowledged.
 */
export function openFileStore(
  path: string,
  files: FileSystem = diskFileSystem,
  lockWaitMs = LOCK_WAIT_MS,
): FactStore {
  let isClosed = false;
  let last: Promise<unknown> = Promise.resolve();
  let known: { readonly lines: KnownLines; readonly version: string } | null = null;

  const inTurn = <T>(work: () => Promise<StoreResult<T>>): Promise<StoreResult<T>> => {
    if (isClosed) return Promise.resolve({ ok: false, failure: CLOSED });
    const result = last.then(work).catch((error: unknown): StoreResult<T> => {
      known = null;
      return { ok: false, failure: fileFailure(error) };
    });
    last = result;
    return result;
  };
  const locked = <T>(work: () => Promise<T>): Promise<T> =>
    withFileLock(files, `${path}.lock`, lockWaitMs, work);
  const fileVersion = async (): Promise<string> => {
    const found = await whereThere(files.stat(path), null);
    return found === null ? 'none' : `${found.ino} ${found.size} ${found.mtimeMs}`;
  };
  const readAnew = async () => {
    const version = await fileVersion();
    const read = readJournalBytes(await whereThere(files.readFile(path), new Uint8Array()));
    known = { lines: read.known, version };
    return read;
  };
  const knownNow = async (): Promise<KnownLines> =>
    known !== null && known.version === (await fileVersion()) ? known.lines : (await readAnew()).known;

  const write = async (lines: readonly FactLine[]): Promise<StoreResult<{ readonly added: number }>> => {
    let there = await knownNow();
    const toWrite = newLines(lines, (id) => there.factOf(id));
    if (!toWrite.ok) return toWrite;
    const added = toWrite.value.length;
    if (added === 0) return { ok: true, value: { added } };
    if (there.endIsTorn) {
      await setTornEndAside(files, path, there.size, there.end);
      there = (await readAnew()).known;
    }
    const start = there.end.length > 0 ? '\n' : '';
    const text = start + toWrite.value.map((one) => `${one.line}\n`).join('');
    const bytes = new TextEncoder().encode(text);
    await appendDurably(files, path, bytes, there.size);
    there.add(toWrite.value, bytes.length);
    known = { lines: there, version: await fileVersion() };
    return { ok: true, value: { added } };
  };

  return {
    append: (facts) => {
      const lines = appendLines(facts);
      return inTurn(async () => {
        if (!lines.ok) return lines;
        if (lines.value.length === 0) return { ok: true, value: { added: 0 } };
        return locked(() => write(lines.value));
      });
    },
    load: () =>
      inTurn(async () => {
        const read = await readAnew();
        if (!read.known.endIsTorn) return { ok: true, value: read.stored };
        // What looks torn may be a line that another process is writing just now, so its lock is waited for; where no lock
        // can be had (a folder that may not be written to) the first look counts.
        const again = await locked(readAnew).catch(() => read);
        return { ok: true, value: again.stored };
      }),
    readNote: (name) =>
      inTurn(async () => ({ ok: true, value: await readNoteFile(files, notePath(path, name)) })),
    writeNote: (name, value) =>
      inTurn(async () => {
        await writeNoteFile(files, notePath(path, name), value);
        return { ok: true, value: null };
      }),
    close: async () => {
      isClosed = true;
      await last;
    },
  };
}

import { appendLines, type FactStore, type StoreFailure, type StoreResult } from '@sedgeline/journal';
import { fileFailure } from './file-failure.ts';
import { LOCK_WAIT_MS } from './file-lock.ts';
import { diskFileSystem, type FileSystem } from './file-system.ts';
import { notePath, readNoteFile, writeNoteFile } from './note-file.ts';
import { SharedJournal } from './shared-journal.ts';

const CLOSED: StoreFailure = { code: 'STORE_CLOSED', message: 'the store was closed' };

/**
 * A journal kept as JSON Lines in a file, which is made at the first append; its folder must be there. Appends with
 * `O_APPEND`, then fsync of the file and, when it is new, of the folder. Writers in several processes take turns by a
 * lock file, `…lock`. A last line that was torn off is told by `load`, and set aside into `…torn` by the next append. An
 * append of several facts is announced in `…pending` first, so that one cut off is completed later, or never was.
 */
export function openFileStore(
  path: string,
  files: FileSystem = diskFileSystem,
  lockWaitMs = LOCK_WAIT_MS,
): FactStore {
  const journal = new SharedJournal(files, path, lockWaitMs);
  let isClosed = false;
  let last: Promise<unknown> = Promise.resolve();

  const inTurn = <T>(work: () => Promise<StoreResult<T>>): Promise<StoreResult<T>> => {
    if (isClosed) return Promise.resolve({ ok: false, failure: CLOSED });
    const result = last.then(work).catch((error: unknown): StoreResult<T> => {
      journal.forget();
      return { ok: false, failure: fileFailure(error) };
    });
    last = result;
    return result;
  };
  return {
    append: (facts) => {
      const lines = appendLines(facts);
      return inTurn(async () => {
        if (!lines.ok) return lines;
        return lines.value.length === 0 ? { ok: true, value: { added: 0 } } : journal.append(lines.value);
      });
    },
    load: () => inTurn(async () => ({ ok: true, value: await journal.read() })),
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

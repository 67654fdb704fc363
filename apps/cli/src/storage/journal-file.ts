import { dirname } from 'node:path';
import {
  type FileSystem,
  type OpenFile,
  syncFolder,
  systemCode,
  whereThere,
  writeAll,
} from './file-system.ts';

const LINE_END = 0x0a;

/**
 * Appends lines (each with its end) and resolves when they would survive a power cut. A new file's name is made durable
 * with it. Where anything fails the file is cut back to its size before, so that nothing of the lines stays. The caller
 * holds the lock.
 */
export async function appendDurably(
  files: FileSystem,
  path: string,
  lines: Uint8Array,
  sizeBefore: number,
): Promise<void> {
  const isNew = (await whereThere(files.stat(path), null)) === null;
  const file = await files.open(path, 'a');
  try {
    try {
      await writeAll(file, lines);
      await file.sync();
      if (isNew) await syncFolder(files, dirname(path));
    } catch (error) {
      await cutBack(file, sizeBefore, error);
      throw error;
    }
  } finally {
    await closeQuietly(file);
  }
}

/**
 * Moves what was torn off the end of a journal of `size` bytes into a file beside it, `…torn`, and cuts the journal back to
 * its whole lines: nothing is thrown away, and nothing can be glued to it. The caller holds the lock.
 */
export async function setTornEndAside(
  files: FileSystem,
  path: string,
  size: number,
  torn: Uint8Array,
): Promise<void> {
  const aside = await files.open(`${path}.torn`, 'a');
  try {
    await writeAll(aside, new Uint8Array([...torn, LINE_END]));
    await aside.sync();
  } finally {
    await aside.close();
  }
  await syncFolder(files, dirname(path));
  const file = await files.open(path, 'r+');
  try {
    await file.truncate(size - torn.length);
    await file.sync();
  } finally {
    await file.close();
  }
}

/** If even the cut fails, both errors are told: the next append finds the torn end and sets it aside. */
async function cutBack(file: OpenFile, size: number, cause: unknown): Promise<void> {
  try {
    await file.truncate(size);
    await file.sync();
  } catch (error) {
    throw new AggregateError(
      [cause, error],
      `the write failed (${String(cause)}) and so did undoing it (${String(error)})`,
    );
  }
}

/** After fsync the bytes are safe: a close that fails loses nothing, so it is let pass. */
async function closeQuietly(file: OpenFile): Promise<void> {
  try {
    await file.close();
  } catch (error) {
    if (systemCode(error) === '') throw error;
  }
}

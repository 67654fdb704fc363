import { open, readFile, rename, stat, unlink } from 'node:fs/promises';

/** An open file, as far as the file store needs one. */
export interface OpenFile {
  write(bytes: Uint8Array, offset: number, length: number): Promise<{ readonly bytesWritten: number }>;
  /** fsync: resolves when what was written would survive a power cut. */
  sync(): Promise<void>;
  truncate(size: number): Promise<void>;
  close(): Promise<void>;
}

/** The file operations of the file store, handed in so that a test can make the n-th of them fail. */
export interface FileSystem {
  open(path: string, flags: 'a' | 'wx' | 'w' | 'r' | 'r+'): Promise<OpenFile>;
  readFile(path: string): Promise<Uint8Array>;
  /** Size in bytes and time of the last change. */
  stat(path: string): Promise<{ readonly size: number; readonly mtimeMs: number; readonly ino: number }>;
  rename(from: string, to: string): Promise<void>;
  unlink(path: string): Promise<void>;
}

/** The disk. */
export const diskFileSystem: FileSystem = { open, readFile, stat, rename, unlink };

/** The system's code of a failed file operation (`ENOENT`), or an empty text. */
export function systemCode(error: unknown): string {
  return error instanceof Error && 'code' in error ? String(error.code) : '';
}

/** Runs work that may find no file there; `otherwise` is its answer then. */
export async function whereThere<T, Other>(work: Promise<T>, otherwise: Other): Promise<T | Other> {
  try {
    return await work;
  } catch (error) {
    if (systemCode(error) === 'ENOENT') return otherwise;
    throw error;
  }
}

/** Writes all bytes: a write may take only some. */
export async function writeAll(file: OpenFile, bytes: Uint8Array): Promise<void> {
  let offset = 0;
  while (offset < bytes.length) {
    const { bytesWritten } = await file.write(bytes, offset, bytes.length - offset);
    offset += bytesWritten;
  }
}

/** Makes a folder's list of names durable: without it a new file may be gone after a power cut, its bytes and all. */
export async function syncFolder(files: FileSystem, folder: string): Promise<void> {
  const handle = await files.open(folder, 'r');
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
}

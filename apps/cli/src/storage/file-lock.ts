import { hostname } from 'node:os';
import { setTimeout as pause } from 'node:timers/promises';
import { StoreRefusal } from './file-failure.ts';
import { type FileSystem, systemCode, whereThere, writeAll } from './file-system.ts';

/** How long to wait for another writer: an append takes milliseconds (our judgement). */
export const LOCK_WAIT_MS = 10_000;
/** How often to look whether the lock is free. */
const LOOK_EACH_MS = 4;
/** A lock file that is empty or of a writer in mid-steal for so long was left by one that died there. */
const LEFT_AFTER_MS = 5_000;

interface Holder {
  readonly pid: number;
  readonly host: string;
}

/**
 * Runs work while holding a lock file, so that writers in other processes, and other handles in this one, take turns.
 *
 * The lock is a file made with `O_EXCL`, which holds process id and machine. One left behind by a process that was killed
 * is taken away: by one process at a time, which holds a second lock file while it looks again. A lock of another
 * machine, or of a living process, is never taken away; after `waitMs` the work is refused, naming the file.
 */
export async function withFileLock<T>(
  files: FileSystem,
  lockPath: string,
  waitMs: number,
  work: () => Promise<T>,
): Promise<T> {
  await acquire(files, lockPath, waitMs);
  try {
    return await work();
  } finally {
    await release(files, lockPath);
  }
}

/** Tried twice: the work is done, and a hiccup here must not make it look as if it were not. */
async function release(files: FileSystem, lockPath: string): Promise<void> {
  await whereThere(
    files.unlink(lockPath).catch(() => files.unlink(lockPath)),
    null,
  );
}

async function acquire(files: FileSystem, lockPath: string, waitMs: number): Promise<void> {
  const giveUpMs = Date.now() + waitMs;
  while (!(await tryCreate(files, lockPath))) {
    if (await isLeftBehind(files, lockPath)) await takeAway(files, lockPath);
    else if (Date.now() > giveUpMs) {
      const message = `another program is writing; if none is, remove ${lockPath}`;
      throw new StoreRefusal({ code: 'STORE_REFUSED', message });
    } else await pause(LOOK_EACH_MS);
  }
}

/** Makes the lock file, whole or not at all. */
async function tryCreate(files: FileSystem, path: string): Promise<boolean> {
  let file: Awaited<ReturnType<FileSystem['open']>>;
  try {
    file = await files.open(path, 'wx');
  } catch (error) {
    if (systemCode(error) === 'EEXIST') return false;
    throw error;
  }
  try {
    const holder: Holder = { pid: process.pid, host: hostname() };
    await writeAll(file, new TextEncoder().encode(JSON.stringify(holder)));
  } catch (error) {
    await release(files, path);
    throw error;
  } finally {
    await file.close();
  }
  return true;
}

async function takeAway(files: FileSystem, lockPath: string): Promise<void> {
  const stealPath = `${lockPath}.steal`;
  if (!(await tryCreate(files, stealPath))) {
    const steal = await whereThere(files.stat(stealPath), null);
    if (steal !== null && Date.now() - steal.mtimeMs > LEFT_AFTER_MS)
      await whereThere(files.unlink(stealPath), null);
    else await pause(LOOK_EACH_MS);
    return;
  }
  try {
    if (await isLeftBehind(files, lockPath)) await whereThere(files.unlink(lockPath), null);
  } finally {
    await release(files, stealPath);
  }
}

async function isLeftBehind(files: FileSystem, lockPath: string): Promise<boolean> {
  const bytes = await whereThere(files.readFile(lockPath), null);
  if (bytes === null) return false;
  const holder = readHolder(new TextDecoder().decode(bytes));
  if (holder !== null) return holder.host === hostname() && !isAlive(holder.pid);
  const lock = await whereThere(files.stat(lockPath), null);
  return lock !== null && Date.now() - lock.mtimeMs > LEFT_AFTER_MS;
}

function readHolder(text: string): Holder | null {
  try {
    const { pid, host } = JSON.parse(text) as Partial<Holder>;
    return typeof pid === 'number' && typeof host === 'string' ? { pid, host } : null;
  } catch (error) {
    if (error instanceof SyntaxError) return null;
    throw error;
  }
}

function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return systemCode(error) === 'EPERM';
  }
}

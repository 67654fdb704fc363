import { closeSync, openSync, readSync } from 'node:fs';
import type { ByteStream } from '@sedgeline/engine/sound';

const RETRY_MS = 5;

/** Waits without work: a pipe that is not ready says so in place of blocking. */
function rest(): void {
  Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, RETRY_MS);
}

/** Reads up to `count` bytes, fewer at the end of the file alone. */
function fill(fd: number, into: Uint8Array, count: number): number {
  let got = 0;
  while (got < count) {
    try {
      const more = readSync(fd, into, got, count - got, null);
      if (more === 0) break;
      got += more;
    } catch (error) {
      const { code } = error as NodeJS.ErrnoException;
      if (code === 'EOF') break;
      if (code !== 'EAGAIN') throw error;
      rest();
    }
  }
  return got;
}

/**
 * Hands the bytes of a file (by path, or an open one by its number) to `use`, read as they are asked for into one array that grows to the
 * largest piece. What the system refuses becomes the failure that `failureOf` makes of it.
 */
export async function withFileBytes<T>(
  file: string | number,
  use: (stream: ByteStream) => T | Promise<T>,
  failureOf: (error: unknown) => Error,
): Promise<T> {
  const world = <R>(work: () => R): R => {
    try {
      return work();
    } catch (error) {
      throw failureOf(error);
    }
  };
  const fd = typeof file === 'number' ? file : world(() => openSync(file, 'r'));
  let held = new Uint8Array(65_536);
  try {
    return await use({
      take(count) {
        if (count > held.length) held = new Uint8Array(count);
        return held.subarray(
          0,
          world(() => fill(fd, held, count)),
        );
      },
    });
  } finally {
    if (typeof file === 'string') closeSync(fd);
  }
}

import { diskFileSystem, type FileSystem, type OpenFile } from './file-system.ts';

/** The disk, except that the n-th operation that changes something can be made to fail. For tests. */
export interface FailingFileSystem extends FileSystem {
  /** From now on the n-th change fails; the function given back ends this and tells whether it came to that. */
  failChange(n: number): () => boolean;
  /** From now on the n-th change and all after it fail, as when the power is cut in the middle of the n-th. */
  cutPowerAt(n: number): () => boolean;
}

/** What a failed change reports, in turn: a full disk, a broken one, a write that took only a part of the bytes first. */
const CODES = ['ENOSPC', 'EIO'] as const;

export function failingFileSystem(): FailingFileSystem {
  let left = Number.POSITIVE_INFINITY;
  let planned = 0;
  let isPowerCut = false;
  const change = async <T>(work: () => Promise<T>, halfDone?: () => Promise<unknown>): Promise<T> => {
    left -= 1;
    if (left > 0 || (left < 0 && !isPowerCut)) return work();
    if (left === 0) await halfDone?.();
    const code = CODES[planned % CODES.length]!;
    throw Object.assign(new Error(`${code}: this change was made to fail`), { code });
  };
  const watched = (file: OpenFile): OpenFile => ({
    write: (bytes, offset, length) =>
      change(
        () => file.write(bytes, offset, length),
        () => file.write(bytes, offset, Math.floor(length / 2)),
      ),
    sync: () => change(() => file.sync()),
    truncate: (size) => change(() => file.truncate(size)),
    close: () => file.close(),
  });
  const plan = (n: number, cut: boolean) => {
    left = n;
    planned = n;
    isPowerCut = cut;
    return () => {
      const itFailed = left <= 0;
      left = Number.POSITIVE_INFINITY;
      return itFailed;
    };
  };
  return {
    open: async (path, flags) => {
      const openIt = () => diskFileSystem.open(path, flags);
      return watched(await (flags === 'r' ? openIt() : change(openIt)));
    },
    readFile: (path) => diskFileSystem.readFile(path),
    stat: (path) => diskFileSystem.stat(path),
    rename: (from, to) => change(() => diskFileSystem.rename(from, to)),
    unlink: (path) => change(() => diskFileSystem.unlink(path)),
    failChange: (n) => plan(n, false),
    cutPowerAt: (n) => plan(n, true),
  };
}

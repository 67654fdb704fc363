/** A file of the browser's private file system, open for one writer; as workers have it (`FileSystemSyncAccessHandle`). */
export interface SyncFile {
  read(into: Uint8Array<ArrayBuffer>, from: { readonly at: number }): number;
  write(bytes: Uint8Array<ArrayBuffer>, to: { readonly at: number }): number;
  truncate(size: number): void;
  flush(): void;
  getSize(): number;
  close(): void;
}

type OpensForSync = FileSystemFileHandle & { createSyncAccessHandle(): Promise<SyncFile> };

const opensForSync = (handle: FileSystemFileHandle): handle is OpensForSync =>
  'createSyncAccessHandle' in handle;

/** Runs work with a file open, and closes it; whoever calls has seen to it that nobody else has it open. */
export type FileDoor = <T>(work: (file: SyncFile) => T) => Promise<T>;

/**
 * The way to a file of a folder of the private file system, both made where they are not there. It is open only while it is worked
 * on, so that tabs take turns; what was looked up once is kept until it turns out to have been thrown away.
 */
export function fileDoor(folderName: string, fileName: string): FileDoor {
  let handle: OpensForSync | null = null;
  const lookUp = async (): Promise<OpensForSync> => {
    const root = await navigator.storage.getDirectory();
    const folder = await root.getDirectoryHandle(folderName, { create: true });
    const found = await folder.getFileHandle(fileName, { create: true });
    if (!opensForSync(found)) throw new DOMException('no files open for writing here', 'NotSupportedError');
    return found;
  };
  const open = async (): Promise<SyncFile> => {
    try {
      handle ??= await lookUp();
      return await handle.createSyncAccessHandle();
    } catch (error) {
      if (!(error instanceof DOMException) || error.name !== 'NotFoundError') throw error;
      handle = await lookUp();
      return handle.createSyncAccessHandle();
    }
  };
  return async (work) => {
    const file = await open();
    try {
      return work(file);
    } finally {
      file.close();
    }
  };
}

/** The bytes of a file from `at` to its end. */
export function readBytes(file: SyncFile, at: number): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(Math.max(0, file.getSize() - at));
  let got = 0;
  while (got < bytes.length) {
    const more = file.read(bytes.subarray(got), { at: at + got });
    if (more === 0) break;
    got += more;
  }
  return bytes.subarray(0, got);
}

/**
 * Writes bytes at the file's end and flushes them. Where that fails the file is cut back to what it was, and the error thrown on;
 * a write that took only a part counts as a want of room.
 */
export function appendBytes(file: SyncFile, bytes: Uint8Array<ArrayBuffer>): void {
  const size = file.getSize();
  try {
    const took = file.write(bytes, { at: size });
    if (took < bytes.length) throw new DOMException(`${took} of ${bytes.length} bytes`, 'QuotaExceededError');
    file.flush();
  } catch (error) {
    file.truncate(size);
    file.flush();
    throw error;
  }
}

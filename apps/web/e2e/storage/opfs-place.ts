import type { FactStore } from '@sedgeline/journal';
import type { StorePlace } from '@sedgeline/journal/store-kit';
import { fileDoor, readBytes, type SyncFile } from '../../src/storage/opfs-file.ts';
import { deleteOpfsStore, openOpfsStore } from '../../src/storage/opfs-store.ts';

const FACTS_FILE = 'facts.jsonl';
let places = 0;

/** A new folder of the private file system for one case of the contract kit; in a worker. */
export async function opfsPlace(): Promise<StorePlace> {
  places += 1;
  const name = `kit-${places}`;
  const stores: FactStore[] = [];
  await deleteOpfsStore(name);
  return {
    open: async () => {
      const result = await openOpfsStore(name);
      if (!result.ok) throw new Error(`open: ${result.failure.code} ${result.failure.message}`);
      stores.push(result.value);
      return result.value;
    },
    damage: async () => {
      await fileDoor(
        name,
        FACTS_FILE,
      )((file) => {
        const lines = new TextDecoder().decode(readBytes(file, 0)).split('\n');
        lines[2] = lines[2]!.slice(0, 20);
        file.truncate(0);
        file.write(new TextEncoder().encode(lines.join('\n')), { at: 0 });
        file.flush();
      });
    },
    loseNotes: async () => {
      const root = await navigator.storage.getDirectory();
      const folder: FileSystemDirectoryHandle & { keys?(): AsyncIterable<string> } =
        await root.getDirectoryHandle(name);
      for await (const key of folder.keys?.() ?? []) if (key !== FACTS_FILE) await folder.removeEntry(key);
    },
    failWrite: async (n) => failWrite(n),
    dispose: async () => {
      for (const store of stores) await store.close();
      await deleteOpfsStore(name);
    },
  };
}

declare const FileSystemSyncAccessHandle: { readonly prototype: SyncFile };

/**
 * Makes the n-th write or flush of any file fail: an odd one for want of room before anything is written, an even one when half
 * of it is (a write) or all of it (a flush).
 */
function failWrite(n: number): () => boolean {
  const prototype = FileSystemSyncAccessHandle.prototype;
  const { write, flush } = prototype;
  let left = n;
  const isTheOne = () => {
    left -= 1;
    return left === 0;
  };
  const noRoom = () => new DOMException('this write was made to fail', 'QuotaExceededError');
  prototype.write = function (this: SyncFile, bytes, to) {
    if (!isTheOne()) return write.call(this, bytes, to);
    if (n % 2 === 0) write.call(this, bytes.subarray(0, bytes.length / 2), to);
    throw noRoom();
  };
  prototype.flush = function (this: SyncFile) {
    if (isTheOne()) throw noRoom();
    flush.call(this);
  };
  return () => {
    Object.assign(prototype, { write, flush });
    return left <= 0;
  };
}

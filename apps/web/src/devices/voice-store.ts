import { type DBSchema, deleteDB, type IDBPDatabase, openDB } from 'idb';

/** A sound as it is kept: the bytes themselves, since not every browser keeps a Blob well. */
interface KeptSound {
  readonly bytes: ArrayBuffer;
  readonly type: string;
}

interface VoiceSchema extends DBSchema {
  sounds: { key: string; value: KeptSound };
  /** Sounds that no fact spoke of when they were kept, and when that was, epoch milliseconds. */
  begun: { key: string; value: number };
}

const VERSION = 2;

/**
 * Sounds of one record, in a database of their own beside the journal: they never leave the device. Facts refer to them by id
 * and hash; until one does, a sound is begun and no more. Every call opens and closes, since they are rare and another tab may want to delete.
 */
export class VoiceStore {
  readonly #name: string;

  constructor(name: string) {
    this.#name = name;
  }

  /** Resolves when the sound is on disk, begun at `nowMs`. Rejects where the device will not keep it. */
  async keep(
    voice: string,
    sound: Blob,
    nowMs: number,
  ): Promise<{ readonly bytes: number; readonly sha256: string }> {
    const bytes = await sound.arrayBuffer();
    const sha256 = hex(await crypto.subtle.digest('SHA-256', bytes));
    await this.#with(async (db) => {
      const tx = db.transaction(['sounds', 'begun'], 'readwrite', { durability: 'strict' });
      await Promise.all([
        tx.objectStore('sounds').put({ bytes, type: sound.type }, voice),
        tx.objectStore('begun').put(nowMs, voice),
        tx.done,
      ]);
    });
    return { bytes: bytes.byteLength, sha256 };
  }

  /** A fact speaks of the sound, and is on disk. */
  settle(voice: string): Promise<void> {
    return this.#with((db) => db.delete('begun', voice));
  }

  /** Sounds that were begun before a time and are no more than that. */
  begunBefore(atMs: number): Promise<readonly string[]> {
    return this.#with(async (db) => {
      const tx = db.transaction('begun');
      const [ids, times] = await Promise.all([tx.store.getAllKeys(), tx.store.getAll()]);
      return ids.filter((_, n) => (times[n] ?? atMs) < atMs);
    });
  }

  /** The sound as it was heard; `null` where it is not here, or is no longer what was heard. */
  async read(voice: string, sha256: string): Promise<Blob | null> {
    const kept = await this.#with((db) => db.get('sounds', voice));
    if (kept === undefined) return null;
    const isSame = hex(await crypto.subtle.digest('SHA-256', kept.bytes)) === sha256;
    return isSame ? new Blob([kept.bytes], { type: kept.type }) : null;
  }

  drop(voice: string): Promise<void> {
    return this.#with(async (db) => {
      const tx = db.transaction(['sounds', 'begun'], 'readwrite');
      await Promise.all([
        tx.objectStore('sounds').delete(voice),
        tx.objectStore('begun').delete(voice),
        tx.done,
      ]);
    });
  }

  /** All sounds of this record. */
  async clear(): Promise<void> {
    await deleteDB(this.#name);
  }

  async #with<T>(job: (db: IDBPDatabase<VoiceSchema>) => Promise<T>): Promise<T> {
    const db = await openDB<VoiceSchema>(this.#name, VERSION, {
      upgrade: (made, from) => {
        if (from < 1) made.createObjectStore('sounds');
        made.createObjectStore('begun');
      },
    });
    try {
      return await job(db);
    } finally {
      db.close();
    }
  }
}

function hex(hash: ArrayBuffer): string {
  return [...new Uint8Array(hash)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

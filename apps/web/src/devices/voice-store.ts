import { deleteDB, type IDBPDatabase, openDB } from 'idb';

/** A sound as it is kept: the bytes themselves, since not every browser keeps a Blob well. */
interface KeptSound {
  readonly bytes: ArrayBuffer;
  readonly type: string;
}

const STORE = 'sounds';

/**
 * Sounds of one record, in a database of their own beside the journal: they never leave the device. Facts refer to them by id
 * and hash. Every call opens and closes, since they are rare and another tab may want to delete.
 */
export class VoiceStore {
  readonly #name: string;

  constructor(name: string) {
    this.#name = name;
  }

  /** Resolves when the sound is on disk. Rejects where the device will not keep it. */
  async keep(voice: string, sound: Blob): Promise<{ readonly bytes: number; readonly sha256: string }> {
    const bytes = await sound.arrayBuffer();
    const sha256 = hex(await crypto.subtle.digest('SHA-256', bytes));
    await this.#with(async (db) => {
      const tx = db.transaction(STORE, 'readwrite', { durability: 'strict' });
      await tx.store.put({ bytes, type: sound.type } satisfies KeptSound, voice);
      await tx.done;
    });
    return { bytes: bytes.byteLength, sha256 };
  }

  /** The sound as it was heard; `null` where it is not here, or is no longer what was heard. */
  async read(voice: string, sha256: string): Promise<Blob | null> {
    const kept = await this.#with((db) => db.get(STORE, voice) as Promise<KeptSound | undefined>);
    if (kept === undefined) return null;
    const isSame = hex(await crypto.subtle.digest('SHA-256', kept.bytes)) === sha256;
    return isSame ? new Blob([kept.bytes], { type: kept.type }) : null;
  }

  drop(voice: string): Promise<void> {
    return this.#with((db) => db.delete(STORE, voice));
  }

  /** All sounds of this record. */
  async clear(): Promise<void> {
    await deleteDB(this.#name);
  }

  async #with<T>(job: (db: IDBPDatabase) => Promise<T>): Promise<T> {
    const db = await openDB(this.#name, 1, { upgrade: (made) => void made.createObjectStore(STORE) });
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

import { type DBSchema, type IDBPDatabase, openDB } from 'idb';

/** What is in the database. Facts are kept as lines of JSON: to the byte, and read ten times as fast as cloned objects. */
export interface FactDatabase extends DBSchema {
  /** Facts of late, a record each, by id. */
  recent: { key: string; value: { readonly id: string; readonly line: string } };
  /** Older facts, some 500 lines to a record. */
  blocks: { key: number; value: string };
  /** Which facts a block holds, under the block's own key; apart from it so that loading need not read them. */
  packed: { key: number; value: { readonly ids: readonly string[] }; indexes: { ids: string } };
  /** Notes, as JSON, by name. */
  notes: { key: string; value: string };
}

const VERSION = 1;

/** What happens to a connection that is not our doing. */
export interface ConnectionEvents {
  /** Another tab holds an older version open and does not let go. */
  readonly onBlocked: () => void;
  /** The connection is gone: given up for another tab's newer version, or ended by the browser. */
  readonly onLost: () => void;
}

/** Opens the database, making it if it is not there. */
export async function openFactDatabase(
  name: string,
  events: ConnectionEvents,
): Promise<IDBPDatabase<FactDatabase>> {
  const db: IDBPDatabase<FactDatabase> = await openDB<FactDatabase>(name, VERSION, {
    upgrade(fresh) {
      fresh.createObjectStore('recent', { keyPath: 'id' });
      fresh.createObjectStore('blocks', { autoIncrement: true });
      fresh.createObjectStore('packed').createIndex('ids', 'ids', { multiEntry: true });
      fresh.createObjectStore('notes');
    },
    blocked: events.onBlocked,
    blocking: (_current, _next, event) => {
      (event.target as IDBDatabase).close();
      events.onLost();
    },
    terminated: events.onLost,
  });
  return db;
}

import { readKept, writeKept } from './record-marker.ts';

/** What the browser says of keeping the record: promised, not promised yet, a promise taken back, refused when asked, or it does not say. */
export type Keeping = 'kept' | 'not-kept' | 'revoked' | 'refused' | 'unknown';

/** Whether the record is promised to be kept, without asking for it. */
export async function readKeeping(): Promise<Keeping> {
  if (!navigator.storage?.persisted) return 'unknown';
  if (await navigator.storage.persisted()) return promised();
  return readKept() ? 'revoked' : 'not-kept';
}

/** Asks the browser to keep the record; a refusal is no failure, it is shown and a file is offered. */
export async function askToKeep(): Promise<Keeping> {
  if (!navigator.storage?.persist) return 'unknown';
  return (await navigator.storage.persist()) ? promised() : 'refused';
}

/** Noted, so that a promise that is taken back can be told from one that was never given. */
function promised(): Keeping {
  writeKept();
  return 'kept';
}

/** Room used and room there is, in bytes; `null` where the browser does not say. */
export async function readRoom(): Promise<{ readonly usedBytes: number; readonly roomBytes: number } | null> {
  if (!navigator.storage?.estimate) return null;
  const { usage, quota } = await navigator.storage.estimate();
  return usage === undefined || quota === undefined ? null : { usedBytes: usage, roomBytes: quota };
}

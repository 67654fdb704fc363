/** What the browser says of keeping the record: promised, may be cleared when space runs short, or it cannot say. */
export type Keeping = 'promised' | 'may-clear' | 'unknown';

/** Asks the browser to keep the record; a refusal is no failure, it is shown and a file is offered. */
export async function askToKeep(): Promise<Keeping> {
  if (!navigator.storage?.persist) return 'unknown';
  const isKept = (await navigator.storage.persisted()) || (await navigator.storage.persist());
  return isKept ? 'promised' : 'may-clear';
}

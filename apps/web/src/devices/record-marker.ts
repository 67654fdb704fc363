const NAME = 'sedgeline.record';
const KEPT_NAME = 'sedgeline.kept';

/** How many facts were on this device when it was last looked; 0 where nothing was noted, or nothing can be. */
export function readMarker(): number {
  const noted = Number(marked(() => localStorage.getItem(NAME)) ?? 0);
  return Number.isSafeInteger(noted) && noted > 0 ? noted : 0;
}

/** Notes how many facts are on this device: kept apart from the record, so that it can tell of a record that is gone. */
export function writeMarker(facts: number): void {
  marked(() => localStorage.setItem(NAME, String(facts)));
}

/** Whether the browser was once seen to promise that it keeps the record. */
export function readKept(): boolean {
  return marked(() => localStorage.getItem(KEPT_NAME)) === 'yes';
}

export function writeKept(): void {
  marked(() => localStorage.setItem(KEPT_NAME, 'yes'));
}

/** Where the browser lets no page keep anything, there is no marker, and no harm in that. */
function marked<T>(work: () => T): T | null {
  try {
    return work();
  } catch (error) {
    if (error instanceof DOMException) return null;
    throw error;
  }
}

import { pageStorage } from './page-storage.ts';

const NAME = 'sedgeline.record';
const KEPT_NAME = 'sedgeline.kept';

/** How many facts were on this device when it was last looked; 0 where nothing was noted, or nothing can be. */
export function readMarker(): number {
  const noted = Number(pageStorage.getItem(NAME) ?? 0);
  return Number.isSafeInteger(noted) && noted > 0 ? noted : 0;
}

/** Notes how many facts are on this device: kept apart from the record, so that it can tell of a record that is gone. */
export function writeMarker(facts: number): void {
  pageStorage.setItem(NAME, String(facts));
}

/** Whether the browser was once seen to promise that it keeps the record. */
export function readKept(): boolean {
  return pageStorage.getItem(KEPT_NAME) === 'yes';
}

export function writeKept(): void {
  pageStorage.setItem(KEPT_NAME, 'yes');
}

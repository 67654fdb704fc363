/** Stable codes of a store's failures. */
export const STORE_FAILURE_CODES = [
  'STORE_FULL',
  'STORE_REFUSED',
  'STORE_BROKEN',
  'STORE_CLOSED',
  'FACT_CONFLICT',
] as const;
export type StoreFailureCode = (typeof STORE_FAILURE_CODES)[number];

/** A failure told to a person: what happened, what was saved, what to do. */
export interface FailureWords {
  readonly what: string;
  readonly saved: string;
  readonly todo: string;
}

const STORE_FAILURES: Readonly<Record<StoreFailureCode, FailureWords>> = {
  STORE_FULL: {
    what: 'This device has no room left.',
    saved: 'Everything before this tap is saved; this tap is not.',
    todo: 'Free some space on the device, then tap again. Export the record first if you can.',
  },
  STORE_REFUSED: {
    what: 'This browser does not let the program keep anything.',
    saved: 'Nothing of this tap was saved.',
    todo: 'Leave private browsing, or allow this site to store data, then tap again.',
  },
  STORE_BROKEN: {
    what: 'The record on this device could not be read or written.',
    saved: 'What was saved before is left as it is; this tap is not saved.',
    todo: 'Close the other tabs of this program and reload. If it comes again, export what can be read.',
  },
  STORE_CLOSED: {
    what: 'The record was closed, most likely by another tab with a newer version.',
    saved: 'Everything before this tap is saved; this tap is not.',
    todo: 'Reload this page, then tap again.',
  },
  FACT_CONFLICT: {
    what: 'Two different entries carry the same identity.',
    saved: 'The one that was there first is kept; the new one is not saved.',
    todo: 'Tap again to record it afresh. If it came from a file, the file holds a changed entry.',
  },
};

/** Failures in words. */
export function failureWords() {
  return {
    store: (code: StoreFailureCode): FailureWords => STORE_FAILURES[code],
    /** All three parts as one text. */
    sentence: (code: StoreFailureCode): string => {
      const { what, saved, todo } = STORE_FAILURES[code];
      return `${what} ${saved} ${todo}`;
    },
  };
}

export type FailureSentences = ReturnType<typeof failureWords>;

import type { StoreFailure } from '@sedgeline/journal';

export const CLOSED_FAILURE: StoreFailure = {
  code: 'STORE_CLOSED',
  message: 'the store was closed; open it again',
};

/** What an error thrown by the browser's database or file system means for the storage port. */
export function browserFailure(error: unknown): StoreFailure {
  const name = error instanceof DOMException || error instanceof Error ? error.name : 'Error';
  const message = error instanceof Error ? error.message : String(error);
  if (name === 'QuotaExceededError') {
    return { code: 'STORE_FULL', message: 'the browser has no more room for this site' };
  }
  if (name === 'InvalidStateError' && /clos/i.test(message)) return CLOSED_FAILURE;
  if (error instanceof DOMException) {
    return { code: 'STORE_REFUSED', message: `the browser refused (${name}: ${message})` };
  }
  return { code: 'STORE_BROKEN', message: `${name}: ${message}` };
}

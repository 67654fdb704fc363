import type { StoreFailure } from '@sedgeline/journal';
import { systemCode } from './file-system.ts';

const FULL = new Set(['ENOSPC', 'EDQUOT', 'EFBIG']);
const REFUSED = new Set([
  'EACCES',
  'EPERM',
  'EROFS',
  'ENOENT',
  'ENOTDIR',
  'EISDIR',
  'ELOOP',
  'ENAMETOOLONG',
  'EMFILE',
  'ENFILE',
]);

/** The world refusing in words of our own: the code and the sentence are already those of the storage port. */
export class StoreRefusal extends Error {
  readonly failure: StoreFailure;
  constructor(failure: StoreFailure) {
    super(failure.message);
    this.failure = failure;
  }
}

/** What a failed file operation means for the storage port. */
export function fileFailure(error: unknown): StoreFailure {
  if (error instanceof StoreRefusal) return error.failure;
  const code = systemCode(error);
  const message = error instanceof Error ? error.message : String(error);
  if (FULL.has(code)) return { code: 'STORE_FULL', message: `the disk has no more room (${message})` };
  if (REFUSED.has(code)) return { code: 'STORE_REFUSED', message: `the system refused (${message})` };
  return { code: 'STORE_BROKEN', message };
}

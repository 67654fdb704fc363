import type { DogRecord } from './training-record.ts';

/** A dog's rest as it stands at a moment; `null` where it is over. */
export function restNow(rest: DogRecord['rest'], atMs: number): DogRecord['rest'] {
  return rest !== null && rest.untilMs !== null && rest.untilMs <= atMs ? null : rest;
}

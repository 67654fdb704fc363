import type { Cause, LegRecord } from './training-record.ts';

/** A leg as it goes back into the journal: no cause on a good one. */
export function legBody(leg: LegRecord): Omit<LegRecord, 'cause'> & { readonly cause?: Cause } {
  const { cause, ...rest } = leg;
  return cause === null || leg.grade === 'good' ? rest : { ...rest, cause };
}

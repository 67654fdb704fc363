import type { Fact } from '../fact.ts';
import { isTooDeep, isTooLong, LINE_BYTES_MAX, LINE_DEPTH_MAX } from '../read-fact-line.ts';
import { sameContent } from '../same-content.ts';
import { factProblems } from '../schema/validate-fact.ts';
import type { StoreFailure, StoreResult } from './store.ts';

/** A fact that is new to a store, with the line it is kept as (no line end). */
export interface FactLine {
  readonly fact: Fact;
  readonly line: string;
}

/**
 * What an append has to write: the facts that are not there yet, each once, or why nothing of it may be written (rules S2,
 * S3, S4 and S12 of `docs/storage-port.md`). Every adapter asks this one function; `factThere` looks an id up in what
 * is stored.
 */
export function planAppend(
  facts: readonly Fact[],
  factThere: (id: string) => Fact | undefined,
): StoreResult<readonly FactLine[]> {
  const planned = new Map<string, FactLine>();
  for (const fact of facts) {
    const there = planned.get(fact.id)?.fact ?? factThere(fact.id);
    if (there !== undefined) {
      if (sameContent(there, fact)) continue;
      return refuse(
        'FACT_CONFLICT',
        fact.id,
        `a fact ${JSON.stringify(fact.id)} is there already and says something else`,
      );
    }
    const line = JSON.stringify(fact);
    const unfit = unfitBecause(fact, line);
    if (unfit !== undefined) return refuse('STORE_REFUSED', fact.id, unfit);
    planned.set(fact.id, { fact, line });
  }
  return { ok: true, value: [...planned.values()] };
}

/** Why a fact could not be read back by `readJournal`, if it could not. */
function unfitBecause(fact: Fact, line: string): string | undefined {
  if (isTooLong(line)) return `the fact is longer than ${LINE_BYTES_MAX} bytes`;
  if (isTooDeep(line, fact)) return `the fact is nested deeper than ${LINE_DEPTH_MAX}`;
  return factProblems(fact)[0]?.message;
}

function refuse(
  code: StoreFailure['code'],
  factId: string,
  message: string,
): { readonly ok: false; readonly failure: StoreFailure } {
  return { ok: false, failure: { code, factId, message } };
}

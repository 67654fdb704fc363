import type { Fact } from '../fact.ts';
import { isTooDeep, isTooLong, LINE_BYTES_MAX, LINE_DEPTH_MAX, readFactLine } from '../read-fact-line.ts';
import { sameContent } from '../same-content.ts';
import { factProblems } from '../schema/validate-fact.ts';
import type { StoreFailure, StoreResult } from './store.ts';

/** A fact as a store keeps it: its id, and its line of JSON without a line end. */
export interface FactLine {
  readonly id: string;
  readonly line: string;
}

/**
 * The lines of an append, each fact once, or why it is refused as a whole (rules S2, S4, S5 and S12 of
 * `docs/storage-port.md`). Adapters call it before anything else, at once and not when their turn comes: what the
 * caller does to its facts afterwards is then of no account (S8).
 */
export function appendLines(facts: readonly Fact[]): StoreResult<readonly FactLine[]> {
  const lines = new Map<string, { readonly fact: Fact; readonly line: string }>();
  for (const fact of facts) {
    const twin = lines.get(fact.id);
    if (twin !== undefined) {
      if (sameContent(twin.fact, fact)) continue;
      return conflict(fact.id);
    }
    const line = JSON.stringify(fact);
    const unfit = unfitBecause(fact, line);
    if (unfit !== undefined) return refuse('STORE_REFUSED', fact.id, unfit);
    lines.set(fact.id, { fact, line });
  }
  return { ok: true, value: Array.from(lines, ([id, { line }]) => ({ id, line })) };
}

/**
 * Those of an append's lines that a store has to write, since they are not there yet, or the conflict (rules S4, S5).
 * `factThere` looks up what is stored under an id and can be read: a fact that was damaged may be written again (S15).
 */
export function newLines(
  lines: readonly FactLine[],
  factThere: (id: string) => Fact | undefined,
): StoreResult<readonly FactLine[]> {
  const toWrite: FactLine[] = [];
  for (const one of lines) {
    const there = factThere(one.id);
    if (there === undefined) toWrite.push(one);
    else if (!sameContent(there, JSON.parse(one.line))) return conflict(one.id);
  }
  return { ok: true, value: toWrite };
}

/** The fact of a stored line, if it can be read. */
export function storedFact(line: string | undefined): Fact | undefined {
  if (line === undefined) return undefined;
  const reading = readFactLine(line);
  return reading.ok ? reading.fact : undefined;
}

/** Why a fact could not be read back by `readJournal`, if it could not. */
function unfitBecause(fact: Fact, line: string): string | undefined {
  if (isTooLong(line)) return `the fact is longer than ${LINE_BYTES_MAX} bytes`;
  if (isTooDeep(line, fact)) return `the fact is nested deeper than ${LINE_DEPTH_MAX}`;
  return factProblems(fact)[0]?.message;
}

function conflict(id: string): { readonly ok: false; readonly failure: StoreFailure } {
  return refuse('FACT_CONFLICT', id, `another fact has the id ${JSON.stringify(id)} and says something else`);
}

function refuse(
  code: StoreFailure['code'],
  factId: string,
  message: string,
): { readonly ok: false; readonly failure: StoreFailure } {
  return { ok: false, failure: { code, factId, message } };
}

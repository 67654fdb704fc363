import type { JournalErrorCode } from './errors.ts';
import type { Fact } from './fact.ts';

/** What facts name and other facts refer to; also the name of the field that holds the id. */
export type ReferenceKind = 'dog' | 'session' | 'rep' | 'ground' | 'handler' | 'layout';

/** A field of a body that refers to something another fact names. */
export interface FactReference {
  readonly field: string;
  readonly names: ReferenceKind;
  readonly code: JournalErrorCode;
  /** An error keeps the fact out of every answer (it is set aside); a warning does not. */
  readonly severity: 'error' | 'warning';
}

const DOG: FactReference = { field: 'dog', names: 'dog', code: 'UNKNOWN_DOG', severity: 'error' };
const SESSION: FactReference = {
  field: 'session',
  names: 'session',
  code: 'UNKNOWN_SESSION',
  severity: 'error',
};
const REP: FactReference = { field: 'rep', names: 'rep', code: 'UNKNOWN_REP', severity: 'error' };
const GROUND: FactReference = {
  field: 'ground',
  names: 'ground',
  code: 'UNKNOWN_GROUND',
  severity: 'warning',
};
const HANDLER: FactReference = {
  field: 'handler',
  names: 'handler',
  code: 'UNKNOWN_HANDLER',
  severity: 'warning',
};
const LAYOUT: FactReference = {
  field: 'layout',
  names: 'layout',
  code: 'UNKNOWN_LAYOUT',
  severity: 'warning',
};

const NAMED_BY: ReadonlyMap<string, ReferenceKind> = new Map([
  ['dog-added', 'dog'],
  ['session-opened', 'session'],
  ['rep-recorded', 'rep'],
  ['ground-added', 'ground'],
  ['handler-added', 'handler'],
  ['layout-drawn', 'layout'],
]);

const REFERENCES: ReadonlyMap<string, readonly FactReference[]> = new Map([
  ['layout-drawn', [GROUND]],
  ['session-opened', [DOG, HANDLER, GROUND, LAYOUT]],
  ['rep-recorded', [SESSION, LAYOUT]],
  ['break-taken', [SESSION]],
  ['session-closed', [SESSION]],
  ['rep-amended', [REP]],
  ['rep-struck', [REP]],
  ['goal-set', [DOG]],
  ['session-focused', [SESSION]],
  ['break-started', [SESSION]],
  ['rep-ended', [REP]],
  ['session-planned', [DOG, GROUND, LAYOUT]],
  ['dog-rested', [DOG]],
  ['level-stated', [DOG]],
  ['ground-put-away', [GROUND]],
  ['layout-put-away', [LAYOUT]],
  ['rep-restored', [REP]],
  ['voice-noted', [REP]],
  ['voice-dropped', [REP]],
  ['film-linked', [SESSION]],
  ['film-unlinked', [SESSION]],
  ['film-marked', [REP]],
  ['film-unmarked', [REP]],
  ['sound-heard', [SESSION]],
  ['sound-joined', [SESSION]],
  ['sound-dropped', [SESSION]],
]);

/** What a kind of fact names, if it names anything; the id is the body's field of that name. */
export function namedBy(kind: string): ReferenceKind | undefined {
  return NAMED_BY.get(kind);
}

/** What a fact of this kind refers to. */
export function referencesOf(kind: string): readonly FactReference[] {
  return REFERENCES.get(kind) ?? [];
}

/** Facts whose dog, session and rep are there, and those set aside because one is not: a merge may bring it later. */
export interface SetAside {
  readonly facts: readonly Fact[];
  readonly setAside: readonly Fact[];
}

/**
 * Parts facts into those that can be used and those whose dog, session or rep no usable fact names. What hangs on a fact
 * that is set aside is set aside with it (an amendment of a rep whose session is missing). Keeps the order.
 */
export function setAsideOrphans(facts: readonly Fact[]): SetAside {
  const named = new Set<string>();
  for (const names of ['dog', 'session', 'rep'] as const) {
    for (const fact of facts) {
      if (namedBy(fact.kind) === names && isWhole(fact, named))
        named.add(`${names} ${String(fact.body[names])}`);
    }
  }
  const kept: Fact[] = [];
  const setAside: Fact[] = [];
  for (const fact of facts) (isWhole(fact, named) ? kept : setAside).push(fact);
  return { facts: kept, setAside };
}

function isWhole(fact: Fact, named: ReadonlySet<string>): boolean {
  return referencesOf(fact.kind).every(
    ({ field, names, severity }) =>
      severity === 'warning' || named.has(`${names} ${String(fact.body[field])}`),
  );
}

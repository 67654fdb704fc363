import type { JournalErrorCode, LineProblem } from './errors.ts';
import { problemMessage } from './errors.ts';
import type { Fact } from './fact.ts';
import { readJournal } from './read-lines.ts';
import { namedBy, type ReferenceKind, referencesOf } from './references.ts';
import { isKnownKind } from './schema/kinds.ts';

/** The answer of `check`. */
export interface JournalCheck {
  /** Distinct good facts, unknown kinds included. */
  readonly facts: number;
  /** How many facts of each kind, unknown kinds included, by name of the kind. */
  readonly kinds: Readonly<Record<string, number>>;
  /** How many facts are of kinds this program does not know. */
  readonly unknown: number;
  /** Lines that say again what another line says. */
  readonly repeats: number;
  readonly warnings: readonly LineProblem[];
  readonly errors: readonly LineProblem[];
}

/**
 * Looks through a whole journal: every bad line, every id used twice for different things, every dog, session and rep
 * that no fact names (errors), every ground, handler and layout that no fact names (warnings). Problems stand in order
 * of lines. A dog, session or rep named on a line that is bad for another reason counts as named, so that one mistake is
 * told once and not again at every fact that hangs on it.
 */
export function checkJournal(text: string): JournalCheck {
  const reading = readJournal(text);
  const named = new Set<string>();
  for (const fact of reading.facts) addNamed(named, fact);
  for (const { value } of reading.badLines) addNamed(named, value);

  const errors: LineProblem[] = [...reading.errors];
  const warnings: LineProblem[] = reading.damagedTextLines.map(damagedText);
  const counts = new Map<string, number>();
  let unknown = 0;
  reading.facts.forEach((fact, i) => {
    counts.set(fact.kind, (counts.get(fact.kind) ?? 0) + 1);
    if (!isKnownKind(fact.kind)) unknown += 1;
    for (const { field, names, code, severity } of referencesOf(fact.kind)) {
      const id = fact.body[field];
      if (typeof id !== 'string' || named.has(nameKey(names, id))) continue;
      const problem = notNamed(reading.lines[i]!, code, field, names, id);
      (severity === 'error' ? errors : warnings).push(problem);
    }
  });
  errors.sort((a, b) => a.line - b.line);
  warnings.sort((a, b) => a.line - b.line);
  const kinds = Object.fromEntries([...counts].sort(([a], [b]) => (a < b ? -1 : 1)));
  return { facts: reading.facts.length, kinds, unknown, repeats: reading.repeats, warnings, errors };
}

function addNamed(named: Set<string>, value: unknown): void {
  const { kind, body } = (value ?? {}) as Partial<Fact>;
  const names = typeof kind === 'string' ? namedBy(kind) : undefined;
  const id: unknown = names === undefined ? undefined : body?.[names];
  if (names !== undefined && typeof id === 'string') named.add(nameKey(names, id));
}

function nameKey(names: ReferenceKind, id: string): string {
  return `${names} ${id}`;
}

function notNamed(
  line: number,
  code: JournalErrorCode,
  field: string,
  names: ReferenceKind,
  id: string,
): LineProblem {
  const whatIsWrong = `body.${field}: no fact names the ${names} ${JSON.stringify(id)}`;
  return { line, code, field: `body.${field}`, message: problemMessage(code, whatIsWrong) };
}

function damagedText(line: number): LineProblem {
  const message = problemMessage('TEXT_DAMAGED', 'the line holds the replacement character U+FFFD');
  return { line, code: 'TEXT_DAMAGED', field: '', message };
}

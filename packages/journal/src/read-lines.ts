import { type LineProblem, problemMessage } from './errors.ts';
import type { Fact } from './fact.ts';
import { preferredFirst } from './merge.ts';
import { orderBy } from './order.ts';
import { readFactLine } from './read-fact-line.ts';
import { sameContent } from './same-content.ts';

/** A line that is JSON but no good fact: what it says may still name a dog, a session or a rep. */
export interface BadLine {
  readonly line: number;
  readonly value?: unknown;
}

/** What a journal file holds. */
export interface JournalReading {
  /** Every distinct good fact, in the journal's order. */
  readonly facts: readonly Fact[];
  /** The line of each of `facts`, counted from 1. */
  readonly lines: readonly number[];
  /** Lines that say again what another line says. */
  readonly repeats: number;
  /** All that is wrong, in order of lines; a line may have several problems. */
  readonly errors: readonly LineProblem[];
  /** The lines that `errors` speaks of, each once. */
  readonly badLines: readonly BadLine[];
  /** Lines with the replacement character, where the file was not UTF-8. */
  readonly damagedTextLines: readonly number[];
}

interface Placed {
  readonly fact: Fact;
  readonly line: number;
}

/**
 * Reads a journal: JSON Lines, one fact a line, in any order. A byte order mark, CRLF and blank lines are let pass; a bad
 * line never loses the good ones; never throws. Of two facts with one id and different contents the one that
 * `mergeFacts` would keep is kept, and the later line is the error.
 */
export function readJournal(text: string): JournalReading {
  const byId = new Map<string, Placed>();
  const errors: LineProblem[] = [];
  const badLines: BadLine[] = [];
  const damagedTextLines: number[] = [];
  let repeats = 0;
  let line = 0;
  let start = 0;
  while (start < text.length) {
    line += 1;
    const end = text.indexOf('\n', start);
    const isLast = end === -1;
    const content = lineContent(text.slice(start, isLast ? text.length : end));
    start = isLast ? text.length : end + 1;
    if (content === '') continue;
    if (content.includes('\ufffd')) damagedTextLines.push(line);
    const reading = readFactLine(content);
    if (!reading.ok) {
      badLines.push({ line, value: reading.value });
      for (const problem of reading.problems)
        errors.push(isLast ? torn(problem, line) : { line, ...problem });
      continue;
    }
    const { fact } = reading;
    const there = byId.get(fact.id);
    if (there === undefined) {
      byId.set(fact.id, { fact, line });
    } else if (sameContent(there.fact, fact)) {
      repeats += 1;
    } else {
      badLines.push({ line, value: fact });
      errors.push({ line, ...conflict(fact.id, there.line) });
      if (preferredFirst(there.fact, fact)[0] === fact) byId.set(fact.id, { fact, line });
    }
  }
  const placed = orderBy(byId.values(), (entry) => entry.fact);
  return {
    facts: placed.map((entry) => entry.fact),
    lines: placed.map((entry) => entry.line),
    repeats,
    errors,
    badLines,
    damagedTextLines,
  };
}

/** One fact as a line, with its end. Unknown fields are written as they were read. */
export function writeFact(fact: Fact): string {
  return `${JSON.stringify(fact)}\n`;
}

/** Facts as a journal file, in the order given. */
export function writeJournal(facts: Iterable<Fact>): string {
  const lines: string[] = [];
  for (const fact of facts) lines.push(writeFact(fact));
  return lines.join('');
}

/** A line without its byte order mark (files may have been joined), carriage return and outer blanks. */
function lineContent(line: string): string {
  const first = line.charCodeAt(0);
  const last = line.charCodeAt(line.length - 1);
  return first > 0x20 && first !== 0xfeff && last > 0x20 && last < 0x7f ? line : line.trim();
}

/** A last line without a line end that is not JSON was torn off, which is another thing to tell than a wrong line. */
function torn(problem: Omit<LineProblem, 'line'>, line: number): LineProblem {
  if (problem.code !== 'LINE_NOT_JSON') return { line, ...problem };
  const message = problemMessage('LINE_TORN', 'the last line breaks off before its end');
  return { line, code: 'LINE_TORN', field: '', message };
}

function conflict(id: string, otherLine: number): Omit<LineProblem, 'line'> {
  const whatIsWrong = `id: ${JSON.stringify(id)} is also the id of line ${otherLine}, with other contents`;
  return { code: 'FACT_CONFLICT', field: 'id', message: problemMessage('FACT_CONFLICT', whatIsWrong) };
}

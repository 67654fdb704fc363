import { type FactProblem, problemMessage } from './errors.ts';
import type { Fact } from './fact.ts';
import { factProblems } from './schema/validate-fact.ts';

/** Longest line in bytes of UTF-8, its end not counted, and deepest nesting (the fact's own braces are the first). */
export const LINE_BYTES_MAX = 1_048_576;
export const LINE_DEPTH_MAX = 32;

/** A fact read from a line, or all that is wrong with it; `value` is what was read, where it was JSON at all. */
export type LineReading =
  | { readonly ok: true; readonly fact: Fact }
  | { readonly ok: false; readonly problems: readonly FactProblem[]; readonly value?: unknown };

/** Reads one line that is not blank. Never throws: any text at all gives a fact or problems. */
export function readFactLine(line: string): LineReading {
  if (isTooLong(line)) {
    return refused('LINE_TOO_LONG', `expected ${LINE_BYTES_MAX} bytes at most, got ${utf8Bytes(line)}`);
  }
  let value: unknown;
  try {
    value = JSON.parse(line);
  } catch (error) {
    return refused(
      'LINE_NOT_JSON',
      `not readable as JSON (${error instanceof Error ? error.message : error})`,
    );
  }
  if (isTooDeep(line, value)) {
    return refused('LINE_TOO_DEEP', `expected ${LINE_DEPTH_MAX} levels of nesting at most`);
  }
  const problems = factProblems(value);
  return problems.length === 0 ? { ok: true, fact: value as Fact } : { ok: false, problems, value };
}

/** The number of bytes a text takes in UTF-8 (a lone half of a surrogate pair counts as the three it is replaced by). */
export function utf8Bytes(text: string): number {
  let bytes = 0;
  for (let i = 0; i < text.length; i += 1) {
    const unit = text.charCodeAt(i);
    if (unit <= 0x7f) bytes += 1;
    else if (unit <= 0x7ff) bytes += 2;
    else if (isHighSurrogate(unit) && isLowSurrogate(text.charCodeAt(i + 1))) {
      bytes += 4;
      i += 1;
    } else bytes += 3;
  }
  return bytes;
}

function isHighSurrogate(unit: number): boolean {
  return unit >= 0xd800 && unit <= 0xdbff;
}

function isLowSurrogate(unit: number): boolean {
  return unit >= 0xdc00 && unit <= 0xdfff;
}

/** Whether a line, without its end, takes more than `LINE_BYTES_MAX` bytes. */
export function isTooLong(line: string): boolean {
  if (line.length * 3 <= LINE_BYTES_MAX) return false;
  return line.length > LINE_BYTES_MAX || utf8Bytes(line) > LINE_BYTES_MAX;
}

/** Whether a value nests deeper than `LINE_DEPTH_MAX`; `line` is its JSON. */
export function isTooDeep(line: string, value: unknown): boolean {
  return mayBeTooDeep(line) && isDeeper(value, LINE_DEPTH_MAX);
}

/** Cheap look first: a line with few opening brackets cannot nest deeply. */
function mayBeTooDeep(line: string): boolean {
  let opened = 0;
  for (const bracket of ['{', '[']) {
    for (let at = line.indexOf(bracket); at !== -1; at = line.indexOf(bracket, at + 1)) {
      opened += 1;
      if (opened > LINE_DEPTH_MAX) return true;
    }
  }
  return false;
}

/** Whether a value nests deeper than `levels`; walks no further down than that, so its own stack is small. */
function isDeeper(value: unknown, levels: number): boolean {
  if (typeof value !== 'object' || value === null) return false;
  if (levels === 0) return true;
  return Object.values(value).some((inner) => isDeeper(inner, levels - 1));
}

function refused(code: FactProblem['code'], whatIsWrong: string): LineReading {
  return { ok: false, problems: [{ code, field: '', message: problemMessage(code, whatIsWrong) }] };
}

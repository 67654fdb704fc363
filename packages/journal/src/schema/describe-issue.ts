import type * as v from 'valibot';
import { type FactProblem, JOURNAL_ERRORS, type JournalErrorCode, problemMessage } from '../errors.ts';

const GOT_LENGTH_MAX = 60;

/** Turns an issue of the schema library into a problem of our catalogue; `prefix` is put before the field's path. */
export function describeIssue(issue: v.BaseIssue<unknown>, prefix: '' | 'body'): FactProblem {
  const field = fieldPath(issue, prefix);
  if (isMissing(issue)) {
    return {
      code: 'FIELD_MISSING',
      field,
      message: problemMessage('FIELD_MISSING', `${field} is not there`),
    };
  }
  const { code, expected } = splitMessage(issue);
  return {
    code,
    field,
    message: problemMessage(code, `${field}: expected ${expected}, got ${show(badValue(issue))}`),
  };
}

/** The value at the issue's path: a rule across fields is raised on the object and points to one of its fields. */
function badValue(issue: v.BaseIssue<unknown>): unknown {
  const lastStep = issue.path?.at(-1);
  return lastStep === undefined ? issue.input : lastStep.value;
}

/** A value in a few words for a message: short JSON, or what it is. */
export function show(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object' && value !== null) return 'an object';
  const json = JSON.stringify(value) ?? String(value);
  return json.length > GOT_LENGTH_MAX ? `${json.slice(0, GOT_LENGTH_MAX)}…` : json;
}

function fieldPath(issue: v.BaseIssue<unknown>, prefix: '' | 'body'): string {
  let path: string = prefix;
  for (const step of issue.path ?? []) {
    if (step.type === 'array') path += `[${String(step.key)}]`;
    else path += path === '' ? String(step.key) : `.${String(step.key)}`;
  }
  return path;
}

/** The object schema complains of a missing field with the field's name, in quotes, as what it expected. */
function isMissing(issue: v.BaseIssue<unknown>): boolean {
  return issue.kind === 'schema' && issue.input === undefined && (issue.expected ?? '').startsWith('"');
}

function splitMessage(issue: v.BaseIssue<unknown>): { code: JournalErrorCode; expected: string } {
  const space = issue.message.indexOf(' ');
  const code = issue.message.slice(0, space);
  if (!Object.hasOwn(JOURNAL_ERRORS, code)) {
    throw new TypeError(`schema message: expected a code of the catalogue first, got ${issue.message}`);
  }
  const wrongTypeOfWord = issue.type === 'picklist' && typeof issue.input !== 'string';
  return {
    code: wrongTypeOfWord ? 'FIELD_TYPE' : (code as JournalErrorCode),
    expected: issue.message.slice(space + 1),
  };
}

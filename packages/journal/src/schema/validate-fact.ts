import * as v from 'valibot';
import { readClock } from '../clock.ts';
import { type FactProblem, problemMessage } from '../errors.ts';
import type { Fact } from '../fact.ts';
import { readTime } from '../time.ts';
import { describeIssue, show } from './describe-issue.ts';
import { id, text } from './fields.ts';
import { BODY_SCHEMAS, isKnownKind } from './kinds.ts';
import { objectOf } from './object-of.ts';

const envelopeSchema = objectOf({
  id,
  kind: id,
  at: v.string('FIELD_TYPE a time such as 2026-03-01T09:00:00Z'),
  body: objectOf({}),
  clock: v.optional(v.string('FIELD_TYPE a clock (MS-CCCC-DEVICE)')),
  device: v.optional(text),
  by: v.optional(text),
});

/** A fact that may be trusted, or the first thing wrong with the value. */
export type FactValidation =
  | { readonly ok: true; readonly fact: Fact }
  | ({ readonly ok: false } & FactProblem);

/**
 * Checks that a value is a fact as `docs/journal.md` describes it. The fact given back is the value itself, so unknown
 * fields stay as they were; unknown kinds pass when their envelope (id, kind, at, body) is right. References to other
 * facts and equal ids are looked at by `checkJournal` and `mergeFacts`, not here.
 */
export function validateFact(value: unknown): FactValidation {
  const first = factProblems(value)[0];
  return first === undefined ? { ok: true, fact: value as Fact } : { ok: false, ...first };
}

/** Everything wrong with a value that should be a fact; empty when it is one. */
export function factProblems(value: unknown): readonly FactProblem[] {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    const message = problemMessage('LINE_NOT_OBJECT', `expected an object in braces, got ${show(value)}`);
    return [{ code: 'LINE_NOT_OBJECT', field: '', message }];
  }
  const problems: FactProblem[] = [];
  const envelope = v.safeParse(envelopeSchema, value);
  if (!envelope.success) {
    for (const issue of envelope.issues) problems.push(describeIssue(issue, ''));
  }
  const { kind, at, clock, body } = value as Partial<Record<'kind' | 'at' | 'clock' | 'body', unknown>>;
  if (typeof at === 'string') addTimeProblem(problems, at);
  if (typeof clock === 'string') addClockProblem(problems, clock);
  if (typeof kind === 'string' && isKnownKind(kind) && isObject(body)) {
    const checked = v.safeParse(BODY_SCHEMAS[kind] as v.GenericSchema, body);
    if (!checked.success) {
      for (const issue of checked.issues) problems.push(describeIssue(issue, 'body'));
    }
  }
  return problems;
}

function isObject(value: unknown): boolean {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function addTimeProblem(problems: FactProblem[], at: string): void {
  const reading = readTime(at);
  if (reading.ok) return;
  const expected =
    reading.code === 'TIME_FORMAT'
      ? 'an ISO 8601 time with Z or an offset'
      : 'a time of the calendar, 1980 to 2200, without leap seconds';
  const message = problemMessage(reading.code, `at: expected ${expected}, got ${show(at)}`);
  problems.push({ code: reading.code, field: 'at', message });
}

function addClockProblem(problems: FactProblem[], clock: string): void {
  const reading = readClock(clock);
  if (reading.ok) return;
  const expected = reading.code === 'CLOCK_FORMAT' ? 'MS-CCCC-DEVICE' : 'a clock in the years 1980 to 2200';
  const message = problemMessage(reading.code, `clock: expected ${expected}, got ${show(clock)}`);
  problems.push({ code: reading.code, field: 'clock', message });
}

/** What a code of the catalogue means, and what a person can do about it. */
export interface CatalogueEntry {
  readonly means: string;
  readonly doThis: string;
}

/**
 * Everything that can be wrong with a journal, by stable code. A code is never renamed or given another meaning;
 * `docs/journal.md` lists the same codes (a test compares the two).
 */
export const JOURNAL_ERRORS = {
  LINE_NOT_JSON: {
    means: 'the line is not one JSON value',
    doThis: 'correct the line or take it out',
  },
  LINE_TORN: {
    means: 'the last line breaks off: the file was cut, or the writer was stopped in mid-write',
    doThis: 'take the rest of the line out; the lines before it are whole',
  },
  LINE_NOT_OBJECT: {
    means: 'the line is JSON, but not an object in braces',
    doThis: 'write one fact a line: {"id", "kind", "at", "body"}',
  },
  LINE_TOO_LONG: {
    means: 'the line is longer than 1 MiB (1,048,576 bytes)',
    doThis: 'split the fact or shorten its texts',
  },
  LINE_TOO_DEEP: {
    means: 'the line is nested deeper than 32',
    doThis: 'flatten the value',
  },
  FIELD_MISSING: {
    means: 'a required field is not there',
    doThis: 'add the field',
  },
  FIELD_TYPE: {
    means: 'a value has the wrong type',
    doThis: 'write the value in the type that is expected, or leave an optional field out',
  },
  FIELD_RANGE: {
    means: 'a number is out of its range, or an id is empty',
    doThis: 'correct the value; mind the unit in the name of the field',
  },
  FIELD_VALUE: {
    means: 'a word is not one of those allowed here, or a field stands where it may not',
    doThis: 'use one of the words named',
  },
  TIME_FORMAT: {
    means: 'a time or a date is not written in the form that is expected',
    doThis: 'write times as 2026-03-01T09:00:00Z or with an offset such as +01:00, dates as 2026-03-01',
  },
  TIME_RANGE: {
    means:
      'a time or a date is not in the calendar, or outside the years 1980 to 2200; there are no leap seconds',
    doThis: 'correct the date',
  },
  CLOCK_FORMAT: {
    means: 'the clock is not 13 digits of milliseconds, 4 hex digits and a device id, joined by hyphens',
    doThis: 'correct the clock, or leave it out: then the time in `at` orders the fact',
  },
  CLOCK_RANGE: {
    means: 'the clock stands outside the years 1980 to 2200',
    doThis: 'correct the clock, or leave it out: then the time in `at` orders the fact',
  },
  FACT_CONFLICT: {
    means: 'two facts have the same id and different contents',
    doThis: 'give one of them another id, or take one out',
  },
  UNKNOWN_DOG: {
    means: 'no fact names this dog',
    doThis: 'add its `dog-added` fact or correct the id',
  },
  UNKNOWN_SESSION: {
    means: 'no fact names this session',
    doThis: 'add its `session-opened` fact or correct the id',
  },
  UNKNOWN_REP: {
    means: 'no fact names this rep',
    doThis: 'add its `rep-recorded` fact or correct the id',
  },
  UNKNOWN_GROUND: {
    means: 'no fact names this ground (a warning)',
    doThis: 'add its `ground-added` fact or correct the id',
  },
  UNKNOWN_HANDLER: {
    means: 'no fact names this handler (a warning)',
    doThis: 'add its `handler-added` fact or correct the id',
  },
  UNKNOWN_LAYOUT: {
    means: 'no fact names this layout (a warning)',
    doThis: 'add its `layout-drawn` fact or correct the id',
  },
  TEXT_DAMAGED: {
    means: 'the line holds the replacement character: the file may not be UTF-8 throughout (a warning)',
    doThis: 'save the file as UTF-8 and look at the texts of this line',
  },
} as const satisfies Record<string, CatalogueEntry>;

/** A stable code of the journal's error catalogue. */
export type JournalErrorCode = keyof typeof JOURNAL_ERRORS;

/** One thing wrong with one value: code, path of the field (`body.legs[0].ask.distanceM`), and a sentence. */
export interface FactProblem {
  readonly code: JournalErrorCode;
  /** Empty where the whole line is meant. */
  readonly field: string;
  readonly message: string;
}

/** One thing wrong with one line of a file; lines count from 1. */
export interface LineProblem extends FactProblem {
  readonly line: number;
}

/** The sentence of a problem: what is wrong, then what the catalogue says to do. */
export function problemMessage(code: JournalErrorCode, whatIsWrong: string): string {
  return `${whatIsWrong}; ${JOURNAL_ERRORS[code].doThis}`;
}

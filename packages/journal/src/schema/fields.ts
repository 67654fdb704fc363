import * as v from 'valibot';
import { readDate } from '../time.ts';

/**
 * Building blocks of the schemas. Every message has the form `CODE expected`, a code of the error catalogue and then
 * the words that follow "expected"; `describeIssue` takes the two apart again.
 */

/** Any text, the empty one included. */
export const text = v.string('FIELD_TYPE text');

/** The id of something: text that is not empty. */
export const id = v.pipe(
  v.string('FIELD_TYPE an id (text that is not empty)'),
  v.minLength(1, 'FIELD_RANGE an id (text that is not empty)'),
);

export const flag = v.boolean('FIELD_TYPE true or false');

/** A number from `low` to `high`, both included. */
export function numberBetween(low: number, high: number) {
  const expected = `a number from ${low} to ${high}`;
  return v.pipe(
    v.number(`FIELD_TYPE ${expected}`),
    v.check((value) => value >= low && value <= high, `FIELD_RANGE ${expected}`),
  );
}

/** One of the words of a list. */
export function oneOf<const Words extends readonly string[]>(words: Words) {
  return v.picklist(words, `FIELD_VALUE one of ${words.join(', ')}`);
}

/** A calendar date, `YYYY-MM-DD`, in the years 1980 to 2200. */
export const date = v.pipe(
  v.string('FIELD_TYPE a date such as 2026-03-01'),
  v.check((value) => {
    const reading = readDate(value);
    return reading.ok || reading.code !== 'TIME_FORMAT';
  }, 'TIME_FORMAT a date such as 2026-03-01'),
  v.check((value) => {
    const reading = readDate(value);
    return reading.ok || reading.code !== 'TIME_RANGE';
  }, 'TIME_RANGE a date of the calendar, 1980 to 2200'),
);

/** A list of one kind of value. */
export function listOf<Item extends v.GenericSchema>(item: Item) {
  return v.array(item, 'FIELD_TYPE a list');
}

/**
 * An object with the given fields; unknown fields are let pass. The library's own loose object takes a list for an
 * object (where every field is optional nothing would complain), so that is refused first.
 */
export function objectOf<Entries extends v.ObjectEntries>(entries: Entries) {
  const loose = v.looseObject(entries, 'FIELD_TYPE an object in braces');
  type Outcome = ReturnType<(typeof loose)['~run']>;
  const run: (typeof loose)['~run'] = (dataset, config) => {
    if (!Array.isArray(dataset.value)) return loose['~run'](dataset, config);
    v._addIssue(loose, 'type', dataset, config);
    const refused: unknown = dataset;
    return refused as Outcome;
  };
  return { ...loose, '~run': run };
}

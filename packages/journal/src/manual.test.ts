import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { JOURNAL_ERRORS } from './errors.ts';
import { readJournal } from './read-lines.ts';
import { askSchema } from './schema/ask-schema.ts';
import { ASK_RANGES } from './schema/bodies.fixture.ts';
import { BODY_SCHEMAS } from './schema/kinds.ts';
import { legSchema } from './schema/rep-schema.ts';
import { kitRules, storeKitCases } from './store/store-kit.ts';

const manual = readFileSync(new URL('../../../docs/journal.md', import.meta.url), 'utf8');
const portSpec = readFileSync(new URL('../../../docs/storage-port.md', import.meta.url), 'utf8');

/** The text from a heading `### name` to the next heading. */
const section = (name: string): string => {
  const found = manual.split(/^#{2,3} /m).find((part) => part.startsWith(`${name}\n`));
  if (found === undefined) throw new Error(`docs/journal.md: expected a section ${name}`);
  return found;
};
const fieldsOf = (name: string) =>
  [...section(name).matchAll(/^\| `(\w+\??)` \|/gm)].map((match) => match[1]!);

type Entries = Readonly<Record<string, { readonly type: string }>>;
const entriesOf = (schema: { readonly entries: Entries }) =>
  Object.entries(schema.entries).map(([name, entry]) => (entry.type === 'optional' ? `${name}?` : name));

describe('docs/journal.md says what the code does', () => {
  it.each(Object.entries(BODY_SCHEMAS))('fields of %s', (kind, schema) => {
    expect(fieldsOf(kind).sort()).toEqual(entriesOf(schema).sort());
  });

  it('fields of leg and ask', () => {
    expect(fieldsOf('leg').sort()).toEqual(entriesOf(legSchema).sort());
    expect(fieldsOf('ask').sort()).toEqual(entriesOf(askSchema).sort());
  });

  it('ranges of an ask, those that the tests of the schema hold the code to', () => {
    const rows = [...section('ask').matchAll(/^\| `(\w+)\?` \| (\d+) to (\d+) \|/gm)];
    const ranges = rows.map(([, name, low, high]) => [name, [Number(low), Number(high)]]);
    expect(Object.fromEntries(ranges)).toEqual(ASK_RANGES);
  });

  it('codes, meanings and advice of the error catalogue', () => {
    const rows = [...manual.matchAll(/^\| `([A-Z_]+)` \| (.+) \| (.+) \|$/gm)].map((row) => row.slice(1, 4));
    const catalogue = Object.entries(JOURNAL_ERRORS).map(([code, { means, doThis }]) => [
      code,
      means,
      doThis,
    ]);
    expect(rows).toEqual(catalogue);
  });

  it('its example is a journal', () => {
    const example = /```\n([^`]+)```/.exec(manual)?.[1] ?? '';
    const { facts, errors } = readJournal(example);
    expect(errors).toEqual([]);
    expect(facts.length).toBe(2);
  });
});

describe('docs/storage-port.md and the contract kit', () => {
  it('every rule has a case, and every case a rule', () => {
    const rules = [...portSpec.matchAll(/^\| \[(S\d+)\] \|/gm)].map((row) => row[1]!);
    const cases = storeKitCases(() => Promise.reject(new Error('not run here')));
    expect(kitRules(cases)).toEqual(rules);
  });
});

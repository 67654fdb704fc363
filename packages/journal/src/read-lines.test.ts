import { describe, expect, it } from 'vitest';
import { LINE_BYTES_MAX, utf8Bytes } from './read-fact-line.ts';
import { readJournal, writeJournal } from './read-lines.ts';

const line = (id: string, more = '') =>
  `{"id":"${id}","kind":"mark-set","at":"2026-03-01T09:00:00Z","body":{}${more}}`;
const summary = (text: string) => {
  const { facts, lines, repeats, errors } = readJournal(text);
  return {
    facts: facts.map((fact, i) => `${fact.id} ${lines[i]}`),
    repeats,
    errors: errors.map(({ line: at, code, field }) => `${at} ${code} ${field}`.trim()),
  };
};

describe('readJournal', () => {
  it('lets a byte order mark, CRLF, blank lines and a missing last line end pass', () => {
    const text = `\ufeff${line('a')}\r\n\r\n  \t\n${line('b')}\r\n\ufeff${line('c')}`;
    expect(summary(text)).toEqual({ facts: ['a 1', 'b 4', 'c 5'], repeats: 0, errors: [] });
    expect(summary('')).toEqual({ facts: [], repeats: 0, errors: [] });
    expect(summary('\ufeff\r\n')).toEqual({ facts: [], repeats: 0, errors: [] });
  });

  it('ends lines at line feeds alone: U+2028 and U+0085 stand in texts', () => {
    const text = `${line('a', ',"note":"x\u2028y\u0085z"')}\n${line('b')}\n`;
    expect(summary(text).facts).toEqual(['a 1', 'b 2']);
  });

  it('loses no good line to a bad one', () => {
    const text = [line('a'), '{"id":"b"', '[1]', 'null', line('c', ',"clock":"x"'), line('d'), '{"id'].join(
      '\n',
    );
    expect(summary(text)).toEqual({
      facts: ['a 1', 'd 6'],
      repeats: 0,
      errors: [
        '2 LINE_NOT_JSON',
        '3 LINE_NOT_OBJECT',
        '4 LINE_NOT_OBJECT',
        '5 CLOCK_FORMAT clock',
        '7 LINE_TORN',
      ],
    });
  });

  it('takes a bad last line with its end for wrong, not for torn', () => {
    expect(summary(`${line('a')}\n{"id\n`).errors).toEqual(['2 LINE_NOT_JSON']);
  });

  it('counts a line that says the same again, in whatever order of keys', () => {
    const turned = '{"body":{},"at":"2026-03-01T09:00:00Z","kind":"mark-set","id":"a"}';
    expect(summary([line('a'), turned, line('a'), line('b')].join('\n'))).toEqual({
      facts: ['a 1', 'b 4'],
      repeats: 2,
      errors: [],
    });
  });

  it('tells of an id with other contents at the later line and keeps one of the two', () => {
    const { facts, errors } = readJournal([line('a'), line('b'), line('a', ',"by":"h1"')].join('\n'));
    expect(facts.map((fact) => fact.id)).toEqual(['a', 'b']);
    expect(errors.map(({ line: at, code, field }) => [at, code, field])).toEqual([
      [3, 'FACT_CONFLICT', 'id'],
    ]);
    expect(errors[0]?.message).toContain('line 1');
  });

  it('takes a line of 1 MiB and refuses one of a byte more, in bytes of UTF-8', () => {
    const padded = (bytes: number, unit: string) => {
      const room = bytes - line('a', ',"note":""').length;
      const text = line(
        'a',
        `,"note":"${unit.repeat(Math.floor(room / utf8Bytes(unit)))}${'x'.repeat(room % utf8Bytes(unit))}"`,
      );
      expect(new TextEncoder().encode(text).length).toBe(bytes);
      return text;
    };
    for (const unit of ['x', 'ü', '€', '🐕']) {
      expect(summary(padded(LINE_BYTES_MAX, unit)).errors).toEqual([]);
      expect(summary(`${padded(LINE_BYTES_MAX + 1, unit)}\n${line('b')}`)).toEqual({
        facts: ['b 2'],
        repeats: 0,
        errors: ['1 LINE_TOO_LONG'],
      });
    }
  });

  it('takes nesting of 32, refuses 33, and survives a hundred thousand', () => {
    const nested = (levels: number) =>
      line('a', `,"deep":${'['.repeat(levels - 1)}${']'.repeat(levels - 1)}`);
    expect(summary(nested(32)).errors).toEqual([]);
    expect(summary(nested(33)).errors).toEqual(['1 LINE_TOO_DEEP']);
    expect(summary(nested(100_000)).errors).toEqual(['1 LINE_TOO_DEEP']);
    expect(summary(`${line('b', `,"flat":[${'[],'.repeat(99)}[]]`)}`).errors).toEqual([]);
  });

  it('writes what it reads, unknown fields to the byte', () => {
    const text = `${line('a', ',"zeal":{"b":1,"a":[null,true,"\\ud83d"]}')}\n${line('b')}\n`;
    expect(writeJournal(readJournal(text).facts)).toBe(text);
  });
});

import { expect, test } from 'vitest';
import { bannedLines, bannedPatterns, impureLines } from './house-words.mjs';

test.each([
  'const now = Date.now();',
  'const now = new Date();',
  'const now = new Date( );',
  'const now = new Date;',
  'const now = performance.now();',
  'return Math.random() < 0.5;',
  'const id = crypto.randomUUID();',
  "const at = 'https://example.org'; Date.now();",
])('is impure: %s', (line) => {
  expect(impureLines(`\n${line}`)).toEqual([expect.stringMatching(/^2: /)]);
});

test.each([
  'const then = new Date(atMs).toISOString();',
  'const then = Date.parse(text);',
  '// no Date.now() here',
  '/* nor\n Math.random() there */',
  'const range = new DateRange();',
])('is pure: %s', (source) => {
  expect(impureLines(source)).toEqual([]);
});

const patterns = bannedPatterns(['/srv/checkouts/one', '/opt/kennel']);

test.each([
  ["import '/srv/checkouts/one/x.ts';", 'a path of a machine'],
  ['see /opt/kennel/notes.md', 'a path of a machine'],
  [['/ho', 'me/anna/x'].join(''), 'a path of a machine'],
  [['C:', 'Users', 'anna'].join('\\'), 'a path of a machine'],
  [`// ${'TO'}${'DO'} later`, 'work left undone'],
  [`// @ts-${'ignore'}`, 'a silenced type check'],
  [`const x = y as ${'any'};`, 'a silenced type check'],
  [`test.${'skip'}('later', () => {});`, 'a skipped test'],
])('%s holds %s', (line, what) => {
  expect(bannedLines(`fine\n${line}`, patterns)).toEqual([`2: ${what}`]);
});

test.each([
  "import './one.ts';",
  'app.get("/opt/kennels", handler)',
  'a home from home/anna',
  'https://example.org/home/anna/',
  'as anyone would',
])('%s is let pass', (line) => {
  expect(bannedLines(line, patterns)).toEqual([]);
});

import { randomBytes } from 'node:crypto';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, expect, test } from 'vitest';
import { firstLoadFiles, scriptsOfPage, sizeBudget } from './size-budget.mjs';

const manifest = {
  'index.html': {
    file: 'assets/index-1.js',
    isEntry: true,
    imports: ['_shared.js'],
    dynamicImports: ['screens.tsx'],
  },
  'screens.tsx': {
    file: 'assets/screens-5.js',
    isDynamicEntry: true,
    imports: ['_shared.js'],
    dynamicImports: ['film.ts'],
  },
  '_shared.js': { file: 'assets/shared-2.js', imports: ['_deep.js'] },
  '_deep.js': { file: 'assets/deep-3.js', imports: ['_shared.js'] },
  'film.ts': { file: 'assets/film-4.js', isDynamicEntry: true, imports: ['_shared.js'] },
};

const folders = [];
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true });
});
function builtApp(bytesEach) {
  const dist = mkdtempSync(join(tmpdir(), 'sedgeline-size-'));
  folders.push(dist);
  mkdirSync(join(dist, '.vite'));
  mkdirSync(join(dist, 'assets'));
  writeFileSync(join(dist, '.vite/manifest.json'), JSON.stringify(manifest));
  writeFileSync(
    join(dist, 'index.html'),
    '<script type="module" src="/assets/index-1.js"></script><script src="/reg.js">',
  );
  const files = [...Object.values(manifest).map(({ file }) => file), 'reg.js'];
  for (const file of files) writeFileSync(join(dist, file), randomBytes(bytesEach));
  return dist;
}

test('the first load is the entry, its imports and what it hands over to, each once, and no later part', () => {
  expect(firstLoadFiles(manifest)).toEqual([
    'assets/index-1.js',
    'assets/shared-2.js',
    'assets/deep-3.js',
    'assets/screens-5.js',
  ]);
});

test('scripts that the page names count too, foreign ones not', () => {
  const page = '<script defer src="/registerSW.js"></script><script src="https://example.org/x.js"></script>';
  expect(scriptsOfPage(page)).toEqual(['registerSW.js']);
});

test('a manifest that names a missing chunk is an error', () => {
  expect(() => firstLoadFiles({ a: { file: 'a.js', isEntry: true, imports: ['b'] } })).toThrow(RangeError);
});

// Random bytes do not compress: 4 files of 10,000 bytes are 40,000 bytes and a few of gzip's frame each (18 and 5 a block).
test('five files of the first load are counted, and judged against the budget', () => {
  const dist = builtApp(10_000);
  expect(sizeBudget(dist, 51_000).complaints).toEqual([]);
  expect(sizeBudget(dist, 50_000).complaints).toEqual([expect.stringContaining('too big: 50.1 kB')]);
});

test('an app without script is a broken build, not a small one', () => {
  const dist = builtApp(10);
  writeFileSync(join(dist, '.vite/manifest.json'), '{}');
  writeFileSync(join(dist, 'index.html'), '<p>nothing</p>');
  expect(sizeBudget(dist).complaints).toHaveLength(1);
});

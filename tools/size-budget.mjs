import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { inRoot } from './repository.mjs';

/** What the first load may cost in script, bytes after gzip: our judgement, 2026, 1 s of work on a mid phone. */
export const FIRST_LOAD_BUDGET_BYTES = 180_000;

/**
 * The script files that a browser loads before anything is shown, by vite's manifest: the entries, what they import, what they
 * hand over to at once (an entry's own lazy import) and what that imports, each once. Later lazy imports are not among them.
 */
export function firstLoadFiles(manifest) {
  const seen = new Set();
  const visit = (key) => {
    const chunk = manifest[key];
    if (chunk === undefined) throw new RangeError(`manifest: expected a chunk ${key}, got none`);
    if (seen.has(chunk.file)) return;
    seen.add(chunk.file);
    for (const next of chunk.imports ?? []) visit(next);
  };
  for (const [key, chunk] of Object.entries(manifest)) {
    if (chunk.isEntry !== true) continue;
    for (const next of [key, ...(chunk.dynamicImports ?? [])]) visit(next);
  }
  return [...seen].filter((file) => file.endsWith('.js'));
}

/** Scripts that a page names itself, beside those of the manifest (a service worker's registration, say). */
export const scriptsOfPage = (html) =>
  [...html.matchAll(/<script[^>]*\ssrc="\/?([^"]+)"/g)]
    .map(([, file]) => file)
    .filter((file) => !file.includes('//'));

/** The first load of the built web app in bytes after gzip -9, and what is wrong with it. */
export function sizeBudget(dist = inRoot('apps', 'web', 'dist'), budgetBytes = FIRST_LOAD_BUDGET_BYTES) {
  const manifest = JSON.parse(readFileSync(join(dist, '.vite', 'manifest.json'), 'utf8'));
  const page = readFileSync(join(dist, 'index.html'), 'utf8');
  const files = [...new Set([...firstLoadFiles(manifest), ...scriptsOfPage(page)])];
  const bytes = files.reduce(
    (sum, file) => sum + gzipSync(readFileSync(join(dist, file)), { level: 9 }).length,
    0,
  );
  const kB = (count) => `${(count / 1000).toFixed(1)} kB`;
  const figure = `${kB(bytes)} gz of script in the first load, budget ${kB(budgetBytes)}, ${files.length} files`;
  if (files.length === 0)
    return { figure, complaints: ['the first load has no script; is the build whole?'] };
  return { figure, complaints: bytes > budgetBytes ? [`too big: ${figure}: ${files.join(', ')}`] : [] };
}

import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A small built web app in a new temporary folder, for tests; whoever asks for it removes it. */
export function sampleWebFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'sedgeline-web-'));
  mkdirSync(join(folder, 'assets'));
  mkdirSync(join(folder, '.vite'));
  writeFileSync(join(folder, 'index.html'), '<!doctype html><title>sample page</title>');
  writeFileSync(join(folder, 'sw.js'), 'self.addEventListener("fetch", () => undefined);');
  writeFileSync(join(folder, 'assets', 'index-a1b2c3.js'), `export const text = '${'long '.repeat(2000)}';`);
  writeFileSync(join(folder, '.vite', 'manifest.json'), '{}');
  return folder;
}

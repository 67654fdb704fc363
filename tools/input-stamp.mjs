import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { inRoot } from './repository.mjs';

/**
 * A stamp of what a build reads: the hash of every input's path and content. Content and not time of change: a fresh
 * checkout has new times and the same content. `settings` is anything else that shapes the result.
 */
export function inputStamp(paths, settings = '') {
  const hash = createHash('sha256').update(settings);
  for (const path of [...paths].sort()) {
    const content = readFileSync(inRoot(path));
    hash.update(`\n${path} ${content.length}\n`).update(content);
  }
  return hash.digest('hex');
}

/** Whether the stamp kept beside a result is this one. */
export const stampIs = (file, stamp) => existsSync(file) && readFileSync(file, 'utf8') === stamp;

/** Keeps a stamp beside a finished result; written last, so a build cut short is built again. */
export function keepStamp(file, stamp) {
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, stamp);
}

import { existsSync, readdirSync } from 'node:fs';
import { dirname, join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The repository's root folder, absolute. */
export const root = dirname(dirname(fileURLToPath(import.meta.url)));

/** A path inside the repository, absolute. */
export const inRoot = (...parts) => join(root, ...parts);

/**
 * Files under a folder, as paths relative to `base` with forward slashes, sorted, so that every machine sees the same
 * list. Folders for which `enter` answers false are left out; a folder that is not there holds nothing.
 */
export function filesUnder(folder, { base = root, enter = () => true } = {}) {
  if (!existsSync(folder)) return [];
  const found = [];
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) {
      if (enter(entry.name)) found.push(...filesUnder(path, { base, enter }));
    } else if (entry.isFile()) found.push(relative(base, path).split(sep).join('/'));
  }
  return found.sort();
}

/** A failure with a stable code; people see `error[CODE]: what is wrong; what to do`, never a stack. */
export class ToolFailure extends Error {
  constructor(code, message) {
    super(message);
    this.name = 'ToolFailure';
    this.code = code;
  }
}

/** Runs a tool's main function when its file is the one that Node was started with; failures become one line. */
export async function runAsMain(moduleUrl, main) {
  const started = process.argv[1] ?? '';
  const own = fileURLToPath(moduleUrl);
  if (started !== own && `${started}.mjs` !== own) return;
  try {
    await main(process.argv.slice(2));
  } catch (error) {
    report(error);
    process.exitCode = 1;
  }
}

/** Prints a failure on standard error: one line for a known one, the whole stack for a bug of ours. */
export function report(error) {
  if (error instanceof ToolFailure) process.stderr.write(`error[${error.code}]: ${error.message}\n`);
  else process.stderr.write(`${error?.stack ?? error}\n`);
}

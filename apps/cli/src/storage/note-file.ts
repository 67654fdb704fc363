import { type FileSystem, whereThere, writeAll } from './file-system.ts';

/** Where a note of a journal is kept: a file beside it, its name made safe. */
export function notePath(journalPath: string, name: string): string {
  return `${journalPath}.note-${encodeURIComponent(name)}`;
}

/** Reads a note; one that is not there or cannot be read is undefined: it can be made anew. */
export async function readNoteFile(files: FileSystem, path: string): Promise<unknown> {
  const bytes = await whereThere(files.readFile(path), null);
  if (bytes === null) return undefined;
  try {
    return JSON.parse(new TextDecoder().decode(bytes));
  } catch (error) {
    if (error instanceof SyntaxError) return undefined;
    throw error;
  }
}

/** Writes a note whole or not at all: into a new file, which then takes the place of the old one. */
export async function writeNoteFile(files: FileSystem, path: string, value: unknown): Promise<void> {
  const fresh = `${path}.new`;
  const file = await files.open(fresh, 'w');
  try {
    await writeAll(file, new TextEncoder().encode(JSON.stringify(value ?? null)));
    await file.sync();
  } finally {
    await file.close();
  }
  await files.rename(fresh, path);
}

import { dirname } from 'node:path';
import { type FileSystem, syncFolder, whereThere, writeAll } from './file-system.ts';

/** Ends a note of intent that was written whole; no line of JSON begins so. */
const WHOLE = '#whole\n';

/**
 * A note of intent beside the journal, `…pending`: the lines of an append of several facts, made durable before the append
 * begins. A power cut in mid-append then leaves either no whole note, and nothing was appended, or a whole one, by which
 * the next to hold the lock completes the append: all or none (rule S2). One fact needs none: its line is whole or torn.
 */
export function pendingPath(journalPath: string): string {
  return `${journalPath}.pending`;
}

/** Writes the note; resolves when it would survive a power cut. */
export async function writePending(files: FileSystem, journalPath: string, lines: string): Promise<void> {
  const path = pendingPath(journalPath);
  const file = await files.open(path, 'w');
  try {
    await writeAll(file, new TextEncoder().encode(lines + WHOLE));
    await file.sync();
  } finally {
    await file.close();
  }
  await syncFolder(files, dirname(path));
}

/** The lines of a note left behind: `null` where there is none, empty where it was not written whole. */
export async function readPending(files: FileSystem, journalPath: string): Promise<readonly string[] | null> {
  const bytes = await whereThere(files.readFile(pendingPath(journalPath)), null);
  if (bytes === null) return null;
  const text = new TextDecoder().decode(bytes);
  return text.endsWith(`\n${WHOLE}`) ? text.slice(0, -WHOLE.length).trimEnd().split('\n') : [];
}

/** Takes the note away; tried twice, since a note that stays after a failed append would undo its undoing. */
export async function removePending(files: FileSystem, journalPath: string): Promise<void> {
  const path = pendingPath(journalPath);
  await whereThere(
    files.unlink(path).catch(() => files.unlink(path)),
    null,
  );
}

import { readFileSync, writeFileSync, writeSync } from 'node:fs';
import { CliFailure, EXIT } from './cli-failure.ts';
import { withFileBytes } from './file-bytes.ts';
import type { Terminal } from './terminal.ts';

const STDIN = 0;
const WHY: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EACCES: 'it may not be opened',
  EISDIR: 'it is a folder',
  ENOSPC: 'the disk is full',
  EROFS: 'the disk is read-only',
  ENOTDIR: 'a part of its path is no folder',
};

function why(error: unknown): string {
  const code = (error as NodeJS.ErrnoException).code ?? 'unknown';
  return WHY[code] ?? `the system says ${code}`;
}

/** Writes all of a text, also into a pipe that is full for a moment. */
function writeAll(fd: number, text: string): void {
  const bytes = Buffer.from(text);
  let at = 0;
  while (at < bytes.length) {
    try {
      at += writeSync(fd, bytes, at);
    } catch (error) {
      const { code } = error as NodeJS.ErrnoException;
      if (code === 'EPIPE') return;
      if (code !== 'EAGAIN') throw error;
    }
  }
}

function unreadable(path: string, error: unknown): CliFailure {
  const message = `cannot read it: ${why(error)}; check the path and the rights`;
  const file = path === '-' ? 'standard input' : path;
  return new CliFailure({ code: 'FILE_UNREADABLE', message, exit: EXIT.world, file });
}

/** Files, standard input and standard output of this process. */
export const nodeTerminal: Terminal = {
  readFile(path) {
    try {
      return readFileSync(path === '-' ? STDIN : path, 'utf8');
    } catch (error) {
      throw unreadable(path, error);
    }
  },
  readBytes: (path, use) =>
    withFileBytes(path === '-' ? STDIN : path, use, (error) => unreadable(path, error)),
  writeNewFile(path, text) {
    if (path === '-') return writeAll(1, text);
    try {
      writeFileSync(path, text, { flag: 'wx' });
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code === 'EEXIST') {
        const message = 'the file is there already and is left as it is; name another, or move it away';
        throw new CliFailure({ code: 'FILE_EXISTS', message, exit: EXIT.usage, file: path });
      }
      const message = `cannot write it: ${why(error)}; nothing was saved, choose another place`;
      throw new CliFailure({ code: 'FILE_UNWRITABLE', message, exit: EXIT.world, file: path });
    }
  },
  out: (text) => writeAll(1, text),
  err: (text) => writeAll(2, text),
};

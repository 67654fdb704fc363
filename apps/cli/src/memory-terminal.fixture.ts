import type { ByteStream } from '@sedgeline/engine/sound';
import { CliFailure, EXIT } from './cli-failure.ts';
import { runProgram } from './program.ts';
import type { Terminal } from './terminal.ts';

/** A terminal in memory: files by name, what was printed. */
class MemoryTerminal implements Terminal {
  readonly files = new Map<string, string>();
  readonly bytes = new Map<string, Uint8Array>();
  stdout = '';
  stderr = '';

  readFile(path: string): string {
    const text = this.files.get(path);
    if (text !== undefined) return text;
    throw new CliFailure({
      code: 'FILE_UNREADABLE',
      message: 'cannot read it',
      exit: EXIT.world,
      file: path,
    });
  }

  async readBytes<T>(path: string, use: (stream: ByteStream) => T | Promise<T>): Promise<T> {
    const bytes = this.bytes.get(path) ?? new TextEncoder().encode(this.readFile(path));
    let at = 0;
    return use({
      take: (count) => {
        const part = bytes.subarray(at, at + count);
        at += part.length;
        return part;
      },
    });
  }

  writeNewFile(path: string, text: string): void {
    this.files.set(path, text);
  }

  out(text: string): void {
    this.stdout += text;
  }

  err(text: string): void {
    this.stderr += text;
  }
}

/** Runs the program on a journal named `j` with these lines, and on files of bytes; under `--json` its answer is read. */
export async function runInMemory(
  args: readonly string[],
  lines: readonly string[],
  bytes: Readonly<Record<string, Uint8Array>> = {},
) {
  const terminal = new MemoryTerminal();
  terminal.files.set('j', lines.join('\n'));
  for (const [name, content] of Object.entries(bytes)) terminal.bytes.set(name, content);
  const exit = await runProgram(args, terminal);
  const { stdout, stderr } = terminal;
  return { exit, stdout, stderr, terminal, answer: args.includes('--json') ? JSON.parse(stdout) : null };
}

import type { ByteStream } from '@sedgeline/engine/sound';

/** The world of a command: where it reads and writes. Handed in, so that commands can be run by a test. */
export interface Terminal {
  readFile(path: string): string;
  /** Hands a file's bytes to `use`, to be read once from first to last and never held whole. */
  readBytes<T>(path: string, use: (stream: ByteStream) => T | Promise<T>): Promise<T>;
  /** Fails when the file is there. */
  writeNewFile(path: string, text: string): void;
  out(text: string): void;
  err(text: string): void;
}

/** The world of a command: where it reads and writes. Handed in, so that commands can be run by a test. */
export interface Terminal {
  readFile(path: string): string;
  /** Fails when the file is there. */
  writeNewFile(path: string, text: string): void;
  out(text: string): void;
  err(text: string): void;
}

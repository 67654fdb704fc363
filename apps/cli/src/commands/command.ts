import type { Command } from 'commander';
import type { EXIT } from '../cli-failure.ts';
import type { JournalOptions } from '../open-journal.ts';
import type { Terminal } from '../terminal.ts';

/** What every command hands back: its exit status. */
export type Exit = (typeof EXIT)[keyof typeof EXIT];

/** Adds one command to the program. `finish` takes the exit status. */
export type AddCommand = (program: Command, terminal: Terminal, finish: (exit: Exit) => void) => void;

/** Options that the commands which read a journal share. */
export interface AnswerOptions extends JournalOptions {
  readonly json?: boolean | undefined;
}

/** One JSON document, or the text for people. */
export function print(
  terminal: Terminal,
  options: AnswerOptions,
  answer: object,
  people: () => string,
): void {
  terminal.out(options.json === true ? `${JSON.stringify(answer)}\n` : people());
}

/** Declares `--json`, `--keep-going` and, where an answer is for a moment, `--at`. */
export function answering(command: Command, hasMoment: boolean): Command {
  command
    .option('--json', 'print one JSON document')
    .option('--keep-going', 'answer from the good lines where some are bad');
  return hasMoment
    ? command.option('--at <time>', "the moment the answer is for (the journal's last fact)")
    : command;
}

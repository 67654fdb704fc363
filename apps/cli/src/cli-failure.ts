/** Exit statuses of the contract. */
export const EXIT = { done: 0, usage: 2, badInput: 3, world: 5 } as const;

/** Stable codes of the command line's own failures; lines of a journal bring the journal's codes. */
export type CliCode =
  | 'USAGE'
  | 'FILE_UNREADABLE'
  | 'FILE_UNWRITABLE'
  | 'FILE_EXISTS'
  | 'BAD_LINES'
  | 'ASK_NOT_GOOD'
  | 'REQUEST_NOT_GOOD'
  | 'LAYOUT_NOT_GOOD'
  | 'THING_AT_HANDLER'
  | 'UNKNOWN_LAYOUT'
  | 'UNKNOWN_DOG'
  | 'UNKNOWN_SESSION'
  | 'UNKNOWN_GROUND'
  | 'UNKNOWN_REP'
  | 'UNKNOWN_GOAL'
  | 'NOTHING_THERE';

/** Everything that one line of error tells. */
export interface FailureParts {
  /** A code of ours, or the journal's where a line is at fault. */
  readonly code: CliCode | (string & {});
  readonly message: string;
  readonly exit: (typeof EXIT)[keyof typeof EXIT];
  readonly file?: string | undefined;
  readonly line?: number | undefined;
  readonly field?: string | undefined;
}

/** A failure that a user is to be told of in one line, without a stack trace. */
export class CliFailure extends Error {
  readonly parts: FailureParts;

  constructor(parts: FailureParts) {
    super(parts.message);
    this.name = 'CliFailure';
    this.parts = parts;
  }
}

/** `error[CODE] FILE:LINE: what is wrong; what to do`. */
export function failureLine({ code, message, file, line }: FailureParts): string {
  const place = file === undefined ? '' : ` ${file}${line === undefined ? '' : `:${line}`}`;
  return `error[${code}]${place}: ${message.replaceAll(/\s*\n\s*/g, ' ')}`;
}

/** The same under `--json`. Fields that have no value are null. */
export function failureDocument({ code, message, file, line, field }: FailureParts): object {
  return { error: { code, message, file: file ?? null, line: line ?? null, field: field || null } };
}

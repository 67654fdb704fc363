/** Stable codes of what can go wrong before the server answers, each with its exit status (2 usage, 5 the world). */
export const FAILURE_EXITS = {
  USAGE: 2,
  WEB_NOT_BUILT: 5,
  PORT_TAKEN: 5,
  PORT_FORBIDDEN: 5,
  LISTEN_FAILED: 5,
} as const;
export type FailureCode = keyof typeof FAILURE_EXITS;

/** What went wrong, in a form that prints as one line. */
export interface ServerFailure {
  readonly code: FailureCode;
  /** What is wrong; what to do. */
  readonly message: string;
}

export type ServerResult<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly failure: ServerFailure };

/** A failed result. */
export const failed = (
  code: FailureCode,
  message: string,
): { readonly ok: false; readonly failure: ServerFailure } => ({
  ok: false,
  failure: { code, message },
});

/** `error[CODE]: what is wrong; what to do`, in one line. */
export const failureLine = ({ code, message }: ServerFailure): string =>
  `error[${code}]: ${message.replaceAll(/\s*\n\s*/g, ' ')}`;

/** What the operating system's refusal to listen means to a person. */
export function listenFailure(error: unknown, host: string, port: number): ServerFailure {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  const where = `${host}:${port}`;
  if (code === 'EADDRINUSE') {
    return { code: 'PORT_TAKEN', message: `${where} is in use; stop what uses it or give another --port` };
  }
  if (code === 'EACCES') {
    return {
      code: 'PORT_FORBIDDEN',
      message: `${where} needs rights you don't have; give a --port above 1023`,
    };
  }
  const said = error instanceof Error ? error.message : String(error);
  return { code: 'LISTEN_FAILED', message: `cannot listen on ${where} (${said}); check --host and --port` };
}

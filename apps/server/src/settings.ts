import { parseArgs } from 'node:util';
import { failed, type ServerResult } from './server-failure.ts';

/** What the server is told when it starts. */
export interface Settings {
  readonly host: string;
  /** 0 lets the system choose. */
  readonly port: number;
  /** Ends when standard input does: whoever started the server is gone, however it went. */
  readonly endsWithInput: boolean;
  /** Folder of the built web app. */
  readonly webFolder: string;
}

export const DEFAULT_HOST = '127.0.0.1';
export const DEFAULT_PORT = 4180;

const OPTIONS = {
  host: { type: 'string' },
  port: { type: 'string' },
  web: { type: 'string' },
  'ends-with-input': { type: 'boolean' },
} as const;

function parsed(args: readonly string[]) {
  try {
    return parseArgs({ args: [...args], options: OPTIONS, strict: true, allowPositionals: false }).values;
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

/**
 * Reads `--port N`, `--host H`, `--web FOLDER` and `--ends-with-input`. Left out: 4180, 127.0.0.1 (this machine alone), the
 * folder given, and serving until a signal.
 * An option it does not know, or a port that is none, is the usage failure.
 */
export function readSettings(args: readonly string[], builtWebFolder: string): ServerResult<Settings> {
  const values = parsed(args);
  if (typeof values === 'string')
    return failed('USAGE', `${values}; the options are --port, --host, --web and --ends-with-input`);
  const portText = values.port ?? String(DEFAULT_PORT);
  const port = Number(portText);
  if (!/^\d{1,5}$/.test(portText) || port > 65_535) {
    return failed('USAGE', `--port is "${portText}"; give a whole number from 0 to 65535`);
  }
  const host = values.host ?? DEFAULT_HOST;
  if (host === '') return failed('USAGE', '--host is empty; give an address such as 127.0.0.1');
  const endsWithInput = values['ends-with-input'] ?? false;
  return { ok: true, value: { host, port, endsWithInput, webFolder: values.web ?? builtWebFolder } };
}

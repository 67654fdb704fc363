import { existsSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { createApp } from './create-app.ts';
import { FAILURE_EXITS, failureLine, listenFailure, type ServerFailure } from './server-failure.ts';
import { readSettings } from './settings.ts';

/** The built web app lies beside the server, seen from `src/` as from `dist/`. */
const builtWebFolder = (): string =>
  resolve(dirname(fileURLToPath(import.meta.url)), '..', '..', 'web', 'dist');

/** What the running server needs of its process. */
export type ServerProcess = Pick<NodeJS.Process, 'stdin' | 'stdout' | 'stderr' | 'once'>;

/** The address to open: a server on every interface is reached by the machine's own name. */
export function addressOf({ address, port, family }: AddressInfo): string {
  if (address === '0.0.0.0' || address === '::') return `http://localhost:${port}/`;
  return family === 'IPv6' ? `http://[${address}]:${port}/` : `http://${address}:${port}/`;
}

const toldToEnd = (from: ServerProcess, endsWithInput: boolean): Promise<void> =>
  new Promise((done) => {
    from.once('SIGINT', () => done());
    from.once('SIGTERM', () => done());
    if (endsWithInput) from.stdin.resume().once('close', () => done());
  });

/**
 * Starts the server, prints the one line with its address when it answers, and serves until SIGINT or SIGTERM (or the end of its
 * input, where told so); requests
 * under way are answered first (a second signal ends it at once). Resolves with the exit status: 0, 2 for wrong usage,
 * 5 where the world said no, that with one line `error[CODE]: what is wrong; what to do` on standard error.
 */
export async function runServer(args: readonly string[], from: ServerProcess): Promise<number> {
  const refuse = (failure: ServerFailure): number => {
    from.stderr.write(`${failureLine(failure)}\n`);
    return FAILURE_EXITS[failure.code];
  };
  const settings = readSettings(args, builtWebFolder());
  if (!settings.ok) return refuse(settings.failure);
  const { host, port, webFolder, endsWithInput } = settings.value;
  const folder = resolve(webFolder);
  if (!existsSync(join(folder, 'index.html'))) {
    const message = `the web app is not built (no index.html in ${folder}); run npm run build`;
    return refuse({ code: 'WEB_NOT_BUILT', message });
  }
  const app = await createApp({ webFolder: folder, log: from.stderr });
  try {
    await app.listen({ host, port });
  } catch (error) {
    await app.close();
    return refuse(listenFailure(error, host, port));
  }
  const address = app.addresses().find((one) => typeof one === 'object');
  if (address === undefined) throw new Error('listening, but on no address');
  const ended = toldToEnd(from, endsWithInput);
  from.stdout.write(`Sedgeline is at ${addressOf(address)}\n`);
  await ended;
  if (endsWithInput) from.stdin.destroy();
  await app.close();
  return 0;
}

import { pathToFileURL } from 'node:url';
import { build } from './build.mjs';
import { firstFreePort } from './free-port.mjs';
import { install } from './install.mjs';
import { inRoot, runAsMain, ToolFailure } from './repository.mjs';

const DEFAULT_PORT = 4180;

/** The port that was asked for: `--port N` or `--port=N`, else `PORT`, else 4180. */
export function wantedPort(args, env) {
  const at = args.findIndex((arg) => arg === '--port' || arg.startsWith('--port='));
  const fromArgs =
    at < 0 ? undefined : ((args[at].includes('=') ? args[at].split('=')[1] : args[at + 1]) ?? '');
  const text = fromArgs ?? (env.PORT || String(DEFAULT_PORT));
  const port = Number(text);
  if (!/^\d+$/.test(text) || port < 1 || port > 65_535) {
    throw new ToolFailure('BAD_PORT', `the port is "${text}"; give a whole number from 1 to 65535`);
  }
  return port;
}

/**
 * Installs, builds and serves in this very process, so that ending it ends all. The server prints the one line with
 * the address; everything else goes to standard error.
 */
async function start(args) {
  const wanted = wantedPort(args, process.env);
  await install();
  await build();
  const port = await firstFreePort(wanted);
  if (port === null)
    throw new ToolFailure('NO_FREE_PORT', `no port free from ${wanted} on; give one with --port`);
  if (port !== wanted) process.stderr.write(`Port ${wanted} is taken; using ${port}.\n`);
  const server = inRoot('apps', 'server', 'dist', 'server.mjs');
  process.argv = [process.argv[0], server, '--port', String(port)];
  await import(pathToFileURL(server).href);
}

await runAsMain(import.meta.url, start);

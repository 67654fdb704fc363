import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

/** The kit's page on 127.0.0.1: a secure place in a browser's eyes, so that its database behaves as in the app. */
export interface KitServer {
  readonly url: string;
  close(): Promise<void>;
}

/** Bundles the page and serves it on a free port. */
export async function startKitServer(): Promise<KitServer> {
  const bundle = await build({
    entryPoints: [fileURLToPath(new URL('./kit-page.ts', import.meta.url))],
    bundle: true,
    write: false,
    format: 'iife',
    target: 'es2023',
    logLevel: 'error',
  });
  const script = bundle.outputFiles[0]!.text;
  const server = createServer((request, response) => {
    const isScript = request.url === '/kit-page.js';
    response.setHeader(
      'content-type',
      isScript ? 'text/javascript; charset=utf-8' : 'text/html; charset=utf-8',
    );
    response.end(isScript ? script : '<!doctype html><title>Kit</title><script src="/kit-page.js"></script>');
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    close: () =>
      new Promise<void>((resolve, reject) => {
        server.close((error) => (error === undefined ? resolve() : reject(error)));
        server.closeAllConnections();
      }),
  };
}

import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

/** The kit's page on 127.0.0.1: a secure place in a browser's eyes, so that its database behaves as in the app. */
export interface KitServer {
  readonly url: string;
  close(): Promise<void>;
}

/** Bundles the page and its worker and serves them on a free port. */
export async function startKitServer(): Promise<KitServer> {
  const scripts = new Map([
    ['/kit-page.js', await bundled('./kit-page.ts')],
    ['/opfs-kit-worker.js', await bundled('./opfs-kit-worker.ts')],
  ]);
  const server = createServer((request, response) => {
    const script = scripts.get(request.url ?? '');
    const type = script === undefined ? 'text/html' : 'text/javascript';
    response.setHeader('content-type', `${type}; charset=utf-8`);
    response.end(script ?? '<!doctype html><title>Kit</title><script src="/kit-page.js"></script>');
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

async function bundled(entry: string): Promise<string> {
  const bundle = await build({
    entryPoints: [fileURLToPath(new URL(entry, import.meta.url))],
    bundle: true,
    write: false,
    format: 'iife',
    target: 'es2023',
    logLevel: 'error',
  });
  return bundle.outputFiles[0]!.text;
}

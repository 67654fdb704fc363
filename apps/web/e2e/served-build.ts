import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const BUILT = fileURLToPath(new URL('../dist', import.meta.url));
const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.webmanifest': 'application/manifest+json',
};

/** The built app served as it is, and from `release` on as another build of itself. */
export interface ServedBuild {
  readonly url: string;
  /** From now on another build is served: its page says so in `data-build`, its service worker differs. */
  release(name: string): void;
  close(): Promise<void>;
}

export async function serveBuild(first: string): Promise<ServedBuild> {
  let build = first;
  const page = () =>
    readFileSync(join(BUILT, 'index.html'), 'utf8').replace('<html ', `<html data-build="${build}" `);
  /** The page's own revision is in the list of what the service worker holds: a new build is a new list. */
  const serviceWorker = () =>
    readFileSync(join(BUILT, 'sw.js'), 'utf8').replace(/(index\.html",revision:")[^"]+/, `$1${build}`);
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost');
    const type = TYPES[extname(pathname)];
    response.setHeader('cache-control', 'no-cache');
    response.setHeader('content-type', type ?? TYPES['.html']!);
    if (type === undefined || pathname === '/index.html') response.end(page());
    else if (pathname === '/sw.js') response.end(serviceWorker());
    else response.end(readFileSync(join(BUILT, pathname)));
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    release: (name) => {
      build = name;
    },
    close: () =>
      new Promise<void>((resolve, reject) => {
        server.close((error) => (error === undefined ? resolve() : reject(error)));
        server.closeAllConnections();
      }),
  };
}

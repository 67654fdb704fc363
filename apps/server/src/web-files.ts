import fastifyStatic from '@fastify/static';
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';

/** A year, the longest that is honoured; the file's name changes with its content. */
const FOR_EVER = 'public, max-age=31536000, immutable';
/** Kept, but asked for again each time (304 when unchanged): what must never be stale. */
const ASK_AGAIN = 'no-cache';

/** How long a file of the web app may be kept: files under `assets/` carry their hash in their name, the rest do not. */
export const cacheControlOf = (pathInApp: string): string =>
  pathInApp.startsWith('/assets/') ? FOR_EVER : ASK_AGAIN;

const pathOf = (request: FastifyRequest): string => request.url.split('?', 1)[0] ?? '/';
const isOf = (path: string, folder: string): boolean => path === folder || path.startsWith(`${folder}/`);

/** Whether an address that is no file is a screen of the app: asked for as a page, and neither data nor a built file. */
export function isScreen(method: string, path: string, accept: string): boolean {
  if (method !== 'GET' && method !== 'HEAD') return false;
  if (isOf(path, '/api') || isOf(path, '/assets')) return false;
  return accept.includes('text/html');
}

/**
 * Serves the built web app from a folder (absolute, without a slash at its end); an address that is a screen answers with the app's page, any other that is not
 * there with 404 and `{"error":{"code","message"}}`. Files and folders that begin with a dot are not served.
 */
export async function serveWebFiles(app: FastifyInstance, webFolder: string): Promise<void> {
  await app.register(fastifyStatic, {
    root: webFolder,
    dotfiles: 'ignore',
    cacheControl: false,
    setHeaders: (reply, path) => {
      reply.setHeader('cache-control', cacheControlOf(path.slice(webFolder.length).replaceAll('\\', '/')));
    },
  });
  app.setNotFoundHandler((request: FastifyRequest, reply: FastifyReply) => {
    const path = pathOf(request);
    if (isScreen(request.method, path, request.headers.accept ?? '')) return reply.sendFile('index.html');
    return reply
      .code(404)
      .header('cache-control', 'no-store')
      .send({ error: { code: 'NOT_FOUND', message: `nothing is at ${path}` } });
  });
}

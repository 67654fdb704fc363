import { constants } from 'node:zlib';
import fastifyCompress from '@fastify/compress';
import fastifyHelmet from '@fastify/helmet';
import Fastify, { type FastifyInstance } from 'fastify';
import { securityHeaders } from './content-policy.ts';
import { serveWebFiles } from './web-files.ts';

/** What the app is made of. */
export interface AppParts {
  /** Folder of the built web app, absolute. */
  readonly webFolder: string;
  /** Where warnings and errors go, one JSON line each; left out, nowhere. */
  readonly log?: { write(line: string): void };
}

/** Brotli at 5: within a few per cent of the smallest and some twenty times faster than 11 (common practice). */
const BROTLI_QUALITY = 5;

/**
 * The whole HTTP server, not listening yet: `/healthz`, the web app, security headers, compression. An error of ours
 * answers `{"error":{"code","message"}}` without telling what went wrong inside; the log has that.
 */
export async function createApp({ webFolder, log }: AppParts): Promise<FastifyInstance> {
  const logger = log === undefined ? false : { level: 'warn', stream: log };
  const app = Fastify({ logger });
  app.setErrorHandler((error, request, reply) => {
    const status = error instanceof Error && 'statusCode' in error ? Number(error.statusCode) : 500;
    const mine = !(status >= 400 && status < 500);
    if (mine) request.log.error(error);
    const said = mine || !(error instanceof Error) ? 'the server failed; try again' : error.message;
    return reply
      .code(mine ? 500 : status)
      .header('cache-control', 'no-store')
      .send({ error: { code: mine ? 'SERVER_FAILED' : 'BAD_REQUEST', message: said } });
  });
  await app.register(fastifyHelmet, securityHeaders);
  await app.register(fastifyCompress, {
    encodings: ['br', 'gzip'],
    brotliOptions: { params: { [constants.BROTLI_PARAM_QUALITY]: BROTLI_QUALITY } },
  });
  app.get('/healthz', (_request, reply) => reply.header('cache-control', 'no-store').send({ ok: true }));
  await serveWebFiles(app, webFolder);
  return app;
}

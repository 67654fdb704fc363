import { rmSync } from 'node:fs';
import { brotliDecompressSync } from 'node:zlib';
import type { FastifyInstance } from 'fastify';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { createApp } from './create-app.ts';
import { sampleWebFolder } from './sample-web.ts';

const webFolder = sampleWebFolder();
const page = { accept: 'text/html,application/xhtml+xml' };
let app: FastifyInstance;

beforeAll(async () => {
  app = await createApp({ webFolder });
  app.get('/api/breaks', () => {
    throw new Error('the inner secret');
  });
});
afterAll(async () => {
  await app.close();
  rmSync(webFolder, { recursive: true });
});

describe('what may be kept, and for how long', () => {
  // RFC 9111: no-cache = ask again before use; RFC 8246: immutable = never ask again while fresh.
  test.each([
    ['/', 'no-cache'],
    ['/index.html', 'no-cache'],
    ['/sw.js', 'no-cache'],
    ['/assets/index-a1b2c3.js', 'public, max-age=31536000, immutable'],
    ['/healthz', 'no-store'],
  ])('%s: %s', async (url, wanted) => {
    const answer = await app.inject({ url });
    expect(answer.statusCode).toBe(200);
    expect(answer.headers['cache-control']).toBe(wanted);
  });

  test('a page that did not change is not sent again', async () => {
    const first = await app.inject({ url: '/' });
    const again = await app.inject({ url: '/', headers: { 'if-none-match': String(first.headers.etag) } });
    expect(again.statusCode).toBe(304);
    expect(again.body).toBe('');
  });
});

describe('addresses', () => {
  test.each(['/dogs', '/dogs/bracken/standing', '/apiary'])('%s is a screen of the app', async (url) => {
    const answer = await app.inject({ url, headers: page });
    expect(answer.statusCode).toBe(200);
    expect(answer.body).toContain('sample page');
    expect(answer.headers['cache-control']).toBe('no-cache');
  });

  test.each([
    ['/api/nothing', page],
    ['/api', page],
    ['/assets/gone-000.js', page],
    ['/dogs', { accept: 'application/json' }],
    ['/.vite/manifest.json', { accept: '*/*' }],
    ['/..%2f..%2fetc%2fpasswd', { accept: '*/*' }],
  ])('%s is not there', async (url, headers) => {
    const answer = await app.inject({ url, headers });
    expect(answer.statusCode).toBe(404);
    expect(answer.json()).toEqual({
      error: { code: 'NOT_FOUND', message: expect.stringContaining('nothing is at') },
    });
  });

  test('nothing can be sent to a screen', async () => {
    const answer = await app.inject({ method: 'POST', url: '/dogs', headers: page, payload: {} });
    expect(answer.statusCode).toBe(404);
  });
});

describe('headers', () => {
  test('the content policy lets workers and local films through, and no foreign or inline script', async () => {
    const policy = String((await app.inject({ url: '/' })).headers['content-security-policy']);
    const directives = new Map(
      policy.split(';').map((part) => {
        const [name = '', ...values] = part.trim().split(' ');
        return [name, values.join(' ')] as const;
      }),
    );
    expect(directives.get('default-src')).toBe("'self'");
    expect(directives.get('script-src')).toBe("'self'");
    expect(directives.get('object-src')).toBe("'none'");
    expect(directives.get('worker-src')).toBe("'self'");
    expect(directives.get('media-src')).toBe("'self' blob:");
    expect(directives.has('upgrade-insecure-requests')).toBe(false);
    expect(policy).not.toMatch(/https:|unsafe-eval/);
  });

  test('sniffing, framing by others and referrers are closed', async () => {
    const { headers } = await app.inject({ url: '/' });
    expect(headers['x-content-type-options']).toBe('nosniff');
    expect(headers['x-frame-options']).toBe('SAMEORIGIN');
    expect(headers['referrer-policy']).toBe('no-referrer');
    expect(headers['strict-transport-security']).toBeUndefined();
  });

  test('a script is sent compressed to whoever takes it, and comes out whole', async () => {
    const url = '/assets/index-a1b2c3.js';
    const plain = await app.inject({ url });
    const packed = await app.inject({ url, headers: { 'accept-encoding': 'br' } });
    expect(packed.headers['content-encoding']).toBe('br');
    expect(packed.rawPayload.length).toBeLessThan(plain.rawPayload.length / 10);
    expect(brotliDecompressSync(packed.rawPayload).toString()).toBe(plain.body);
  });
});

test('an error inside does not tell what went wrong there', async () => {
  const answer = await app.inject({ url: '/api/breaks' });
  expect(answer.statusCode).toBe(500);
  expect(answer.json().error.code).toBe('SERVER_FAILED');
  expect(answer.body).not.toContain('secret');
});

test('an error inside is in the log', async () => {
  const lines: string[] = [];
  const logged = await createApp({ webFolder, log: { write: (line) => lines.push(line) } });
  logged.get('/api/breaks', () => {
    throw new Error('the inner secret');
  });
  await logged.inject({ url: '/api/breaks' });
  await logged.close();
  expect(lines.join('')).toContain('the inner secret');
});

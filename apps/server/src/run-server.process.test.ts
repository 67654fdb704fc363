import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { fileURLToPath } from 'node:url';
import { afterAll, afterEach, expect, test } from 'vitest';
import { sampleWebFolder } from './sample-web.ts';

const main = fileURLToPath(new URL('main.ts', import.meta.url));
const webFolder = sampleWebFolder();
const running = new Set<ChildProcess>();

afterEach(() => {
  for (const child of running) child.kill('SIGKILL');
  running.clear();
});
afterAll(() => rmSync(webFolder, { recursive: true }));

function startServer(...args: string[]) {
  const child = spawn(process.execPath, ['--import', 'tsx', main, ...args], {
    stdio: ['pipe', 'pipe', 'pipe'],
  });
  running.add(child);
  const said = { out: '', err: '' };
  child.stdout.on('data', (chunk) => {
    said.out += chunk;
  });
  child.stderr.on('data', (chunk) => {
    said.err += chunk;
  });
  const exit = once(child, 'close').then(([code]) => code);
  const address = async () => {
    while (!said.out.includes('\n')) {
      await Promise.race([once(child.stdout, 'data'), exit]);
      if (child.exitCode !== null) throw new Error(`ended early: ${said.err}`);
    }
    return said.out.trim().split(' ').at(-1) ?? '';
  };
  return { child, said, exit, address };
}

test.each(['SIGINT', 'SIGTERM'] as const)(
  'prints one line, serves, and ends with 0 on %s',
  async (signal) => {
    const server = startServer('--port', '0', '--web', webFolder);
    const address = await server.address();
    expect(address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/);
    const health = await fetch(`${address}healthz`);
    expect(await health.json()).toEqual({ ok: true });
    expect(await (await fetch(address)).text()).toContain('sample page');
    server.child.kill(signal);
    expect(await server.exit).toBe(0);
    expect(server.said.out.trim().split('\n')).toHaveLength(1);
    expect(server.said.err).toBe('');
  },
);

test('ends with 0 when its input does, where told so: whoever started it is gone', async () => {
  const server = startServer('--port', '0', '--web', webFolder, '--ends-with-input');
  await server.address();
  server.child.stdin.end();
  expect(await server.exit).toBe(0);
});

test('ends with 0 on a signal though its input is still open', async () => {
  const server = startServer('--port', '0', '--web', webFolder, '--ends-with-input');
  await server.address();
  server.child.kill('SIGTERM');
  expect(await server.exit).toBe(0);
});

test('a taken port is one clear line and exit 5', async () => {
  const holder = createServer().listen(0, '127.0.0.1');
  await once(holder, 'listening');
  const at = holder.address();
  const port = typeof at === 'object' && at !== null ? at.port : 0;
  const server = startServer('--port', String(port), '--web', webFolder);
  expect(await server.exit).toBe(5);
  expect(server.said.err).toBe(
    `error[PORT_TAKEN]: 127.0.0.1:${port} is in use; stop what uses it or give another --port\n`,
  );
  expect(server.said.out).toBe('');
  holder.close();
});

test('a web app that is not built is one clear line and exit 5', async () => {
  const server = startServer('--port', '0', '--web', `${webFolder}/assets`);
  expect(await server.exit).toBe(5);
  expect(server.said.err).toMatch(/^error\[WEB_NOT_BUILT\]: .*; run npm run build\n$/);
});

test('wrong usage is exit 2', async () => {
  const server = startServer('--prot', '1');
  expect(await server.exit).toBe(2);
  expect(server.said.err).toMatch(/^error\[USAGE\]: [^\n]*\n$/);
});

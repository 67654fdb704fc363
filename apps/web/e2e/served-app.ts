import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { test as base } from '@playwright/test';

const builtServer = fileURLToPath(new URL('../../server/dist/server.mjs', import.meta.url));

/** The built server as a process of its own on a free port: what a person runs, and what a test may take away. */
export class ServedApp {
  #child: ChildProcess | undefined;
  #url = '';

  /** The address, the same after every start, so that a page of before finds it again. */
  get url(): string {
    return this.#url;
  }

  get running(): boolean {
    return this.#child !== undefined;
  }

  /** Starts the server unless it runs; resolves when it answers. */
  async start(): Promise<void> {
    if (this.running) return;
    if (!existsSync(builtServer)) throw new Error(`${builtServer} is not built; run npm run build`);
    const port = this.#url === '' ? '0' : new URL(this.#url).port;
    const child = spawn(process.execPath, [builtServer, '--port', port], {
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let said = '';
    let complained = '';
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      complained += text;
    });
    const ready = new Promise<void>((resolve, reject) => {
      child.stdout.setEncoding('utf8').on('data', (text: string) => {
        said += text;
        if (said.includes('\n')) resolve();
      });
      child.once('close', (code) => reject(new Error(`the server ended with ${code}: ${complained}`)));
    });
    await ready;
    this.#child = child;
    this.#url = said.trim().split(' ').at(-1) ?? '';
  }

  /** Asks the server to end, as Ctrl-C does; resolves when it has. */
  stop(): Promise<void> {
    return this.#end('SIGTERM');
  }

  /** Takes the server away at once, as a power cut does. */
  kill(): Promise<void> {
    return this.#end('SIGKILL');
  }

  async #end(signal: 'SIGTERM' | 'SIGKILL'): Promise<void> {
    const child = this.#child;
    if (child === undefined) return;
    this.#child = undefined;
    const closed = once(child, 'close');
    child.kill(signal);
    await closed;
  }
}

/**
 * Playwright's `test` with the app served: `page.goto('/')` opens it. A test may stop or kill `servedApp`; it runs again,
 * at the same address, before the next test. With the server gone also call `context.setOffline(true)`: a browser
 * knows by the one that the network is off, by the other that nobody answers.
 */
export const test = base.extend<{ baseURL: string }, { servedApp: ServedApp }>({
  servedApp: [
    // Playwright reads the fixture's needs from this very pattern.
    // biome-ignore lint/correctness/noEmptyPattern: a fixture that needs no other must destructure nothing
    async ({}, use) => {
      const app = new ServedApp();
      await app.start();
      await use(app);
      await app.stop();
    },
    { scope: 'worker' },
  ],
  baseURL: async ({ servedApp }, use) => {
    await servedApp.start();
    await use(servedApp.url);
  },
});

export { expect } from '@playwright/test';

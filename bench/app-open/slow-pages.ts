import { Worker } from 'node:worker_threads';
import type { Browser } from '@playwright/test';

/** One turn of stopping and going, in milliseconds: short beside what a person notices. */
const TURN_MS = 8;
const MOST_PROCESSES = 64;
const LOOK_EVERY_MS = 10;

/** In a thread of its own, so that nothing that the bench does delays it: holds every process still for most of each turn. */
const STOP_AND_GO = `
const { workerData } = require('node:worker_threads');
const pids = new Int32Array(workerData.pids);
const still = new Int32Array(new SharedArrayBuffer(4));
const signal = (name) => {
  for (const pid of pids) {
    // A page that was closed since its process was last looked for is not there to be signalled.
    try { if (pid > 0) process.kill(pid, name); } catch (error) { if (error.code !== 'ESRCH') throw error; }
  }
};
while (Atomics.load(pids, 0) !== -1) {
  signal('SIGSTOP');
  Atomics.wait(still, 0, 0, workerData.turnMs * (1 - 1 / workerData.times));
  signal('SIGCONT');
  Atomics.wait(still, 0, 0, workerData.turnMs / workerData.times);
}
`;

/**
 * Lets every page of a browser, its workers included, run one part in `times` of the time: the browser's own slowing
 * reaches the page's main thread alone, and the record is read in a worker. Works where processes take SIGSTOP. The answer ends it.
 */
export async function slowPages(browser: Browser, times: number): Promise<() => Promise<void>> {
  const session = await browser.newBrowserCDPSession();
  const pids = new Int32Array(new SharedArrayBuffer(4 * MOST_PROCESSES));
  let isOver = false;
  const looking = (async () => {
    while (!isOver) {
      const { processInfo } = await session.send('SystemInfo.getProcessInfo');
      const pages = processInfo.filter(({ type }) => type === 'renderer').slice(0, MOST_PROCESSES - 1);
      pages.forEach(({ id }, n) => {
        pids[n + 1] = id;
      });
      pids.fill(0, pages.length + 1);
      await new Promise((resolve) => setTimeout(resolve, LOOK_EVERY_MS));
    }
  })();
  const workerData = { pids: pids.buffer, times, turnMs: TURN_MS };
  const thread = new Worker(STOP_AND_GO, { eval: true, workerData });
  const ended = new Promise((resolve) => thread.once('exit', resolve));
  return async () => {
    isOver = true;
    await looking;
    Atomics.store(pids, 0, -1);
    await ended;
    await session.detach();
  };
}

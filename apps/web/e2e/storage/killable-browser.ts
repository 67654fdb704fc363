import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { type Browser, chromium, type Page } from '@playwright/test';

const FLAGS = [
  '--headless=new',
  '--remote-debugging-port=0',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** A browser as a process group of its own, which can be killed in mid-write as a flat battery would. */
export interface KillableBrowser {
  newPage(): Promise<Page>;
  /** SIGKILL to the browser and all its processes; resolves when it is gone. */
  kill(): Promise<void>;
}

/** Starts the browser of the tests on a profile folder that outlives it. */
export async function startKillableBrowser(profileFolder: string): Promise<KillableBrowser> {
  const path = process.env.SEDGELINE_BROWSER ?? chromium.executablePath();
  const child = spawn(path, [...FLAGS, `--user-data-dir=${profileFolder}`, 'about:blank'], {
    detached: true,
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  const kill = async (): Promise<void> => {
    const closed = once(child, 'exit');
    process.kill(-child.pid!, 'SIGKILL');
    await closed;
  };
  let browser: Browser;
  try {
    browser = await chromium.connectOverCDP(await debuggingAddress(child));
  } catch (error) {
    if (child.exitCode === null) await kill();
    throw error;
  }
  return {
    newPage: async () => {
      const [context] = browser.contexts();
      if (context === undefined) throw new Error('expected the browser to have its default context');
      return context.newPage();
    },
    kill,
  };
}

function debuggingAddress(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = '';
    child.stderr!.setEncoding('utf8').on('data', (text: string) => {
      said += text;
      const found = /DevTools listening on (ws:\S+)/.exec(said);
      if (found !== null) resolve(found[1]!);
    });
    child.once('error', reject);
    child.once('exit', (code) => reject(new Error(`the browser ended with ${code}: ${said}`)));
  });
}

import { deleteIdbStore, openIdbStore } from '../storage/idb-store.ts';
import { openOpfsStore } from '../storage/opfs-store.ts';
import type { KennelPush, RecordName } from './kennel-calls.ts';
import { createKennelHost, type TabNews } from './kennel-host.ts';
import { type Port, serveCalls } from './rpc.ts';

/** Seed of the invented kennel: the same for everybody, so that two people look at the same one. */
const DEMO_SEED = 1;
/** How long the worker waits for the next tap before it does what can wait, in milliseconds (our judgement, 2026). */
const IDLE_AFTER_MS = 60;

/** Where the second copy of the handler's own record is; the invented one needs none. */
const COPY_FOLDER = 'sedgeline-copy';

const databaseName = (record: RecordName): string => (record === 'mine' ? 'sedgeline' : 'sedgeline-demo');

const port = globalThis as unknown as Port;
const tabs = new BroadcastChannel('sedgeline');
let idle: ReturnType<typeof setTimeout> | undefined;

const host = createKennelHost({
  openStore: (record) => openIdbStore(databaseName(record)),
  openCopy: async (record) => {
    if (record === 'demo') return null;
    const result = await openOpfsStore(COPY_FOLDER);
    return result.ok ? result.value : null;
  },
  deleteStore: (record) => deleteIdbStore(databaseName(record)),
  firstFacts: async (record) => {
    if (record === 'mine') return [];
    const { demoKennel } = await import('@sedgeline/demo');
    return demoKennel(DEMO_SEED);
  },
  nowMs: () => Date.now(),
  newId: () => crypto.randomUUID(),
  push: (value) => push(value),
  tellTabs: (news) => tabs.postMessage(news),
  breathe: () => new Promise((resolve) => setTimeout(resolve, 0)),
  whenIdle: (job) => {
    clearTimeout(idle);
    idle = setTimeout(job, IDLE_AFTER_MS);
  },
});
tabs.addEventListener('message', ({ data }: MessageEvent<TabNews>) => host.hearTab(data));
const push = serveCalls<KennelPush>(port, host.calls);

import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, readdir, readFile, rm, truncate, writeFile } from 'node:fs/promises';
import { hostname, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { FactStore } from '@sedgeline/journal';
import { kitFact, type StorePlace, storeKitCases } from '@sedgeline/journal/store-kit';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { failingFileSystem } from './failing-file-system.fixture.ts';
import { fileFailure } from './file-failure.ts';
import { openFileStore } from './file-store.ts';
import { diskFileSystem } from './file-system.ts';

const newFolder = () => mkdtemp(join(tmpdir(), 'file-store-'));

async function filePlace(): Promise<StorePlace> {
  const folder = await newFolder();
  const path = join(folder, 'journal.jsonl');
  const files = failingFileSystem();
  const stores: FactStore[] = [];
  return {
    open: async () => {
      const store = openFileStore(path, files);
      stores.push(store);
      return store;
    },
    damage: async () => {
      const { length } = await readFile(path);
      await truncate(path, length - 30);
    },
    loseNotes: async () => {
      for (const name of await readdir(folder)) if (name.includes('.note-')) await rm(join(folder, name));
    },
    failWrite: async (n) => files.failChange(n),
    dispose: async () => {
      for (const store of stores) await store.close();
      await rm(folder, { recursive: true });
    },
  };
}

describe('file store keeps the storage port', () => {
  for (const { rule, name, run } of storeKitCases(filePlace)) it(`[${rule}] ${name}`, run);
});

describe('file store: the file', () => {
  let folder: string;
  let path: string;
  const text = async () => readFile(path, 'utf8');
  const line = (n: number) => `${JSON.stringify(kitFact(n))}\n`;
  const ids = async (store: FactStore) => {
    const result = await store.load();
    if (!result.ok) throw new Error(result.failure.message);
    return { ids: result.value.facts.map((fact) => fact.id), damage: result.value.damage };
  };
  beforeEach(async () => {
    folder = await newFolder();
    path = join(folder, 'journal.jsonl');
  });
  afterEach(async () => {
    await rm(folder, { recursive: true });
  });

  it('is JSON Lines, one fact a line, each with its end, and no lock stays behind', async () => {
    const store = openFileStore(path);
    await store.append([kitFact(1), kitFact(2)]);
    await store.append([kitFact(3)]);
    expect(await text()).toBe(line(1) + line(2) + line(3));
    expect(await readdir(folder)).toEqual(['journal.jsonl']);
  });

  it('torn at any byte: the whole lines load, the torn end is told, and set aside at the next append', async () => {
    const whole = line(1) + line(2);
    for (let size = line(1).length + 1; size < whole.length - 1; size += 7) {
      await writeFile(path, whole.slice(0, size));
      const store = openFileStore(path);
      const loaded = await ids(store);
      expect(loaded.ids).toEqual(['fact-000001']);
      expect(loaded.damage.map((one) => one.where)).toEqual(['line 2']);
      expect(await store.append([kitFact(3)])).toEqual({ ok: true, value: { added: 1 } });
      expect(await text()).toBe(line(1) + line(3));
      expect(await readFile(`${path}.torn`, 'utf8')).toBe(`${whole.slice(line(1).length, size)}\n`);
      await rm(`${path}.torn`);
    }
  });

  it('a last line that only wants its end is no damage, and nothing is glued to it', async () => {
    await writeFile(path, line(1).trimEnd());
    const store = openFileStore(path);
    expect(await ids(store)).toEqual({ ids: ['fact-000001'], damage: [] });
    await store.append([kitFact(2)]);
    expect(await text()).toBe(line(1) + line(2));
  });

  it('setting a torn end aside fails at any step: nothing whole is lost, nothing glued', async () => {
    const files = failingFileSystem();
    for (let n = 1; ; n += 1) {
      if (n > 100) throw new Error('expected an append to need fewer than 100 changes');
      await writeFile(path, line(1) + line(2).slice(0, 40));
      const end = files.failChange(n);
      const result = await openFileStore(path, files).append([kitFact(3)]);
      const itFailed = end();
      const there = (await ids(openFileStore(path))).ids;
      expect(there).toEqual(result.ok ? ['fact-000001', 'fact-000003'] : ['fact-000001']);
      expect((await openFileStore(path).append([kitFact(4)])).ok).toBe(true);
      expect((await ids(openFileStore(path))).ids).toEqual([...there, 'fact-000004']);
      if (!itFailed) break;
    }
  });

  it('[S2] the power cut at the n-th change, for n = 1 until none is cut: all or none, nothing acknowledged lost', async () => {
    const files = failingFileSystem();
    for (let n = 1; ; n += 1) {
      if (n > 100) throw new Error('expected an append to need fewer than 100 changes');
      await rm(path, { force: true });
      await openFileStore(path).append([kitFact(1)]);
      const end = files.cutPowerAt(n);
      const result = await openFileStore(path, files).append([kitFact(2), kitFact(3), kitFact(4)]);
      const isCut = end();
      // The process that held the lock is gone; here it is this one, so that its lock is taken away by hand.
      await rm(`${path}.lock`, { force: true });
      const all = ['fact-000001', 'fact-000002', 'fact-000003', 'fact-000004'];
      const { ids: there, damage } = await ids(openFileStore(path));
      expect([all.slice(0, 1), all]).toContainEqual(there);
      if (result.ok) expect(there).toEqual(all);
      expect(damage).toEqual([]);
      expect(await openFileStore(path).append([kitFact(5)])).toEqual({ ok: true, value: { added: 1 } });
      expect((await ids(openFileStore(path))).ids).toEqual([...there, 'fact-000005']);
      for (const name of await readdir(folder)) if (name !== 'journal.jsonl') await rm(join(folder, name));
      if (!isCut) break;
    }
  });

  it('lets a byte order mark, CRLF and blank lines pass, and knows those facts again', async () => {
    await writeFile(path, `\ufeff${line(1).trimEnd()}\r\n\r\n${line(2).trimEnd()}\r\n`);
    const store = openFileStore(path);
    expect(await store.append([kitFact(1), kitFact(2), kitFact(3)])).toEqual({
      ok: true,
      value: { added: 1 },
    });
    expect(await ids(store)).toEqual({ ids: ['fact-000001', 'fact-000002', 'fact-000003'], damage: [] });
  });

  it('tells of bytes that are not UTF-8 and keeps the facts', async () => {
    const bytes = Buffer.from(line(1) + line(2));
    bytes[bytes.indexOf('mark 2') + 1] = 0xff;
    await writeFile(path, bytes);
    const { ids: there, damage } = await ids(openFileStore(path));
    expect(there).toEqual(['fact-000001', 'fact-000002']);
    expect(damage.map((one) => one.where)).toEqual(['line 2']);
  });

  it('takes away the lock of a process that is gone, and waits for nobody', async () => {
    const gone = spawn(process.execPath, ['-e', '']);
    await once(gone, 'close');
    await writeFile(`${path}.lock`, JSON.stringify({ pid: gone.pid, host: hostname() }));
    expect((await openFileStore(path).append([kitFact(1)])).ok).toBe(true);
    expect(await readdir(folder)).toEqual(['journal.jsonl']);
  });

  it('refuses, naming the lock, while a living process of another machine may hold it', async () => {
    await writeFile(`${path}.lock`, JSON.stringify({ pid: 1, host: 'another-machine' }));
    const result = await openFileStore(path, diskFileSystem, 100).append([kitFact(1)]);
    expect(result.ok ? 'ok' : result.failure.code).toBe('STORE_REFUSED');
    expect(result.ok ? '' : result.failure.message).toContain(`${path}.lock`);
  });

  it('refuses where the folder is not there, in the words of the port', async () => {
    const result = await openFileStore(join(folder, 'missing', 'journal.jsonl')).append([kitFact(1)]);
    expect(result.ok ? 'ok' : result.failure.code).toBe('STORE_REFUSED');
  });

  // Names of errors: POSIX.1-2017, errno.h.
  it.each([
    ['ENOSPC', 'STORE_FULL'],
    ['EDQUOT', 'STORE_FULL'],
    ['EACCES', 'STORE_REFUSED'],
    ['EROFS', 'STORE_REFUSED'],
    ['EIO', 'STORE_BROKEN'],
  ])('takes %s for %s', (code, expected) => {
    expect(fileFailure(Object.assign(new Error(code), { code })).code).toBe(expected);
  });

  it('two processes append at once and are killed: every fact they acknowledged is there, no line is broken', async () => {
    const fixture = fileURLToPath(new URL('./append-for-ever.fixture.ts', import.meta.url));
    const writers = [0, 1].map((first) => {
      const child = spawn(process.execPath, ['--import', 'tsx', fixture, path, String(first), '2'], {
        stdio: ['ignore', 'pipe', 'pipe'],
      });
      let said = '';
      let complained = '';
      child.stdout.setEncoding('utf8').on('data', (chunk: string) => {
        said += chunk;
      });
      child.stderr.setEncoding('utf8').on('data', (chunk: string) => {
        complained += chunk;
      });
      // A line without its end was cut by the kill: it is not known to have been said.
      return { child, acknowledged: () => said.split('\n').slice(0, -1), complaint: () => complained };
    });
    await expect
      .poll(() => Math.min(...writers.map((writer) => writer.acknowledged().length)), { timeout: 30_000 })
      .toBeGreaterThan(40);
    const closed = writers.map(({ child }) => once(child, 'close'));
    for (const { child } of writers) child.kill('SIGKILL');
    await Promise.all(closed);
    expect(writers.map((writer) => writer.complaint())).toEqual(['', '']);

    const store = openFileStore(path);
    const { ids: there, damage } = await ids(store);
    expect(damage.length).toBeLessThanOrEqual(1);
    for (const writer of writers) {
      expect(writer.acknowledged().filter((id) => !there.includes(id))).toEqual([]);
    }
    expect((await store.append([kitFact(900_000)])).ok).toBe(true);
    expect((await ids(store)).damage).toEqual([]);
  });
});

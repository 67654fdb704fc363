import { expect, it } from 'vitest';
import { callThrough, type Port, serveCalls } from './rpc.ts';

type Listen = (event: { readonly data: unknown }) => void;

/** Two ends of one wire; what is sent is copied, and heard a moment later. */
function wire(): readonly [Port, Port] {
  const ears: [Listen[], Listen[]] = [[], []];
  const end = (own: 0 | 1): Port => ({
    postMessage: (message) => {
      const data: unknown = structuredClone(message);
      queueMicrotask(() => {
        for (const listen of ears[own === 0 ? 1 : 0]) listen({ data });
      });
    },
    addEventListener: (_type, listen) => ears[own].push(listen),
  });
  return [end(0), end(1)];
}

type Sums = { readonly double: (n: number) => Promise<number>; readonly fail: () => Promise<number> };

function served() {
  const [near, far] = wire();
  const push = serveCalls<string>(far, {
    double: async (n: number) => {
      await new Promise((resolve) => setTimeout(resolve, n));
      return 2 * n;
    },
    fail: async () => {
      throw new RangeError('n: expected > 0, got -1');
    },
  });
  const heard: string[] = [];
  return { remote: callThrough<Sums, string>(near, (value) => heard.push(value)), push, heard };
}

it('gives each caller his own answer, whatever the order of the answers', async () => {
  const { remote } = served();
  expect(await Promise.all([remote.double(20), remote.double(1)])).toEqual([40, 2]);
});

it('hands a throw to the caller', async () => {
  await expect(served().remote.fail()).rejects.toThrow('n: expected > 0, got -1');
});

it('refuses a call that nobody serves', async () => {
  const { remote } = served();
  const other = remote as unknown as { triple(n: number): Promise<number> };
  await expect(other.triple(1)).rejects.toThrow('"triple"');
});

it('carries pushes between the answers', async () => {
  const { remote, push, heard } = served();
  push('first');
  await remote.double(1);
  expect(heard).toEqual(['first']);
});

import 'fake-indexeddb/auto';
import { openDB } from 'idb';
import { expect, it } from 'vitest';
import { VoiceStore } from '../devices/voice-store.ts';
import { hostInHand } from '../workers/host-in-hand.ts';
import { sweepSounds } from './sweep-sounds.ts';

const HOUR_MS = 3_600_000;
const NOON_MS = Date.UTC(2026, 4, 4, 12);
const abc = new Blob(['abc'], { type: 'audio/webm' });

/** A host whose record has a voice note, one that was thrown away, a sound that was listened to, and a kind of tomorrow's. */
async function hostWithSounds() {
  const { host } = hostInHand('a');
  await host.calls.open('mine');
  const sound = { bytes: 3, sha256: 'ba78', lengthS: 2 };
  await host.calls.append([
    { kind: 'dog-added', body: { dog: 'd', name: 'Wigeon' } },
    { kind: 'session-opened', body: { session: 's', dog: 'd' } },
    { kind: 'rep-recorded', body: { rep: 'r', session: 's', legs: [] } },
    { kind: 'voice-noted', body: { voice: 'noted', rep: 'r', ...sound } },
    // Its rep is not here: a merge may bring it.
    { kind: 'voice-noted', body: { voice: 'astray', rep: 'elsewhere', ...sound } },
    { kind: 'of-tomorrow' as 'voice-noted', body: { parts: [{ sound: 'later-kind' }] } as never },
  ]);
  return host;
}

async function soundsIn(name: string): Promise<readonly unknown[]> {
  const db = await openDB(name);
  const keys = await db.getAllKeys('sounds');
  db.close();
  return keys;
}

it('drops a sound whose note never came, and none that a fact, a draft or a tab of now speaks of', async () => {
  const { calls } = await hostWithSounds();
  const store = new VoiceStore('swept');
  const morning = ['killed', 'noted', 'astray', 'later-kind', 'in-a-draft'];
  for (const id of morning) await store.keep(id, abc, NOON_MS - 3 * HOUR_MS);
  await store.keep('another-tab', abc, NOON_MS - 1000);
  await store.keep('settled', abc, NOON_MS - 3 * HOUR_MS);
  await store.settle('settled');
  const waiting = new Set(['in-a-draft']);
  await sweepSounds({ store, spokenOf: calls.spokenOf, waiting, nowMs: NOON_MS });
  expect(await soundsIn('swept')).toEqual(
    ['another-tab', 'astray', 'in-a-draft', 'later-kind', 'noted', 'settled'].sort(),
  );
  // What a fact speaks of is never looked at again; what waits is, and the tab's when its hour is over.
  expect(await store.begunBefore(Number.POSITIVE_INFINITY)).toEqual(['another-tab', 'in-a-draft']);
  await sweepSounds({ store, spokenOf: calls.spokenOf, waiting, nowMs: NOON_MS + 2 * HOUR_MS });
  expect(await soundsIn('swept')).not.toContain('another-tab');
});

it('leaves all sounds of a store from before sounds were noted as begun', async () => {
  const old = await openDB('old', 1, { upgrade: (db) => void db.createObjectStore('sounds') });
  await old.put('sounds', { bytes: await abc.arrayBuffer(), type: abc.type }, 'old-one');
  old.close();
  const store = new VoiceStore('old');
  const spokenOf = async () => [];
  await sweepSounds({ store, spokenOf, waiting: new Set(), nowMs: NOON_MS });
  expect(await soundsIn('old')).toEqual(['old-one']);
});

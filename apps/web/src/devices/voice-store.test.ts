import 'fake-indexeddb/auto';
import { expect, it } from 'vitest';
import { VoiceStore } from './voice-store.ts';

const abc = new Blob(['abc'], { type: 'audio/webm' });
/** SHA-256 of "abc": FIPS 180-2, appendix B.1. */
const SHA_ABC = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad';

it('keeps a sound under its id, with its size and the hash of its bytes', async () => {
  const store = new VoiceStore('a');
  expect(await store.keep('v', abc, 0)).toEqual({ bytes: 3, sha256: SHA_ABC });
  const read = await store.read('v', SHA_ABC);
  expect(read?.type).toBe('audio/webm');
  expect(await read?.text()).toBe('abc');
});

it('gives nothing for a sound that is not here, was thrown away, or is no longer what was heard', async () => {
  const store = new VoiceStore('b');
  await store.keep('v', abc, 0);
  expect(await store.read('w', SHA_ABC)).toBeNull();
  expect(await store.read('v', SHA_ABC.replace('b', 'c'))).toBeNull();
  await store.drop('v');
  expect(await store.read('v', SHA_ABC)).toBeNull();
});

it('leaves nothing behind, and touches no other record’s sounds', async () => {
  const [demo, mine] = [new VoiceStore('demo'), new VoiceStore('mine')];
  await demo.keep('v', abc, 0);
  await mine.keep('v', abc, 0);
  await demo.clear();
  expect(await demo.read('v', SHA_ABC)).toBeNull();
  expect(await mine.read('v', SHA_ABC)).not.toBeNull();
});

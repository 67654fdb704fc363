import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { sha256OfBlob } from './hash-blob.ts';

describe('the fingerprint of a file', () => {
  it.each([
    // The example messages of FIPS 180-2, appendix B, and the empty one.
    ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
    ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    ['a'.repeat(1_000_000), 'cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0'],
  ])('is that of the standard', async (text, expected) => {
    expect(await sha256OfBlob(new Blob([text]), () => undefined)).toBe(expected);
  });

  it('of more than one piece is that of another program, and what is done is told to the last byte', async () => {
    const bytes = new Uint8Array(9_000_001).map((_, n) => (n * 31) % 251);
    const done: number[] = [];
    const hash = await sha256OfBlob(new Blob([bytes]), (count) => done.push(count));
    expect(hash).toBe(createHash('sha256').update(bytes).digest('hex'));
    expect(done).toEqual([4_194_304, 8_388_608, 9_000_001]);
  });

  it('reads no more than a piece at a time', async () => {
    const asked: number[] = [];
    const film = new Blob([new Uint8Array(9_000_001)]);
    const watched = new Proxy(film, {
      get: (target, key) => {
        if (key !== 'slice') return Reflect.get(target, key, target);
        return (from: number, to: number) => {
          asked.push(to - from);
          return target.slice(from, to);
        };
      },
    });
    await sha256OfBlob(watched, () => undefined);
    expect(Math.max(...asked)).toBeLessThanOrEqual(4 * 2 ** 20);
    expect(asked).toHaveLength(3);
  });
});

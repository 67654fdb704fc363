import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { contentHashOf, PIECE_BYTES } from './hash-blob.ts';

const sha256 = (...parts: readonly Uint8Array[]): Buffer => {
  const hash = createHash('sha256');
  for (const part of parts) hash.update(part);
  return hash.digest();
};
const film = new Uint8Array(2 * PIECE_BYTES + 1).map((_, n) => (n * 31) % 251);

describe('the content hash of a film', () => {
  it('is the hash of the hashes of its pieces, by another program', async () => {
    const pieces = [0, 1, 2].map((n) => film.subarray(n * PIECE_BYTES, (n + 1) * PIECE_BYTES));
    const expected = sha256(...pieces.map((piece) => sha256(piece))).toString('hex');
    const done: number[] = [];
    expect(await contentHashOf(new Blob([film]), (bytes) => done.push(bytes))).toBe(expected);
    expect(done).toEqual([PIECE_BYTES, 2 * PIECE_BYTES, film.length]);
  });

  it('of “abc” and of nothing, from the digests that FIPS 180-2 prints', async () => {
    const abc = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad';
    const told = () => undefined;
    expect(await contentHashOf(new Blob(['abc']), told)).toBe(
      sha256(Buffer.from(abc, 'hex')).toString('hex'),
    );
    expect(await contentHashOf(new Blob([]), told)).toBe(
      'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855',
    );
  });

  it.each([0, PIECE_BYTES - 1, PIECE_BYTES, film.length - 1])(
    'another byte at %d is another hash',
    async (at) => {
      const other = film.slice();
      other[at]! ^= 1;
      const [a, b] = await Promise.all(
        [film, other].map((one) => contentHashOf(new Blob([one]), () => undefined)),
      );
      expect(a).not.toBe(b);
    },
  );

  it('is the same where the browser can only read slices, and those are never more than a piece', async () => {
    const asked: number[] = [];
    const plain = new Blob([film]);
    const sliced = new Proxy(plain, {
      get: (target, key) => {
        if (key === 'stream') return () => ({ getReader: () => raise() });
        if (key !== 'slice') return Reflect.get(target, key, target);
        return (from: number, to: number) => {
          asked.push(to - from);
          return target.slice(from, to);
        };
      },
    });
    const told = () => undefined;
    expect(await contentHashOf(sliced, told)).toBe(await contentHashOf(plain, told));
    expect(asked).toEqual([PIECE_BYTES, PIECE_BYTES, PIECE_BYTES]);
  });
});

function raise(): never {
  throw new TypeError('no reader of bytes here');
}

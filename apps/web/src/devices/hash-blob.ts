import { sha256 } from '@noble/hashes/sha2.js';

/** What is read of a file at a time: all that is ever held in memory of it. */
const PIECE_BYTES = 4 * 2 ** 20;

/**
 * SHA-256 (FIPS 180-4) of a file's bytes in lower-case hexadecimal, read piece by piece: a film of any size, in the memory of one piece. The
 * browser's own digest wants the whole file at once. Rejects where the file can no longer be read.
 */
export async function sha256OfBlob(blob: Blob, told: (bytesDone: number) => void): Promise<string> {
  const hash = sha256.create();
  for (let from = 0; from < blob.size; from += PIECE_BYTES) {
    const piece = await blob.slice(from, from + PIECE_BYTES).arrayBuffer();
    hash.update(new Uint8Array(piece));
    told(from + piece.byteLength);
  }
  return [...hash.digest()].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

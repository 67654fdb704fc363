/** How a recording is written, as its first bytes say. */
export type SoundKind = 'flac' | 'opus' | 'mp3' | 'other';

/** As many bytes as tell a kind: the name of an Opus stream stands at the 29th of its Ogg page. */
export const HEAD_BYTES = 64;

const text = (bytes: Uint8Array, from: number, to: number) =>
  String.fromCharCode(...bytes.subarray(from, to));

/**
 * The kind of a recording: FLAC by its mark, Opus by the name in its first Ogg page [RFC7845], MP3 by a tag before it or by the eleven set bits of a
 * frame whose layer is not nought (nought is AAC's). All else is left to the WAV reader, which says what it is.
 */
export function soundKind(head: Uint8Array): SoundKind {
  if (text(head, 0, 4) === 'fLaC') return 'flac';
  if (text(head, 0, 4) === 'OggS') return text(head, 28, 36) === 'OpusHead' ? 'opus' : 'other';
  if (text(head, 0, 3) === 'ID3') return 'mp3';
  const [first = 0, second = 0] = head;
  return first === 0xff && (second & 0xe0) === 0xe0 && (second & 0x06) !== 0 ? 'mp3' : 'other';
}

/** Frames that the head of a FLAC file promises (36 bits from the 22nd byte on [RFC9639]); null where it leaves them open. */
export function promisedFlacFrames(head: Uint8Array): number | null {
  if (head.length < 26) return null;
  const frames = (head[21]! & 0x0f) * 2 ** 32 + new DataView(head.buffer, head.byteOffset).getUint32(22);
  return frames === 0 ? null : frames;
}

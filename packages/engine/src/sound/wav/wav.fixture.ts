import type { ByteStream } from './byte-stream.ts';

/** A stream over bytes. */
export function streamOf(bytes: Uint8Array): ByteStream {
  let at = 0;
  return {
    take: (count) => {
      const part = bytes.subarray(at, at + count);
      at += part.length;
      return part;
    },
  };
}

const ascii = (text: string) => Array.from(text, (letter) => letter.charCodeAt(0));
const little = (value: number, bytes: number) =>
  Array.from({ length: bytes }, (_, k) => Math.floor(value / 256 ** k) % 256);

/** A chunk, with the byte that pads an odd one; its header may promise another length than it has. */
export function chunk(name: string, body: readonly number[], promised = body.length): number[] {
  return [...ascii(name), ...little(promised, 4), ...body, ...(body.length % 2 ? [0] : [])];
}

/** A `fmt ` chunk. */
export function formatChunk(
  tag: number,
  channels: number,
  sampleRateHz: number,
  bits: number,
  more: readonly number[] = [],
) {
  const frameBytes = channels * Math.ceil(bits / 8);
  return chunk('fmt ', [
    ...little(tag, 2),
    ...little(channels, 2),
    ...little(sampleRateHz, 4),
    ...little(sampleRateHz * frameBytes, 4),
    ...little(frameBytes, 2),
    ...little(bits, 2),
    ...more,
  ]);
}

/** What an extensible header adds: 22 bytes more, valid bits, which loudspeakers, and the coding's long name. */
export const extensibleTail = (tag: number, bits: number) => [
  ...little(22, 2),
  ...little(bits, 2),
  ...little(3, 4),
  ...little(tag, 2),
  ...[0, 0, 0, 0, 0x10, 0, 0x80, 0, 0, 0xaa, 0, 0x38, 0x9b, 0x71],
];

export const wavOf = (form: string, ...chunks: readonly number[][]) =>
  Uint8Array.from([
    ...ascii(form),
    ...little(4 + chunks.flat().length, 4),
    ...ascii('WAVE'),
    ...chunks.flat(),
  ]);

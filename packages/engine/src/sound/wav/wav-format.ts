import type { ByteStream } from './byte-stream.ts';

/** How one number of a sound is written. */
export type SampleKind =
  | 'unsigned8'
  | 'signed16'
  | 'signed24'
  | 'signed32'
  | 'float32'
  | 'float64'
  | 'muLaw'
  | 'aLaw';

/** What the header of a WAV file says of the sound that follows it. */
export interface WavFormat {
  sampleRateHz: number;
  channels: number;
  kind: SampleKind;
  /** Bytes of one number and of one moment (all channels). */
  sampleBytes: number;
  frameBytes: number;
  /** Bytes of sound that the header promises; null where it leaves that open, as what is recorded into a pipe does. */
  promisedBytes: number | null;
}

/** Why a file is no WAV that can be listened to. */
export type WavProblem =
  | { code: 'NOT_WAV'; begins: string }
  | { code: 'WAV_CUT' }
  | { code: 'WAV_NO_FORMAT' }
  | { code: 'WAV_CODING'; tag: number; bits: number }
  | { code: 'WAV_RATE'; sampleRateHz: number }
  | { code: 'WAV_CHANNELS'; channels: number };

export type WavOpening = { ok: true; format: WavFormat } | { ok: false; problem: WavProblem };

/** Rates that are listened to. */
export const WAV_RATES_HZ = { least: 8_000, most: 192_000 } as const;

const TAG = { pcm: 1, float: 3, aLaw: 6, muLaw: 7, extensible: 0xfffe } as const;
const OPEN_ENDED = 0xffffffff;
const MOST_FORMAT_BYTES = 4096;
const SKIP_BLOCK = 65_536;

const nameOf = (bytes: Uint8Array, at = 0) => String.fromCharCode(...bytes.subarray(at, at + 4));
const viewOf = (bytes: Uint8Array) => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

function kindOf(tag: number, bits: number): SampleKind | null {
  if (tag === TAG.muLaw) return 'muLaw';
  if (tag === TAG.aLaw) return 'aLaw';
  if (tag === TAG.float) return bits === 32 ? 'float32' : bits === 64 ? 'float64' : null;
  if (tag !== TAG.pcm) return null;
  if (bits < 1 || bits > 32) return null;
  return (['unsigned8', 'signed16', 'signed24', 'signed32'] as const)[Math.ceil(bits / 8) - 1] ?? null;
}

/** Bytes of one number of each kind. */
const BYTES_OF: Record<SampleKind, number> = {
  unsigned8: 1,
  signed16: 2,
  signed24: 3,
  signed32: 4,
  float32: 4,
  float64: 8,
  muLaw: 1,
  aLaw: 1,
};

/** The `fmt ` chunk [RIFF1991]; of an extensible one, the coding is the first two bytes of its long name. */
function formatOf(chunk: Uint8Array): { format: WavFormat } | { problem: WavProblem } {
  if (chunk.length < 16) return { problem: { code: 'WAV_CUT' } };
  const view = viewOf(chunk);
  const outerTag = view.getUint16(0, true);
  const tag = outerTag === TAG.extensible && chunk.length >= 26 ? view.getUint16(24, true) : outerTag;
  const channels = view.getUint16(2, true);
  const sampleRateHz = view.getUint32(4, true);
  const bits = view.getUint16(14, true);
  const kind = kindOf(tag, bits);
  if (kind === null) return { problem: { code: 'WAV_CODING', tag, bits } };
  if (channels < 1) return { problem: { code: 'WAV_CHANNELS', channels } };
  if (sampleRateHz < WAV_RATES_HZ.least || sampleRateHz > WAV_RATES_HZ.most)
    return { problem: { code: 'WAV_RATE', sampleRateHz } };
  const sampleBytes = BYTES_OF[kind];
  return {
    format: {
      sampleRateHz,
      channels,
      kind,
      sampleBytes,
      frameBytes: channels * sampleBytes,
      promisedBytes: null,
    },
  };
}

function skip(stream: ByteStream, count: number): void {
  for (let left = count; left > 0; ) {
    const got = stream.take(Math.min(left, SKIP_BLOCK)).length;
    if (got === 0) return;
    left -= got;
  }
}

/**
 * Reads a WAV file up to the first byte of its sound: RIFF, and RF64 with its size of 64 bits [EBU3306]. Chunks that are not known are passed
 * over; one of an odd length is followed by a byte that counts for nothing.
 */
export function openWav(stream: ByteStream): WavOpening {
  const no = (problem: WavProblem): WavOpening => ({ ok: false, problem });
  const head = stream.take(12);
  const form = nameOf(head);
  const isWav = (form === 'RIFF' || form === 'RF64' || form === 'BW64') && nameOf(head, 8) === 'WAVE';
  if (!isWav) return no({ code: 'NOT_WAV', begins: form });
  let format: WavFormat | null = null;
  let longBytes: number | null = null;
  for (;;) {
    const chunk = stream.take(8);
    if (chunk.length < 8) return no(format === null ? { code: 'WAV_NO_FORMAT' } : { code: 'WAV_CUT' });
    const name = nameOf(chunk);
    const size = viewOf(chunk).getUint32(4, true);
    if (name === 'data') {
      if (format === null) return no({ code: 'WAV_NO_FORMAT' });
      const promisedBytes = size === OPEN_ENDED ? longBytes : size === 0 ? null : size;
      return { ok: true, format: { ...format, promisedBytes } };
    }
    if (name === 'fmt ') {
      const read = formatOf(stream.take(Math.min(size, MOST_FORMAT_BYTES)).slice());
      if ('problem' in read) return no(read.problem);
      format = read.format;
      skip(stream, size - Math.min(size, MOST_FORMAT_BYTES) + (size % 2));
    } else if (name === 'ds64' && size >= 24) {
      const sizes = stream.take(24).slice();
      if (sizes.length === 24) longBytes = Number(viewOf(sizes).getBigUint64(8, true));
      skip(stream, size - 24 + (size % 2));
    } else skip(stream, size + (size % 2));
  }
}

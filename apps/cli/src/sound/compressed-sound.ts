import type { ByteStream } from '@sedgeline/engine/sound';
import type { SoundKind } from './sound-kind.ts';

/** A piece of decoded sound: its channels, and what could not be read of it. */
interface Decoded {
  readonly channelData: readonly Float32Array[];
  readonly samplesDecoded: number;
  readonly sampleRate: number;
  readonly errors: readonly unknown[];
}

interface Decoder {
  decode(bytes: Uint8Array): Decoded | Promise<Decoded>;
  /** What the decoder still holds when the file has ended. */
  flush(): Promise<Decoded> | null;
  free(): void;
}

/** Each decoder is loaded when a file of its kind is opened, and not before. */
const DECODERS: Record<Exclude<SoundKind, 'other'>, () => Promise<Decoder>> = {
  async flac() {
    const { FLACDecoder } = await import('@wasm-audio-decoders/flac');
    const decoder = new FLACDecoder();
    await decoder.ready;
    return {
      decode: (bytes) => decoder.decode(bytes),
      flush: () => decoder.flush(),
      free: () => decoder.free(),
    };
  },
  async opus() {
    const { OggOpusDecoder } = await import('ogg-opus-decoder');
    const decoder = new OggOpusDecoder();
    await decoder.ready;
    return {
      decode: (bytes) => decoder.decode(bytes),
      flush: () => decoder.flush(),
      free: () => decoder.free(),
    };
  },
  async mp3() {
    const { MPEGDecoder } = await import('mpg123-decoder');
    const decoder = new MPEGDecoder();
    await decoder.ready;
    return { decode: (bytes) => decoder.decode(bytes), flush: () => null, free: () => decoder.free() };
  },
};

const PIECE_BYTES = 65_536;

/** What came of a compressed file. */
export interface CompressedSound {
  frames: number;
  sampleRateHz: number;
  /** Channels that differ: the MP3 decoder gives one that stands alone twice. */
  channels: number;
  /** Pieces that the decoder could not read; what they held is not there, and times after them may be early. */
  damaged: number;
}

function differing(channels: readonly Float32Array[]): number {
  const [first, ...others] = channels;
  return others.every((other) => other.every((x, i) => x === first![i])) ? 1 : channels.length;
}

function mixed(channels: readonly Float32Array[], frames: number): Float32Array {
  const [only] = channels;
  if (only !== undefined && channels.length === 1) return only.subarray(0, frames);
  const mono = new Float32Array(frames);
  for (const channel of channels)
    for (let i = 0; i < frames; i++) mono[i] = mono[i]! + channel[i]! / channels.length;
  return mono;
}

/**
 * Decodes a compressed recording piece by piece, its channels mixed into one by their mean. The rate is known with the first sound; should it
 * change later, what follows is counted as damage and left out. `onSamples` may not keep the array.
 */
export async function readCompressedSound(
  kind: Exclude<SoundKind, 'other'>,
  stream: ByteStream,
  onSamples: (samples: Float32Array, sampleRateHz: number) => void,
): Promise<CompressedSound> {
  const decoder = await DECODERS[kind]();
  const found: CompressedSound = { frames: 0, sampleRateHz: 0, channels: 0, damaged: 0 };
  const take = ({ channelData, samplesDecoded, sampleRate, errors }: Decoded) => {
    found.damaged += errors.length;
    if (samplesDecoded === 0) return;
    if (found.frames === 0) found.sampleRateHz = sampleRate;
    if (found.channels < channelData.length) found.channels = differing(channelData);
    if (sampleRate !== found.sampleRateHz) {
      found.damaged++;
      return;
    }
    found.frames += samplesDecoded;
    onSamples(mixed(channelData, samplesDecoded), sampleRate);
  };
  try {
    for (;;) {
      // Decoders may hold on to what they are given: the stream's own array is used again.
      const piece = stream.take(PIECE_BYTES).slice();
      if (piece.length === 0) break;
      take(await decoder.decode(piece));
    }
    const rest = decoder.flush();
    if (rest !== null) take(await rest);
  } finally {
    decoder.free();
  }
  return found;
}

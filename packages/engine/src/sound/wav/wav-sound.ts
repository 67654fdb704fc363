import type { ByteStream } from './byte-stream.ts';
import type { SampleKind, WavFormat } from './wav-format.ts';

const BLOCK_FRAMES = 16_384;

/** A byte of mu-law as a number from -1 to 1 [G711]: sign, three bits of exponent, four of mantissa, all turned round. */
function fromMuLaw(byte: number): number {
  const turned = ~byte & 0xff;
  const size = ((((turned & 0x0f) << 3) + 0x84) << ((turned & 0x70) >> 4)) - 0x84;
  return (turned & 0x80 ? -size : size) / 32_768;
}

/** A byte of A-law as a number from -1 to 1 [G711]: every other bit is turned round. */
function fromALaw(byte: number): number {
  const turned = byte ^ 0x55;
  const exponent = (turned & 0x70) >> 4;
  const mantissa = (turned & 0x0f) << 4;
  const size = exponent === 0 ? mantissa + 8 : (mantissa + 0x108) << (exponent - 1);
  return (turned & 0x80 ? size : -size) / 32_768;
}

const MU_LAW = Float32Array.from({ length: 256 }, (_, byte) => fromMuLaw(byte));
const A_LAW = Float32Array.from({ length: 256 }, (_, byte) => fromALaw(byte));

/** How one number is read at a place. */
const READ: Record<SampleKind, (view: DataView, at: number) => number> = {
  unsigned8: (view, at) => (view.getUint8(at) - 128) / 128,
  signed16: (view, at) => view.getInt16(at, true) / 32_768,
  signed24: (view, at) => ((view.getInt8(at + 2) << 16) | view.getUint16(at, true)) / 8_388_608,
  signed32: (view, at) => view.getInt32(at, true) / 2_147_483_648,
  float32: (view, at) => view.getFloat32(at, true),
  float64: (view, at) => view.getFloat64(at, true),
  muLaw: (view, at) => MU_LAW[view.getUint8(at)]!,
  aLaw: (view, at) => A_LAW[view.getUint8(at)]!,
};

/** What was wrong with the sound but did not keep it from being read. */
export interface WavSoundNotes {
  frames: number;
  /** Bytes that the header promised and the file does not hold. */
  missingBytes: number;
  /** Numbers of a float file that are none (or no finite one): taken as silence. */
  notNumbers: number;
}

/**
 * The sound of an opened WAV file, all channels mixed into one by their mean, piece by piece; `onSamples` may not keep the array. Ends at the
 * promised length or at the file's end, whichever comes first; a last moment that is cut is left out.
 */
export function readWavSound(
  stream: ByteStream,
  { channels, kind, sampleBytes, frameBytes, promisedBytes }: WavFormat,
  onSamples: (samples: Float32Array) => void,
): WavSoundNotes {
  const read = READ[kind];
  const isFloat = kind === 'float32' || kind === 'float64';
  const mono = new Float32Array(BLOCK_FRAMES);
  let leftBytes = promisedBytes ?? Number.POSITIVE_INFINITY;
  let frames = 0;
  let notNumbers = 0;
  while (leftBytes >= frameBytes) {
    const wanted = Math.min(BLOCK_FRAMES * frameBytes, leftBytes - (leftBytes % frameBytes || 0));
    const bytes = stream.take(wanted);
    const count = Math.floor(bytes.length / frameBytes);
    const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    for (let frame = 0; frame < count; frame++) {
      let sum = 0;
      for (let channel = 0; channel < channels; channel++) {
        const value = read(view, frame * frameBytes + channel * sampleBytes);
        if (isFloat && !Number.isFinite(value)) notNumbers++;
        else sum += value;
      }
      mono[frame] = sum / channels;
    }
    if (count > 0) onSamples(mono.subarray(0, count));
    frames += count;
    leftBytes -= bytes.length;
    if (bytes.length < wanted) break;
  }
  const missingBytes = Number.isFinite(leftBytes) && leftBytes >= frameBytes ? leftBytes : 0;
  return { frames, missingBytes, notNumbers };
}

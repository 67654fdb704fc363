import { ALL_FORMATS, AudioSampleSink, BufferSource, Input } from 'mediabunny';
import { describe, expect, it } from 'vitest';
import { chunk, extensibleTail, formatChunk, streamOf, wavOf } from './wav.fixture.ts';
import { openWav } from './wav-format.ts';
import { readWavSound } from './wav-sound.ts';

/** What mediabunny, a media library that shares nothing with ours, reads in a file: its channels' mean. */
async function readByPeer(bytes: Uint8Array) {
  const input = new Input({ formats: ALL_FORMATS, source: new BufferSource(bytes) });
  const track = (await input.getPrimaryAudioTrack())!;
  const samples: number[] = [];
  for await (const sample of new AudioSampleSink(track).samples()) {
    const planes = Array.from({ length: sample.numberOfChannels }, (_, planeIndex) => {
      const plane = new Float32Array(sample.numberOfFrames);
      sample.copyTo(plane, { planeIndex, format: 'f32-planar' });
      return plane;
    });
    for (let i = 0; i < sample.numberOfFrames; i++)
      samples.push(planes.reduce((sum, plane) => sum + plane[i]!, 0) / planes.length);
    sample.close();
  }
  return { samples, sampleRateHz: track.sampleRate, channels: track.numberOfChannels };
}

function readByUs(bytes: Uint8Array) {
  const stream = streamOf(bytes);
  const opened = openWav(stream);
  if (!opened.ok) throw new Error(opened.problem.code);
  const samples: number[] = [];
  readWavSound(stream, opened.format, (part) => samples.push(...part));
  const { sampleRateHz, channels } = opened.format;
  return { samples, sampleRateHz, channels };
}

const FRAMES = 600;
/** Bytes that take every value, in an order without a pattern that a reader could lean on. */
const scattered = (count: number) =>
  Array.from({ length: count }, (_, i) => (i * 167 + (i >> 3) * 29 + 11) % 256);
const floats = (
  count: number,
  make: (values: number[]) => ArrayLike<number> & { buffer: ArrayBufferLike },
) => [...new Uint8Array(make(scattered(count).map((byte) => (byte - 128) / 130)).buffer)];

describe('a WAV file is read as mediabunny reads it', () => {
  it.each([
    ['8 bit', 1, 8, (n: number) => scattered(n)],
    ['16 bit', 1, 16, (n: number) => scattered(2 * n)],
    ['24 bit', 1, 24, (n: number) => scattered(3 * n)],
    ['32 bit', 1, 32, (n: number) => scattered(4 * n)],
    ['float 32', 3, 32, (n: number) => floats(n, (values) => Float32Array.from(values))],
    ['float 64', 3, 64, (n: number) => floats(n, (values) => Float64Array.from(values))],
    ['mu-law', 7, 8, (n: number) => scattered(n)],
    ['A-law', 6, 8, (n: number) => scattered(n)],
  ] as const)('%s, plain and extensible, of one and of two channels', async (_, tag, bits, data) => {
    for (const channels of [1, 2]) {
      const body = chunk('data', data(FRAMES * channels));
      const files = [
        wavOf('RIFF', formatChunk(tag, channels, 44_100, bits), body),
        wavOf('RIFF', formatChunk(0xfffe, channels, 44_100, bits, extensibleTail(tag, bits)), body),
      ];
      for (const file of files) {
        const [ours, theirs] = [readByUs(file), await readByPeer(file)];
        expect({ ...ours, samples: ours.samples.length }).toEqual({
          ...theirs,
          samples: theirs.samples.length,
        });
        // Both give numbers of 32 bits; 2^-15 is one step of 16 bits, as which a library may hold the laws of G.711.
        ours.samples.forEach((x, i) => {
          expect(Math.abs(x - theirs.samples[i]!)).toBeLessThan(tag > 3 ? 2 ** -15 : 2 ** -22);
        });
      }
    }
  });

  it('also where it ends before its promise', async () => {
    const cut = wavOf(
      'RIFF',
      formatChunk(1, 1, 16_000, 16),
      chunk('data', scattered(2 * FRAMES), 20 * FRAMES),
    );
    expect(readByUs(cut).samples).toEqual((await readByPeer(cut)).samples);
  });
});

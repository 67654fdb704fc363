import { describe, expect, it } from 'vitest';
import { chunk, extensibleTail, formatChunk, streamOf, wavOf } from './wav.fixture.ts';
import { openWav } from './wav-format.ts';
import { readWavSound } from './wav-sound.ts';

/** Everything that a file says. */
function readAll(bytes: Uint8Array) {
  const stream = streamOf(bytes);
  const opened = openWav(stream);
  if (!opened.ok) throw new Error(opened.problem.code);
  const samples: number[] = [];
  const notes = readWavSound(stream, opened.format, (part) => samples.push(...part));
  return { format: opened.format, samples, notes };
}

const problemOf = (bytes: Uint8Array) => {
  const opened = openWav(streamOf(bytes));
  return opened.ok ? null : opened.problem;
};

const bytesOf = (view: { buffer: ArrayBufferLike }) => [...new Uint8Array(view.buffer)];

describe('a WAV file', () => {
  // Each by hand: the greatest negative, nought, half and a quarter of full scale.
  it.each([
    ['8 bit', 1, 8, [0x00, 0x80, 0xc0, 0xa0], [-1, 0, 0.5, 0.25]],
    ['16 bit', 1, 16, [0x00, 0x80, 0x00, 0x00, 0x00, 0x40, 0x00, 0x20], [-1, 0, 0.5, 0.25]],
    ['24 bit', 1, 24, [0, 0, 0x80, 0, 0, 0, 0, 0, 0x40, 0, 0, 0x20], [-1, 0, 0.5, 0.25]],
    ['32 bit', 1, 32, [0, 0, 0, 0x80, 0, 0, 0, 0, 0, 0, 0, 0x40, 0, 0, 0, 0x20], [-1, 0, 0.5, 0.25]],
    ['float 32', 3, 32, bytesOf(Float32Array.of(-1, 0, 0.5, 0.25)), [-1, 0, 0.5, 0.25]],
    ['float 64', 3, 64, bytesOf(Float64Array.of(-1, 0, 0.5, 0.25)), [-1, 0, 0.5, 0.25]],
    // ITU-T G.711, tables 2: the ends are 8031 x 4 = 32124 and 4032 x 8 = 32256 of 32768; the least are 0 and 8.
    ['mu-law', 7, 8, [0x00, 0x80, 0xff, 0x7f], [-32124 / 32768, 32124 / 32768, 0, 0]],
    ['A-law', 6, 8, [0x2a, 0xaa, 0xd5, 0x55], [-32256 / 32768, 32256 / 32768, 8 / 32768, -8 / 32768]],
  ] as const)('of %s is read', (_, tag, bits, data, expected) => {
    const plain = wavOf('RIFF', formatChunk(tag, 1, 22_050, bits), chunk('data', data));
    expect(readAll(plain).samples.map((x) => x + 0)).toEqual(expected.map((x) => Math.fround(x) + 0));
    const tail = extensibleTail(tag, bits);
    const extensible = wavOf('RIFF', formatChunk(0xfffe, 1, 22_050, bits, tail), chunk('data', data));
    expect(readAll(extensible).samples).toEqual(readAll(plain).samples);
    expect(readAll(plain).format).toMatchObject({ sampleRateHz: 22_050, channels: 1 });
  });

  it('of several channels is their mean', () => {
    const data = bytesOf(Int16Array.of(16_384, 0, -16_384, 8_192, 8_192, 8_192));
    const { samples } = readAll(wavOf('RIFF', formatChunk(1, 3, 48_000, 16), chunk('data', data)));
    expect(samples).toEqual([0, 0.25]);
  });

  it('may hold chunks of an odd length before its sound', () => {
    const data = bytesOf(Int16Array.of(16_384));
    const file = wavOf(
      'RIFF',
      chunk('LIST', [1, 2, 3]),
      formatChunk(1, 1, 8_000, 16),
      chunk('id3 ', [9]),
      chunk('data', data),
    );
    expect(readAll(file).samples).toEqual([0.5]);
  });

  it('that promises more than it holds gives what is there, and says how much is missing', () => {
    const data = bytesOf(Int16Array.of(16_384, 8_192));
    const { samples, notes } = readAll(
      wavOf('RIFF', formatChunk(1, 1, 8_000, 16), chunk('data', data, 1000)),
    );
    expect(samples).toEqual([0.5, 0.25]);
    expect(notes).toEqual({ frames: 2, missingBytes: 996, notNumbers: 0 });
  });

  it.each([0, 0xffff_ffff])('whose length was left open (%i) goes to the end of the file', (promised) => {
    const data = bytesOf(Int16Array.of(16_384, 8_192));
    const { samples, notes } = readAll(
      wavOf('RIFF', formatChunk(1, 1, 8_000, 16), chunk('data', data, promised)),
    );
    expect(samples).toEqual([0.5, 0.25]);
    expect(notes.missingBytes).toBe(0);
  });

  it('of more than 4 GiB tells its length in 64 bits', () => {
    const sizes = bytesOf(BigUint64Array.of(0n, 4n, 2n));
    const file = wavOf(
      'RF64',
      chunk('ds64', [...sizes, 0, 0, 0, 0]),
      formatChunk(1, 1, 8_000, 16),
      chunk('data', bytesOf(Int16Array.of(16_384, 8_192, 1)), 0xffff_ffff),
    );
    expect(readAll(file).samples).toEqual([0.5, 0.25]);
  });

  it('that ends within a moment leaves that moment out', () => {
    const file = wavOf('RIFF', formatChunk(1, 2, 8_000, 16), chunk('data', [0, 0x40, 0, 0x40, 0, 0x40], 400));
    expect(readAll(file).samples).toEqual([0.5]);
  });

  it('with numbers that are none has silence there', () => {
    const data = bytesOf(Float32Array.of(0.5, Number.NaN, Number.POSITIVE_INFINITY, 0.25));
    const { samples, notes } = readAll(wavOf('RIFF', formatChunk(3, 1, 8_000, 32), chunk('data', data)));
    expect(samples).toEqual([0.5, 0, 0, 0.25]);
    expect(notes.notNumbers).toBe(2);
  });

  it('that cannot be used says why', () => {
    const data = chunk('data', [0, 0]);
    expect(problemOf(Uint8Array.of())).toEqual({ code: 'NOT_WAV', begins: '' });
    expect(problemOf(new TextEncoder().encode('OggS and more of it'))).toEqual({
      code: 'NOT_WAV',
      begins: 'OggS',
    });
    expect(problemOf(wavOf('RIFF', data))).toEqual({ code: 'WAV_NO_FORMAT' });
    expect(problemOf(wavOf('RIFF', formatChunk(1, 1, 8_000, 16)))).toEqual({ code: 'WAV_CUT' });
    expect(problemOf(wavOf('RIFF', formatChunk(2, 1, 8_000, 4), data))).toEqual({
      code: 'WAV_CODING',
      tag: 2,
      bits: 4,
    });
    expect(problemOf(wavOf('RIFF', formatChunk(1, 1, 7_999, 16), data))).toMatchObject({ code: 'WAV_RATE' });
    expect(problemOf(wavOf('RIFF', formatChunk(1, 1, 192_001, 16), data))).toMatchObject({
      code: 'WAV_RATE',
    });
    expect(problemOf(wavOf('RIFF', formatChunk(1, 0, 8_000, 16), data))).toMatchObject({
      code: 'WAV_CHANNELS',
    });
  });
});

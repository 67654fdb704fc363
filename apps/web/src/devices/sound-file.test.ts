import { describe, expect, it } from 'vitest';
import { chunk, formatChunk, wavOf } from '../../../../packages/engine/src/sound/wav/wav.fixture.ts';
import { openSoundFile, type SoundFile } from './sound-file.ts';

/** Two channels, 16 bit: the left counts up, the right is nought, so that their mean is half of the left. */
const FRAMES = 20_000;
const RATE = 16_000;
const left = (n: number) => (n % 1000) * 16;
const bytes = Array.from({ length: FRAMES }, (_, n) => {
  const value = left(n);
  return [value & 255, value >> 8, 0, 0];
}).flat();
const WHOLE = wavOf('RIFF', formatChunk(1, 2, RATE, 16), chunk('data', bytes));

const blobOf = (all: Uint8Array) => new Blob([Uint8Array.from(all)]);

async function read(file: SoundFile): Promise<{ samples: number[]; isCut: boolean }> {
  const samples: number[] = [];
  let isCut = false;
  for await (const piece of file.pieces(() => {
    isCut = true;
  }))
    samples.push(...piece);
  file.close();
  return { samples, isCut };
}

/** The browser's own decoders are looked at in `e2e/listen.e2e.ts`; a WAV needs none. */
describe('a sound in a file', () => {
  it('comes sample by sample in its place, both channels mixed', async () => {
    const opened = await openSoundFile(blobOf(WHOLE));
    if ('code' in opened) throw new Error(opened.code);
    expect(opened).toMatchObject({ sampleRateHz: RATE, lengthS: FRAMES / RATE });
    const { samples, isCut } = await read(opened);
    expect(isCut).toBe(false);
    expect(samples).toHaveLength(FRAMES);
    // Half of a 16-bit number, exact in single precision.
    for (const n of [0, 1, 999, 1000, 12_345, FRAMES - 1]) expect(samples[n]).toBe(left(n) / 2 / 32_768);
  });

  it('that breaks off says how long it should have been, and gives what is there', async () => {
    const opened = await openSoundFile(blobOf(WHOLE.subarray(0, 44 + 4 * 5000)));
    if ('code' in opened) throw new Error(opened.code);
    expect(opened.lengthS).toBe(FRAMES / RATE);
    expect((await read(opened)).samples).toHaveLength(5000);
  });

  it('that is none, has no sound, or has a rate that can’t be heard, says which', async () => {
    expect(await openSoundFile(new Blob(['a letter']))).toEqual({ code: 'unreadable' });
    expect(await openSoundFile(new Blob([]))).toEqual({ code: 'unreadable' });
    const slow = wavOf('RIFF', formatChunk(1, 1, 4000, 16), chunk('data', bytes.slice(0, 400)));
    expect(await openSoundFile(blobOf(slow))).toEqual({ code: 'bad-rate', rateHz: 4000 });
  });
});

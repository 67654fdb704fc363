import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { MADE_BLASTS, MADE_CLICKS_S } from '../../../../packages/engine/src/sound/made-sound.fixture.ts';
import { runInMemory } from '../memory-terminal.fixture.ts';
import { promisedFlacFrames, soundKind } from './sound-kind.ts';

const recording = (name: string) =>
  new Uint8Array(readFileSync(new URL(`./recordings/${name}`, import.meta.url)));
/** The whistle is told, so that reading is put to the test and not belief. */
const listenTo = (bytes: Uint8Array) =>
  runInMemory(['listen', 'r', '--json', '--own-pitch-hz', '3200,3200,3200'], [], { r: bytes });
/** What of the made sound lies within the six seconds that the files hold. */
const BLASTS = MADE_BLASTS.filter(({ endS }) => endS < 6);
const CLICKS_S = MADE_CLICKS_S.filter((timeS) => timeS < 6);

describe('a compressed recording', () => {
  it.each([
    ['made.flac', 16_000],
    ['made.opus', 48_000],
    ['made.mp3', 32_000],
  ])('%s is heard as what it was made from', async (name, sampleRateHz) => {
    const { exit, answer } = await listenTo(recording(name));
    expect(exit).toBe(0);
    expect(answer).toMatchObject({ sampleRateHz, channels: 1, notes: [] });
    // Opus and MP3 are written in frames of 20 and 36 ms; the containers tell how much of the last one is sound.
    expect(Math.abs(answer.durationS - 6)).toBeLessThan(0.04);
    const { whistles, clicks } = answer;
    expect(whistles.map(({ kind }: { kind: string }) => kind)).toEqual(BLASTS.map(({ kind }) => kind));
    whistles.forEach((heard: { startS: number; endS: number; pitchHz: number }, k: number) => {
      // 5 ms of half height; a coder's own delay, if it were not taken off, would be 7 to 35 ms.
      expect(Math.abs(heard.startS - BLASTS[k]!.startS)).toBeLessThan(0.006);
      expect(Math.abs(heard.endS - BLASTS[k]!.endS)).toBeLessThan(0.006);
      expect(Math.abs(heard.pitchHz - BLASTS[k]!.pitchHz)).toBeLessThan(10);
    });
    expect(clicks.length).toBe(CLICKS_S.length);
    clicks.forEach(({ timeS }: { timeS: number }, k: number) => {
      expect(Math.abs(timeS - CLICKS_S[k]!)).toBeLessThan(0.006);
    });
  });

  it('that is cut off gives what is there, and FLAC, which promises a length, says how much is missing', async () => {
    const whole = recording('made.flac');
    const { exit, answer } = await listenTo(whole.subarray(0, whole.length >> 1));
    expect(exit).toBe(0);
    expect(answer.whistles[0].startS).toBeCloseTo(1, 2);
    const note = answer.notes.find(({ code }: { code: string }) => code === 'sound-missing');
    expect(note.missingS + answer.durationS).toBeCloseTo(6, 2);
  });

  it('of which nothing can be read is bad input', async () => {
    const head = recording('made.mp3').subarray(0, 40);
    const { exit, answer } = await listenTo(head);
    expect(exit).toBe(3);
    expect(answer.error).toMatchObject({ code: 'SOUND_DAMAGED', file: 'r' });
  });
});

describe('the kind of a recording', () => {
  const bytes = (...head: readonly number[]) => Uint8Array.from([...head, ...Array(64).fill(0)]);
  it('is told by its first bytes', () => {
    expect(['made.flac', 'made.opus', 'made.mp3'].map((name) => soundKind(recording(name)))).toEqual([
      'flac',
      'opus',
      'mp3',
    ]);
    // ISO/IEC 11172-3: eleven bits set, version, layer; AAC's ADTS has layer nought.
    expect(soundKind(bytes(0xff, 0xfb))).toBe('mp3');
    expect(soundKind(bytes(0xff, 0xf1))).toBe('other');
    expect(soundKind(new TextEncoder().encode('OggS and no Opus'))).toBe('other');
    expect(soundKind(new TextEncoder().encode('RIFF'))).toBe('other');
    expect(soundKind(Uint8Array.of())).toBe('other');
  });

  it('tells how many frames a FLAC file promises', () => {
    expect(promisedFlacFrames(recording('made.flac'))).toBe(6 * 16_000);
    expect(promisedFlacFrames(bytes())).toBeNull();
    expect(promisedFlacFrames(Uint8Array.of(1, 2))).toBeNull();
  });
});

import { describe, expect, it } from 'vitest';
import { MADE_BLASTS, madeSound } from '../../../../packages/engine/src/sound/made-sound.fixture.ts';
import { chunk, formatChunk, wavOf } from '../../../../packages/engine/src/sound/wav/wav.fixture.ts';
import { runInMemory } from '../memory-terminal.fixture.ts';

const RATE = 16_000;
const pcm = [...new Uint8Array(Int16Array.from(madeSound(RATE), (x) => Math.round(32_767 * x)).buffer)];
const MADE = wavOf('RIFF', formatChunk(1, 1, RATE, 16), chunk('data', pcm));

const run = (bytes: Uint8Array, ...more: readonly string[]) =>
  runInMemory(['listen', 'field.wav', ...more], [], { 'field.wav': bytes });

describe('listen', () => {
  it('answers with the contract’s fields', async () => {
    const { exit, answer, stderr } = await run(MADE, '--json');
    expect({ exit, stderr }).toEqual({ exit: 0, stderr: '' });
    expect(Object.keys(answer).slice(0, 3)).toEqual(['whistles', 'clicks', 'durationS']);
    expect(answer.durationS).toBe(12);
    expect(Object.keys(answer.whistles[0]).slice(0, 4)).toEqual(['startS', 'endS', 'kind', 'pitchHz']);
    const kinds = answer.whistles.map(({ kind }: { kind: string }) => kind);
    expect(kinds).toEqual(MADE_BLASTS.map(({ kind }) => kind));
    expect(answer.whistles[0].startS).toBeCloseTo(1, 2);
    expect(answer.clicks.map(({ timeS }: { timeS: number }) => Math.round(10 * timeS) / 10)).toEqual([
      3, 6.5,
    ]);
    expect(answer.notes).toEqual([]);
  });

  it('reads well to people', async () => {
    const { stdout } = await run(MADE);
    expect(stdout).toMatch(/0:01\.00 +long blast +0\.9 s +3,20\d Hz/);
    expect(stdout).toContain('5 blasts and 2 clicks in 0:12.00.');
    expect(stdout).not.toMatch(/NaN|undefined|null|Infinity/);
  });

  it('says what is wrong with a recording that it can use', async () => {
    const codes = async (bytes: Uint8Array) =>
      (await run(bytes, '--json')).answer.notes.map(({ code }: { code: string }) => code);
    const second = Array(2 * RATE).fill(0);
    expect(await codes(wavOf('RIFF', formatChunk(1, 1, RATE, 16), chunk('data', second)))).toEqual([
      'silent',
    ]);
    const lying = wavOf('RIFF', formatChunk(1, 1, RATE, 16), chunk('data', pcm, 10 * pcm.length));
    const { answer } = await run(lying, '--json');
    // Ten times twelve seconds promised, twelve there.
    expect(answer.notes).toEqual([
      { code: 'sound-missing', missingS: 108, sentence: expect.stringContaining('108 s before') },
    ]);
    expect(answer.whistles).toHaveLength(5);
    const full = Array(RATE).fill([0xff, 0x7f]).flat();
    expect(await codes(wavOf('RIFF', formatChunk(1, 1, 8_000, 16), chunk('data', full)))).toEqual([
      'cut-off',
      'low-rate',
    ]);
  });

  it('takes pitches of own blasts', async () => {
    const whose = async (hz: string) =>
      (await run(MADE, '--own-pitch-hz', hz, '--json')).answer.whistles[0].whose;
    expect([await whose('3190,3210'), await whose('4500')]).toEqual(['own', 'other']);
    for (const wrong of ['loud', '100', '3000,']) {
      expect((await run(MADE, '--own-pitch-hz', wrong)).exit).toBe(2);
    }
  });

  it.each([
    ['NOT_WAV', new TextEncoder().encode('OggS of some length'), 'Ogg'],
    ['NOT_WAV', new Uint8Array(0), 'no WAV'],
    ['WAV_EMPTY', wavOf('RIFF', formatChunk(1, 1, RATE, 16), chunk('data', [])), 'no sound'],
    ['WAV_CODING', wavOf('RIFF', formatChunk(2, 1, RATE, 4), chunk('data', [1, 2])), 'convert it'],
    ['WAV_CUT', wavOf('RIFF', formatChunk(1, 1, RATE, 16)), 'copy it again'],
  ])('%s is bad input, in one line that says what to do', async (code, bytes, says) => {
    const { exit, stderr, answer } = await run(bytes, '--json');
    expect(exit).toBe(3);
    expect(answer.error).toMatchObject({ code, file: 'field.wav' });
    expect(stderr).toMatch(new RegExp(`^error\\[${code}\\] field\\.wav: [^\\n]*${says}[^\\n]*\\n$`));
  });

  it('a file that is not there is the world’s failure', async () => {
    expect((await runInMemory(['listen', 'none.wav'], [])).exit).toBe(5);
  });
});

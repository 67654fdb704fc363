import { describe, expect, it } from 'vitest';
import { runInMemory } from '../memory-terminal.fixture.ts';

const run = (...args: readonly string[]) => runInMemory(['whistle', ...args], []);
const USUAL = ['--speed', '5', '--distance', '60'];

describe('whistle', () => {
  it('answers with the contract’s fields, worked by hand', async () => {
    const { exit, answer, stderr } = await run(...USUAL, '--json');
    expect({ exit, stderr }).toEqual({ exit: 0, stderr: '' });
    expect(Object.keys(answer).slice(0, 10)).toEqual([
      'soundDelayS',
      'decideWhenDogAtM',
      'blowWhenDogAtM',
      'dogHearsAtM',
      'dogHaltsAtM',
      'overrunM',
      'interval90',
      'levelAtDogDb',
      'marginDb',
      'carries',
    ]);
    // Backwards from 60 m: braking 25 / 12 = 2.08333, reaction 5 * 0.35 = 1.75: it hears at 56.16667. Sound at 15 C runs 340.261 m/s (ISO 9613-1): 0.16507 s, 0.82535 m.
    expect(answer.dogHaltsAtM).toBeCloseTo(60, 9);
    expect(answer.dogHearsAtM).toBeCloseTo(56.16667, 5);
    expect(answer.soundDelayS).toBeCloseTo(0.16507, 5);
    expect(answer.blowWhenDogAtM).toBeCloseTo(55.34132, 4);
    expect(answer.decideWhenDogAtM).toBeCloseTo(53.84132, 4);
    expect(answer.overrunM).toBeCloseTo(4.65868, 4);
    const [low, high] = answer.interval90.overrunM;
    expect(low).toBeLessThan(answer.overrunM);
    expect(high).toBeGreaterThan(answer.overrunM);
    // 105 - 20 lg 56.16667 = 70.010 less 55.17 m of absorption: 15 C, 70 %, 3.5 kHz lies between 8.3 and 36 dB/km (ISO 9613-2, table 2): 0.46 to 2 dB.
    expect(answer.levelAtDogDb).toBeGreaterThan(68);
    expect(answer.levelAtDogDb).toBeLessThan(69.55);
    expect(answer.marginDb).toBeCloseTo(answer.levelAtDogDb - 40, 9);
    expect(answer.carries).toBe(true);
  });

  it('takes what is told, and prints all that was taken', async () => {
    const told = [
      ...USUAL,
      ...['--reaction-handler', '0.5', '--reaction-dog', '0.8', '--air-c', '-5', '--humidity', '40'],
      ...['--wind-mps', '6', '--level-db', '95', '--noise-db', '66', '--pitch-hz', '5500'],
    ];
    const { answer } = await run(...told, '--json');
    expect(answer.taken).toMatchObject({
      reactionHandlerS: 0.5,
      reactionDogS: 0.8,
      airC: -5,
      humidityPct: 40,
      windMPerS: 6,
      levelDb: 95,
      noiseDb: 66,
      pitchHz: 5500,
    });
    expect(answer.carries).toBe(false);
    expect(answer.cautions.map(({ code }: { code: string }) => code)).toEqual(['not-heard', 'wind', 'ears']);
    const usual = (await run(...USUAL, '--json')).answer;
    expect(answer.blowWhenDogAtM).toBeLessThan(usual.blowWhenDogAtM);
    expect(usual.taken).toMatchObject({
      reactionHandlerS: 0.3,
      reactionDogS: 0.35,
      airC: 15,
      humidityPct: 70,
    });
    expect(usual.taken).toMatchObject({ windMPerS: 0, levelDb: 105, noiseDb: 40, pitchHz: 3500 });
  });

  it('learns from reactions that were timed', async () => {
    const { answer } = await run(...USUAL, '--reactions', '0.7, 0.7', '--json');
    // By hand: median 0.35 sqrt 2 = 0.494975 (two measured, prior worth two).
    expect(answer.taken).toMatchObject({ reactionDogS: expect.closeTo(0.494975, 6), measured: 2 });
  });

  it('says what is too soon, and stays finite at the ends', async () => {
    const soon = await run('--speed', '9', '--distance', '0', '--json');
    expect(soon.answer).toMatchObject({ blowWhenDogAtM: 0 });
    expect(soon.answer.dogHaltsAtM).toBeGreaterThan(0);
    expect(soon.answer.cautions[0].code).toBe('too-late');
    for (const args of [
      ['--speed', '0.1', '--distance', '2000'],
      ['--speed', '25', '--distance', '3', '--reaction-dog', '0', '--reaction-handler', '0'],
      ['--speed', '5', '--distance', '50', '--pitch-hz', '50', '--humidity', '0', '--air-c', '-60'],
    ]) {
      const { exit, stdout } = await run(...args, '--json');
      expect(exit).toBe(0);
      expect(stdout).not.toMatch(/null|NaN|Infinity/);
    }
  });

  it('reads well to people, and says the defaults', async () => {
    const { stdout } = await run(...USUAL);
    expect(stdout).toMatch(/blow when the dog is at +55\.3 m/);
    expect(stdout).toContain(
      'reaction of the handler 0.3 s, of the dog 0.35 s; 15 °C, 70 % humidity, no wind',
    );
    expect(stdout).toContain('105 dB at 1 m and 3,500 Hz');
    expect(stdout).not.toMatch(/NaN|undefined|null|Infinity/);
    expect((await run(...USUAL)).stdout).toBe(stdout);
  });

  it.each([
    [[]],
    [['--speed', '5']],
    [['--speed', '0', '--distance', '60']],
    [['--speed', 'fast', '--distance', '60']],
    [['--speed', '5', '--distance', '-1']],
    [[...USUAL, '--pitch-hz', '60000']],
    [[...USUAL, '--humidity', '101']],
    [[...USUAL, '--reactions', '0.4,']],
  ])('%j is wrong usage', async (args) => {
    const { exit, stderr, answer } = await run(...args, '--json');
    expect(exit).toBe(2);
    expect(answer.error.code).toBe('USAGE');
    expect(stderr).toMatch(/^error\[USAGE\]: [^\n]+\n$/);
  });
});

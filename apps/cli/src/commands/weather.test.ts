import { describe, expect, it } from 'vitest';
import { runInMemory } from '../memory-terminal.fixture.ts';

const run = (...args: readonly string[]) => runInMemory(['weather', ...args], []);

describe('weather', () => {
  it('answers with the contract’s fields, from published values', async () => {
    const { exit, answer, stderr } = await run('--air-c', '30', '--humidity', '80', '--json');
    expect({ exit, stderr }).toEqual({ exit: 0, stderr: '' });
    expect(Object.keys(answer).slice(0, 5)).toEqual([
      'heatIndexC',
      'wetBulbC',
      'wbgtC',
      'level',
      'apparentC',
    ]);
    // 86 F and 80 %: 37.7 C in a public test suite (one decimal); WBGT 34.245 in another.
    expect(Math.abs(answer.heatIndexC - 37.7)).toBeLessThan(0.05);
    expect(answer.wbgtC).toBeCloseTo(34.245, 3);
    // Stull 2011, worked example: 20 C and 50 % make 13.7 C.
    const mild = (await run('--air-c', '20', '--humidity', '50', '--json')).answer;
    expect(mild.wetBulbC).toBeCloseTo(13.7, 1);
    expect([mild.level, answer.level]).toEqual(['fine', 'stop']);
    for (const one of answer.cautions) {
      expect(one.source).toMatch(/^[A-Z][A-Za-z0-9-]+$|^common practice$/);
      expect(one.sentence).toMatch(/(vet’s word|landowner’s word) goes first\.$|local rules go first\.$/);
    }
  });

  it('sun, wind, age, load and water change what is said', async () => {
    const codes = async (...more: string[]) =>
      (await run('--air-c', '26', '--humidity', '40', ...more, '--json')).answer.cautions.map(
        ({ code }: { code: string }) => code,
      );
    expect(await codes('--sun', '1')).toContain('in-the-sun');
    expect(await codes('--age-months', '5')).toContain('puppy');
    expect(await codes()).toContain('age-not-known');
    expect(await codes('--minutes-week', '300', '--jumps-week', '90')).toEqual(
      expect.arrayContaining(['load-minutes', 'load-jumps']),
    );
    expect(await codes('--water-c', '5')).toContain('cold-water');
    const windy = (await run('--air-c', '0', '--humidity', '70', '--wind-mps', '15', '--json')).answer;
    expect(windy.level).toBe('short');
  });

  it('can’t say a wet bulb in great cold, and says so', async () => {
    const { answer } = await run('--air-c', '-30', '--humidity', '70', '--json');
    expect(answer.wetBulbC).toBeNull();
    expect((await run('--air-c', '-30', '--humidity', '70')).stdout).toMatch(/wet bulb +can’t say/);
  });

  it('reads well to people, and says what was taken', async () => {
    const { stdout } = await run('--air-c', '30', '--humidity', '40');
    expect(stdout).toMatch(/^Short, or not at all\.\n/);
    expect(stdout).toContain('30 °C: 8 reps and 10 minutes at the very most, or none');
    expect(stdout).toContain('Taken: no wind; sun not told');
    expect(stdout).toContain('No threshold of any of them is validated for dogs');
    expect(stdout).not.toMatch(/NaN|undefined|null|Infinity/);
  });

  it.each([
    [[]],
    [['--air-c', '20']],
    [['--air-c', 'warm', '--humidity', '50']],
    [['--air-c', '20', '--humidity', '150']],
    [['--air-c', '20', '--humidity', '50', '--sun', '2']],
  ])('%j is wrong usage', async (args) => {
    const { exit, stderr } = await run(...args);
    expect(exit).toBe(2);
    expect(stderr).toMatch(/^error\[USAGE\]: [^\n]+\n$/);
  });
});

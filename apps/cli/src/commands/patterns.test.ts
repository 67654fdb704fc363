import { describe, expect, it } from 'vitest';
import { runInMemory } from '../memory-terminal.fixture.ts';

const line = (id: string, kind: string, minute: number, body: object) =>
  JSON.stringify({
    id,
    kind,
    at: new Date(Date.parse('2026-03-01T09:00:00Z') + minute * 60_000).toISOString(),
    body,
  });
/** Sixty casts, left and right in turn: the left missed 2 in 3, the right never. */
const LINES = [
  line('1', 'dog-added', 0, { dog: 'sorrel', name: 'Sorrel' }),
  line('2', 'session-opened', 1, { session: 's1', dog: 'sorrel' }),
  ...Array.from({ length: 60 }, (_, n) =>
    line(`r${n}`, 'rep-recorded', 2 + n, {
      rep: `r${n}`,
      session: 's1',
      legs: [
        {
          skill: n % 2 === 0 ? 'cast-left' : 'cast-right',
          ask: { distanceM: 20, castM: 15 },
          grade: n % 2 === 0 && n % 3 !== 0 ? 'missed' : 'good',
        },
      ],
    }),
  ),
];
const NAMES = [
  'expects-the-whistle',
  'one-sided',
  'only-at-home',
  'distance-wall',
  'tires-late',
  'late-whistle',
  'too-big-steps',
];

describe('patterns', () => {
  it("answers with the contract's fields for all seven, what can't be said with its reason", async () => {
    const { exit, answer, stderr } = await runInMemory(['patterns', 'j', '--dog', 'sorrel', '--json'], LINES);
    expect({ exit, stderr }).toEqual({ exit: 0, stderr: '' });
    expect(answer.patterns.map((one: { pattern: string }) => one.pattern)).toEqual(NAMES);
    for (const { strength, probability, evidence, sentence, state, tooLittle } of answer.patterns) {
      expect(Number.isFinite(strength.mean)).toBe(true);
      expect(strength.sd).toBeGreaterThan(0);
      expect(probability >= 0 && probability <= 1).toBe(true);
      expect(evidence.every((one: { legs: number; share: number }) => one.legs >= 0 && one.share <= 1)).toBe(
        true,
      );
      expect(sentence.length).toBeGreaterThan(10);
      expect(tooLittle === undefined).toBe(state !== 'cant-say');
    }
    const sides = answer.patterns[1];
    expect(sides).toMatchObject({
      state: 'looks-like',
      weaker: 'left',
      evidence: [
        { of: 'left', legs: 30, share: 20 / 30 },
        { of: 'right', legs: 30, share: 0 },
      ],
    });
    // theta_left - theta_right: the left is the harder one.
    expect(sides.strength.mean).toBeLessThan(0);
    expect(sides.probability).toBeGreaterThan(0.8);
  });

  it('reads well to people', async () => {
    const { exit, stdout } = await runInMemory(['patterns', 'j', '--dog', 'sorrel'], LINES);
    expect(exit).toBe(0);
    expect(stdout).toContain('missed 7 in 10 to the left (30 casts) and none to the right (30 casts)');
    expect(stdout).toContain('Can’t say yet');
    expect(stdout).not.toMatch(/NaN|undefined|null/);
  });

  it('an unknown dog is bad input, naming what there is; no dog at all wrong usage', async () => {
    const unknown = await runInMemory(['patterns', 'j', '--dog', 'teal'], LINES);
    expect(unknown.exit).toBe(3);
    expect(unknown.stderr).toMatch(/^error\[UNKNOWN_DOG\] j: no dog teal; it has sorrel/);
    expect((await runInMemory(['patterns', 'j'], LINES)).exit).toBe(2);
  });
});

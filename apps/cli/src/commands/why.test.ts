import { describe, expect, it } from 'vitest';
import { runInMemory } from '../memory-terminal.fixture.ts';

const line = (id: string, kind: string, minute: number, body: object) =>
  JSON.stringify({ id, kind, at: `2026-03-01T09:${String(minute).padStart(2, '0')}:00Z`, body });
const rep = (name: string, minute: number, grade: string, ask: object, more: object = {}) =>
  line(name, 'rep-recorded', minute, {
    rep: name,
    session: 's1',
    legs: [{ skill: 'stop', ask, grade, ...more }],
  });
const FAR = { distanceM: 80, wayFraction: 0.7, temptation: 'thrown-dummy', handlerPlace: 'apart' };
const OPENED = [
  line('1', 'dog-added', 0, { dog: 'sorrel', name: 'Sorrel' }),
  line('2', 'session-opened', 1, { session: 's1', dog: 'sorrel' }),
];
const LINES = [
  ...OPENED,
  rep('r1', 2, 'missed', { distanceM: 20 }),
  ...[3, 4, 5, 6].map((minute) => rep(`r${minute - 1}`, minute, 'good', { distanceM: 10 })),
  rep('r6', 7, 'missed', FAR),
  rep('r7', 8, 'missed', FAR, { cause: 'handler' }),
  rep('r8', 9, 'good', { distanceM: 10 }),
  line('s', 'rep-struck', 10, { rep: 'r8' }),
];
const why = (name: string, ...more: readonly string[]) =>
  runInMemory(['why', 'j', '--rep', name, ...more], LINES);

describe('why', () => {
  it("answers with the contract's fields, the parts adding up to the stretch", async () => {
    const { exit, answer, stderr } = await why('r6', '--json');
    expect({ exit, stderr }).toEqual({ exit: 0, stderr: '' });
    expect(answer.rep).toBe('r6');
    const [leg] = answer.legs;
    expect(leg).toMatchObject({ leg: 0, since: { rep: 'r5' }, verdict: 'too-big-a-step' });
    const distance = leg.changed.find((one: { factor: string }) => one.factor === 'distance');
    expect(distance).toMatchObject({ from: 10, to: 80 });
    const sum = leg.changed.reduce((so: number, one: { logit: number }) => so + one.logit, 0);
    expect(sum).toBeCloseTo(leg.stretch, 9);
    expect(leg.stretch).toBeGreaterThan(1.2);
    expect(leg.chanceBefore).toBeLessThan(0.6);
  });

  it('states before each leg what replay states before it', async () => {
    const { answer: replay } = await runInMemory(['replay', 'j', '--json'], LINES);
    for (const stated of replay.legs) {
      const { answer } = await why(stated.rep, '--json');
      expect(answer.legs[stated.leg].chanceBefore).toBe(stated.chance.good);
    }
  });

  it('has null for the step of a first leg', async () => {
    const { answer } = await why('r1', '--json');
    expect(answer.legs[0]).toMatchObject({ stretch: null, since: null, changed: [], verdict: 'not-yet' });
  });

  it('reads as a sentence and a table to whoever knows no statistics', async () => {
    const { stdout } = await why('r6');
    expect(stdout).toContain('Stop: ran on. A step too many. Against the last like it that went well: ');
    expect(stdout).toMatch(/The chance of good went from \d+ to \d+ in 100\./);
    expect(stdout).toMatch(/How far out +10 m +80 m +\d\.\d\d +\d+ less/);
    expect(stdout).not.toMatch(/NaN|undefined|null/);
    expect((await why('r7')).stdout).toContain('Yours, not the dog’s.');
    expect((await why('r1')).stdout).toContain('Nothing of the kind had gone well before.');
  });

  it('answers for a rep of which no leg was graded', async () => {
    const lines = [...OPENED, line('e', 'rep-recorded', 2, { rep: 'e', session: 's1', legs: [] })];
    const { exit, stdout } = await runInMemory(['why', 'j', '--rep', 'e'], lines);
    expect({ exit, isSaid: stdout.length > 10 }).toEqual({ exit: 0, isSaid: true });
  });

  it('refuses a rep that is not there, was struck, or whose session is not there, and says which', async () => {
    const unknown = await why('r99');
    expect(unknown.exit).toBe(3);
    // The newest first; a struck one is not offered.
    expect(unknown.stderr).toBe('error[UNKNOWN_REP] j: no rep r99; it has r7, r6, r5, r4, r3, r2, r1\n');
    const struck = await why('r8');
    expect(struck.exit).toBe(3);
    expect(struck.stderr).toMatch(/^error\[UNKNOWN_REP\] j: rep r8 was struck out[^\n]*\n$/);
    const aside = [...LINES, line('a', 'rep-recorded', 11, { rep: 'a', session: 'elsewhere', legs: [] })];
    const { exit, stderr, answer } = await runInMemory(['why', 'j', '--rep', 'a', '--json'], aside);
    expect(exit).toBe(3);
    expect(stderr).toContain('1 of its facts is set aside');
    expect(answer.error).toMatchObject({ code: 'UNKNOWN_REP', file: 'j', line: null, field: 'rep' });
  });
});

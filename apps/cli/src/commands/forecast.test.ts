import { describe, expect, it } from 'vitest';
import { runInMemory } from '../memory-terminal.fixture.ts';

const at = (hour: number) => new Date(Date.parse('2026-03-01T09:00:00Z') + hour * 3_600_000).toISOString();
const line = (id: string, kind: string, hour: number, body: object) =>
  JSON.stringify({ id, kind, at: at(hour), body });

/** Ten sessions, every third day, of four stops; and four goals. */
const LINES = [
  line('d', 'dog-added', 0, { dog: 'sorrel', name: 'Sorrel' }),
  line('e', 'dog-added', 0, { dog: 'teal', name: 'Teal' }),
  ...Array.from({ length: 10 }, (_, s) => [
    line(`s${s}`, 'session-opened', 1 + 72 * s, { session: `s${s}`, dog: 'sorrel' }),
    ...Array.from({ length: 4 }, (__, r) =>
      line(`r${s}-${r}`, 'rep-recorded', 1.1 + 72 * s + r / 60, {
        rep: `r${s}-${r}`,
        session: `s${s}`,
        legs: [
          { skill: 'stop', ask: { distanceM: 20 + 5 * r }, grade: (s + r) % 4 === 0 ? 'missed' : 'good' },
        ],
      }),
    ),
  ]).flat(),
  ...[
    {
      goal: 'far',
      dog: 'sorrel',
      name: 'Stop at sixty',
      asks: [{ skill: 'stop', ask: { distanceM: 60 }, chance: 0.75 }],
    },
    { goal: 'had', dog: 'sorrel', name: 'Had', asks: [{ skill: 'stop', ask: {}, chance: 0.1 }] },
    { goal: 'new', dog: 'sorrel', name: 'New', asks: [{ skill: 'heel', ask: {}, chance: 0.8 }] },
    { goal: 'none', dog: 'teal', name: 'None', asks: [{ skill: 'stop', ask: {}, chance: 0.5 }] },
  ].map((body, n) => line(`g${n}`, 'goal-set', 700 + n, body)),
];
const run = (...args: readonly string[]) => runInMemory(['forecast', 'j', ...args], LINES);

describe('forecast', () => {
  it('answers with the contract’s fields', async () => {
    const { exit, answer, stderr } = await run('--goal', 'far', '--json');
    expect({ exit, stderr }).toEqual({ exit: 0, stderr: '' });
    expect(answer.now.chance).toBeGreaterThan(0);
    expect(answer.now.interval90[0]).toBeLessThan(answer.now.interval90[1]);
    for (const week of answer.weeks)
      expect(Object.keys(week)).toEqual(['week', 'probabilityReady', 'chance', 'interval90']);
    expect(Object.keys(answer.readyInWeeks)).toEqual(['p10', 'p50', 'p90']);
    expect(answer.first[0]).toMatchObject({ skill: 'stop', factor: 'distance' });
    expect(answer.first[0].gain).toBeGreaterThan(0);
  });

  it('the same seed gives the same bytes, another seed other futures; the pace told is played', async () => {
    const once = await run('--goal', 'far', '--json', '--seed', '5');
    expect((await run('--goal', 'far', '--json', '--seed', '5')).stdout).toBe(once.stdout);
    expect((await run('--goal', 'far', '--json', '--seed', '6')).stdout).not.toBe(once.stdout);
    const idle = await run('--goal', 'far', '--json', '--per-week', '0');
    const busy = await run('--goal', 'far', '--json', '--per-week', '4.5');
    expect([idle.answer.perWeek, busy.answer.perWeek]).toEqual([0, 4.5]);
    expect(busy.answer.weeks[20].probabilityReady).toBeGreaterThan(idle.answer.weeks[20].probabilityReady);
  });

  it('reads well to people', async () => {
    for (const goal of ['far', 'had', 'new', 'none']) {
      const { exit, stdout } = await run('--goal', goal);
      expect(exit).toBe(0);
      expect(stdout).not.toMatch(/NaN|undefined|null|Infinity/);
    }
    expect((await run('--goal', 'far')).stdout).toMatch(/^Sorrel: Stop at sixty\n.*eeks?.*\n/);
    expect((await run('--goal', 'had')).stdout).toContain('Looks ready now');
    expect((await run('--goal', 'new')).stdout).toContain('Not known yet: walking to heel (never worked).');
  });

  it('can’t say yet is an answer', async () => {
    const { exit, answer } = await run('--goal', 'none', '--json');
    expect(exit).toBe(0);
    expect(answer).toMatchObject({ cantSay: 'no-session', now: null, weeks: [], first: [] });
    expect((await run('--goal', 'none')).stdout).toContain('Can’t say yet: Teal has no session on record.');
  });

  it('an unknown goal is bad input, naming what there is; a pace or a seed that is none wrong usage', async () => {
    const unknown = await run('--goal', 'gone', '--json');
    expect(unknown.exit).toBe(3);
    expect(unknown.answer.error).toMatchObject({ code: 'UNKNOWN_GOAL', field: 'goal' });
    expect(unknown.stderr).toMatch(/^error\[UNKNOWN_GOAL\] j: no goal gone; it has far, had, new, none\n$/);
    const earlier = await run('--goal', 'far', '--at', at(100));
    expect(earlier.stderr).toMatch(/^error\[UNKNOWN_GOAL\] j: no goal far; it names no goal/);
    for (const wrong of [
      [],
      ['--goal', 'far', '--per-week', '-1'],
      ['--goal', 'far', '--per-week', '99'],
      ['--goal', 'far', '--per-week', 'many'],
      ['--goal', 'far', '--seed', '1.5'],
    ])
      expect((await run(...wrong)).exit).toBe(2);
  });
});

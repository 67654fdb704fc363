import { validateFact } from '@sedgeline/journal';
import { describe, expect, it } from 'vitest';
import { runInMemory } from './memory-terminal.fixture.ts';

const line = (id: string, kind: string, minute: number, body: object) =>
  JSON.stringify({ id, kind, at: `2026-03-01T09:${String(minute).padStart(2, '0')}:00Z`, body });
const leg = (grade: string, more: object = {}) => ({
  skill: 'stop',
  ask: { distanceM: 20, wayFraction: 0.5 },
  grade,
  ...more,
});
const GOOD = [
  line('1', 'dog-added', 0, { dog: 'sorrel', name: 'Sorrel', born: '2024-05-01' }),
  line('2', 'ground-added', 0, { ground: 'acre', name: 'Long Acre' }),
  line('3', 'session-opened', 1, { session: 's1', dog: 'sorrel', ground: 'acre' }),
  line('4', 'rep-recorded', 2, { rep: 'r1', session: 's1', legs: [leg('good')] }),
  line('5', 'rep-recorded', 3, { rep: 'r2', session: 's1', legs: [leg('missed', { cause: 'handler' })] }),
  line('6', 'rep-recorded', 4, { rep: 'r3', session: 's1', legs: [leg('fair')] }),
];

const run = (args: readonly string[], lines: readonly string[] = GOOD) => runInMemory(args, lines);

const sum = (chance: { missed: number; fair: number; good: number }) =>
  chance.missed + chance.fair + chance.good;

describe('check', () => {
  it('counts facts, kinds, unknown ones and repeats', async () => {
    const { exit, answer, stderr } = await run(
      ['check', 'j', '--json'],
      [...GOOD, GOOD[0]!, line('7', 'moon-seen', 5, {})],
    );
    expect({ exit, stderr }).toEqual({ exit: 0, stderr: '' });
    expect(answer).toMatchObject({ facts: 7, unknown: 1, repeats: 1, warnings: [], errors: [] });
    expect(answer.kinds).toMatchObject({ 'dog-added': 1, 'rep-recorded': 3, 'moon-seen': 1 });
  });

  it('names every bad line with its field, exits 3, and says so in one line', async () => {
    const bad = [
      ...GOOD,
      '{"id":',
      line('8', 'rep-recorded', 6, { rep: 'r9', session: 'nowhere', legs: [] }),
    ];
    const { exit, answer, stderr } = await run(['check', 'j', '--json'], bad);
    expect(exit).toBe(3);
    expect(
      answer.errors.map((error: { line: number; code: string; field: string }) => [
        error.line,
        error.code,
        error.field,
      ]),
    ).toEqual([
      [7, 'LINE_NOT_JSON', ''],
      [8, 'UNKNOWN_SESSION', 'body.session'],
    ]);
    expect(stderr.split('\n')).toHaveLength(2);
    expect(stderr).toMatch(/^error\[[A-Z_]+\] j:7: /);
  });
});

describe('answers', () => {
  it('chance: three chances that add up, intervals around them, parts that add up to the log-odds', async () => {
    const { exit, answer } = await run([
      'chance',
      'j',
      '--dog',
      'sorrel',
      '--skill',
      'stop',
      '--ask',
      '{"distanceM":20}',
      '--json',
    ]);
    expect(exit).toBe(0);
    expect(sum(answer.chance)).toBeCloseTo(1, 12);
    const [low, high] = answer.interval90.good;
    expect(low).toBeLessThan(answer.chance.good);
    expect(high).toBeGreaterThan(answer.chance.good);
    const parts = answer.because.reduce((so: number, part: { logit: number }) => so + part.logit, 0);
    expect(parts).toBeCloseTo(answer.logOdds.mean, 9);
    expect(answer.legs).toBe(3);
  });

  it('chance: new ground takes a step down, and a named moment is answered from what was known then', async () => {
    const chance = async (...more: string[]) =>
      (
        await run([
          'chance',
          'j',
          '--dog',
          'sorrel',
          '--skill',
          'stop',
          '--ask',
          '{"distanceM":20}',
          '--json',
          ...more,
        ])
      ).answer;
    const home = await chance('--ground', 'acre');
    expect((await chance()).logOdds.mean).toBeGreaterThan(home.logOdds.mean);
    expect((await chance('--at', '2026-03-01T09:01:30Z')).legs).toBe(0);
    expect((await chance('--at', '2026-03-01T09:02:00Z')).legs).toBe(1);
  });

  it('replay: every leg with what was stated before it; weight 0 for what is not held against the dog', async () => {
    const { answer } = await run(['replay', 'j', '--json']);
    expect(
      answer.legs.map((one: { rep: string; leg: number; weight: number }) => [one.rep, one.leg, one.weight]),
    ).toEqual([
      ['r1', 0, 1],
      ['r2', 0, 0],
      ['r3', 0, 1],
    ]);
    for (const one of answer.legs) expect(sum(one.chance)).toBeCloseTo(1, 12);
    // Log loss by hand from the stated chances of the two legs that are scored.
    const [good, , fair] = answer.legs;
    expect(answer.scores.logLoss).toBeCloseTo(
      -(Math.log(good.chance.good) + Math.log(fair.chance.fair)) / 2,
      12,
    );
    expect(answer.scores.legs).toBe(2);
    expect(Object.keys(answer.scores.baselines)).toEqual(['always-average', 'recent-average']);
  });

  it('standing: skills with ability, named asks with intervals, what is unproved, when it was last worked', async () => {
    const { answer } = await run(['standing', 'j', '--dog', 'sorrel', '--json']);
    expect(answer).toMatchObject({ dog: 'sorrel', at: '2026-03-01T09:04:00.000Z' });
    const [stop] = answer.skills;
    expect(stop).toMatchObject({ skill: 'stop', legs: 3, lastWorked: '2026-03-01T09:04:00.000Z' });
    expect(stop.asks.map((ask: { name: string }) => ask.name)).toEqual(['easy', 'usual', 'far']);
    expect(stop.unproved).toContain('dummy-out');
    expect(stop.asks[0].chance).toBeGreaterThan(stop.asks[2].chance);
  });

  it('next: a rep with its chances, its layout, its fall-back, reasons and one sentence', async () => {
    const { answer } = await run(['next', 'j', '--session', 's1', '--json']);
    expect(answer.do).toBe('rep');
    expect(answer.rep).toMatchObject({ n: 4, layout: { sendFrom: { eastM: 0, northM: 0 } } });
    expect(answer.rep.easier.legs.length).toBeGreaterThan(0);
    expect(answer.easier.purpose).toBe('easier');
    expect(answer.reasons[0].code).toMatch(/^[a-z-]+$/);
    expect(answer.sentence).toMatch(/^[A-Z].*\.$/);
  });

  it('demo: the same bytes for the same seed, every line a good fact, and every command answers it', async () => {
    const demo = async (seed: string) =>
      (await run(['demo', '--seed', seed, '--out', 'out'])).terminal.files.get('out')!;
    const text = await demo('1');
    expect(await demo('1')).toBe(text);
    expect(await demo('2')).not.toBe(text);
    const lines = text.trimEnd().split('\n');
    for (const one of lines) expect(validateFact(JSON.parse(one)).ok).toBe(true);
    const fact = (kind: string) =>
      JSON.parse(lines.findLast((one) => one.includes(`"kind":"${kind}"`))!).body;
    const { dog } = fact('dog-added');
    const { session } = fact('session-opened');
    const { rep } = JSON.parse(lines.filter((one) => one.includes('"kind":"rep-recorded"'))[40]!).body;
    for (const args of [
      ['check', 'j'],
      ['replay', 'j', '--dog', dog],
      ['standing', 'j', '--dog', dog],
      ['chance', 'j', '--dog', dog, '--skill', 'line', '--ask', '{}'],
      ['next', 'j', '--session', session],
      ['why', 'j', '--rep', rep],
    ]) {
      const { exit, answer, stderr } = await run([...args, '--json'], lines);
      expect({ args, exit, stderr }).toEqual({ args, exit: 0, stderr: '' });
      expect(JSON.stringify(answer)).not.toContain('null,null');
      const people = await run(args, lines);
      expect(people.stdout.length).toBeGreaterThan(20);
      expect(people.stdout).not.toMatch(/NaN|undefined|Infinity/);
    }
  });
});

describe('errors', () => {
  it.each([
    [[], 2, 'USAGE'],
    [['fly', 'j'], 2, 'USAGE'],
    [['standing', 'j'], 2, 'USAGE'],
    [['chance', 'j', '--dog', 'sorrel', '--skill', 'yodel', '--ask', '{}'], 2, 'USAGE'],
    [['next', 'j', '--session', 's1', '--seed', '-1'], 2, 'USAGE'],
    [['standing', 'j', '--dog', 'sorrel', '--at', 'yesterday'], 2, 'USAGE'],
    [['chance', 'j', '--dog', 'sorrel', '--skill', 'stop', '--ask', '{'], 3, 'ASK_NOT_GOOD'],
    [['chance', 'j', '--dog', 'sorrel', '--skill', 'stop', '--ask', '{"distanceM":900}'], 3, 'ASK_NOT_GOOD'],
    [['standing', 'j', '--dog', 'rover'], 3, 'UNKNOWN_DOG'],
    [['replay', 'j', '--dog', 'rover'], 3, 'UNKNOWN_DOG'],
    [['next', 'j', '--session', 'never'], 3, 'UNKNOWN_SESSION'],
    [['why', 'j'], 2, 'USAGE'],
    [['why', 'j', '--rep', 'never'], 3, 'UNKNOWN_REP'],
    [['replay', 'nofile'], 5, 'FILE_UNREADABLE'],
  ] as const)('%j exits %i with %s, in one line and as JSON', async (args, exit, code) => {
    const plain = await run(args);
    expect(plain.exit).toBe(exit);
    expect(plain.stdout).toBe('');
    expect(plain.stderr).toMatch(/^error\[[A-Z_]+\][^\n]*\n$/);
    expect(plain.stderr).toContain(`error[${code}]`);
    expect(plain.stderr).not.toMatch(/ at .*\.ts/);
    const json = await run([...args, '--json']);
    expect(json.exit).toBe(exit);
    expect(json.answer.error.code).toBe(code);
    expect(Object.keys(json.answer.error)).toEqual(['code', 'message', 'file', 'line', 'field']);
  });

  it('names what there is', async () => {
    expect((await run(['standing', 'j', '--dog', 'rover'])).stderr).toContain('sorrel');
    expect((await run(['next', 'j', '--session', 'never'])).stderr).toContain('s1');
  });

  it('refuses a journal with bad lines, naming the first and how many; --keep-going answers and counts them', async () => {
    const bad = [...GOOD, 'nonsense', '{"id":"9"}'];
    const refused = await run(['replay', 'j'], bad);
    expect(refused.exit).toBe(3);
    expect(refused.stderr).toMatch(/^error\[LINE_NOT_JSON\] j:7: .*1 more bad line/);
    const kept = await run(['replay', 'j', '--keep-going', '--json'], bad);
    expect(kept).toMatchObject({ exit: 0, answer: { skipped: 2 } });
    expect(kept.answer.legs).toHaveLength(3);
  });

  it('sets aside what a merge may bring later, and counts it', async () => {
    const { exit, answer } = await run(
      ['replay', 'j', '--json'],
      [...GOOD, line('8', 'rep-recorded', 6, { rep: 'r9', session: 'elsewhere', legs: [] })],
    );
    expect({ exit, setAside: answer.setAside }).toEqual({ exit: 0, setAside: 1 });
  });
});

import { describe, expect, it } from 'vitest';
import { CliFailure } from '../cli-failure.ts';
import { runProgram } from '../program.ts';
import type { Terminal } from '../terminal.ts';

const line = (id: string, kind: string, minute: number, body: object) =>
  JSON.stringify({
    id: String(id).padStart(4, '0'),
    kind,
    at: new Date(Date.UTC(2026, 2, 1, 9, minute)).toISOString(),
    body,
  });
const recall = { skill: 'recall', ask: { distanceM: 15 }, grade: 'good' };
const JOURNAL = [
  line('1', 'dog-added', 0, { dog: 'sorrel', name: 'Sorrel', born: '2024-05-01' }),
  line('2', 'layout-drawn', 0, { layout: 'bare', handlerAt: { eastM: 0, northM: 0 }, things: [] }),
  line('3', 'session-opened', 1, { session: 's1', dog: 'sorrel' }),
  ...Array.from({ length: 12 }, (_, n) =>
    line(`${10 + n}`, 'rep-recorded', 2 + n, { rep: `r${n}`, session: 's1', legs: [recall] }),
  ),
].join('\n');

async function plan(request: unknown, ...more: readonly string[]) {
  const out = { stdout: '', stderr: '' };
  const files = new Map([
    ['j', JOURNAL],
    ['r', typeof request === 'string' ? request : JSON.stringify(request)],
  ]);
  const terminal: Terminal = {
    readFile: (path) => {
      const text = files.get(path);
      if (text === undefined)
        throw new CliFailure({ code: 'FILE_UNREADABLE', message: 'cannot read it', exit: 5, file: path });
      return text;
    },
    readBytes: () => {
      throw new Error('no bytes are read here');
    },
    writeNewFile: () => undefined,
    out: (text) => {
      out.stdout += text;
    },
    err: (text) => {
      out.stderr += text;
    },
  };
  const exit = await runProgram(['plan', 'j', '--request', 'r', ...more], terminal);
  return { exit, ...out };
}

const asJson = async (request: unknown, ...more: readonly string[]) => {
  const { exit, stdout, stderr } = await plan(request, '--json', ...more);
  return { exit, stderr, answer: JSON.parse(stdout) };
};

describe('plan', () => {
  it('answers with the fields of the contract, every rep with its sentence', async () => {
    const { exit, answer, stderr } = await asJson({ dog: 'sorrel', minutes: 12 }, '--seed', '5');
    expect({ exit, stderr }).toEqual({ exit: 0, stderr: '' });
    expect(answer).toMatchObject({ dog: 'sorrel', seed: 5, minutes: 12 });
    expect(answer.reps.length).toBeGreaterThan(2);
    for (const [n, rep] of answer.reps.entries()) {
      expect(Object.keys(rep)).toEqual(
        expect.arrayContaining([
          'n',
          'purpose',
          'clean',
          'side',
          'legs',
          'layout',
          'before',
          'easier',
          'reasons',
          'sentence',
        ]),
      );
      expect(rep.n).toBe(n + 1);
      expect(rep.sentence).toMatch(/^[A-Z].*\.$/);
      for (const { chance } of rep.legs) expect(chance.missed + chance.fair + chance.good).toBeCloseTo(1, 9);
    }
    expect(answer.minutesExpected.p50).toBeLessThanOrEqual(12);
    expect(answer.minutesExpected.p90).toBeGreaterThan(answer.minutesExpected.p50);
    expect(answer.rules).toHaveLength(10);
    for (const caution of answer.cautions) expect(caution.sentence).toMatch(/\.$/);
  });

  it('is the same for the same seed, to the byte', async () => {
    const request = { dog: 'sorrel', minutes: 12 };
    expect((await plan(request, '--json')).stdout).toBe(
      (await plan(request, '--json', '--seed', '0')).stdout,
    );
  });

  it('prints a page that can be walked: reps by number, what to lay out, and the rules', async () => {
    const { exit, stdout } = await plan({ dog: 'sorrel', minutes: 12 });
    expect(exit).toBe(0);
    expect(stdout).toContain('Sorrel: a session in 12 minutes');
    expect(stdout).toMatch(/\n1\. Check\./);
    expect(stdout).toMatch(/\. Finish\./);
    expect(stdout).toContain('Have in mind:');
    expect(stdout).not.toMatch(/undefined|NaN/);
  });

  it('says in words why there is no session', async () => {
    const { exit, stdout } = await plan({ dog: 'sorrel', minutes: 12, weather: { airC: 36 } });
    expect(exit).toBe(0);
    expect(stdout).toContain('No session is planned.');
    expect(stdout).toContain('too hot to work');
  });

  it.each([
    [{ minutes: 12 }, 'dog'],
    [{ dog: 'sorrel' }, 'minutes'],
    [{ dog: 'sorrel', minutes: 0 }, 'minutes'],
    [{ dog: 'sorrel', minutes: '12' }, 'minutes'],
    [{ dog: 'sorrel', minutes: 12, skills: ['fly'] }, 'skills[0]'],
    [{ dog: 'sorrel', minutes: 12, skills: 'recall' }, 'skills'],
    [{ dog: 'sorrel', minutes: 12, kit: { posts: 1, dummies: -1 } }, 'kit.dummies'],
    [{ dog: 'sorrel', minutes: 12, kit: { posts: 0.5, dummies: 1 } }, 'kit.posts'],
    [{ dog: 'sorrel', minutes: 12, weather: { airC: 'hot' } }, 'weather.airC'],
    [
      { dog: 'sorrel', minutes: 12, focus: { skill: 'line', ask: { distanceM: 500 } } },
      'focus.ask.distanceM',
    ],
    [{ dog: 'sorrel', minutes: 12, focus: {} }, 'focus.skill'],
    [{ dog: 'sorrel', minutes: 12, notBefore: 'tomorrow' }, 'notBefore'],
    [[], 'request'],
    ['{"dog":', 'request'],
  ])('refuses %j, naming the field %s', async (request, field) => {
    const { exit, answer, stderr } = await asJson(request);
    expect(exit).toBe(3);
    expect(answer.error).toMatchObject({ code: 'REQUEST_NOT_GOOD', field, file: 'r' });
    expect(stderr).toMatch(/^error\[REQUEST_NOT_GOOD\] r: .*\n$/);
  });

  it('names the dogs and layouts there are when asked for another', async () => {
    const dog = await asJson({ dog: 'teal', minutes: 12 });
    expect(dog.exit).toBe(3);
    expect(dog.answer.error).toMatchObject({ code: 'UNKNOWN_DOG', field: 'dog' });
    expect(dog.stderr).toContain('it has sorrel');
    const layout = await asJson({ dog: 'sorrel', minutes: 12, layout: 'acre' });
    expect(layout.answer.error).toMatchObject({ code: 'UNKNOWN_LAYOUT', field: 'layout' });
    expect((await asJson({ dog: 'sorrel', minutes: 12, layout: 'bare' })).exit).toBe(0);
  });

  it('plans for the moment of the request before that of the command', async () => {
    const late = { dog: 'sorrel', minutes: 12, notBefore: '2026-06-01T09:00:00Z' };
    const { answer } = await asJson(late, '--at', '2026-03-02T09:00:00Z');
    expect(answer.cautions.map(({ code }: { code: string }) => code)).toContain('long-lay-off');
  });

  it('tells a request that is not there from one that is not good', async () => {
    const missing = await plan({ dog: 'sorrel', minutes: 12 }, '--request', 'nowhere');
    expect(missing.exit).toBe(5);
    expect(missing.stderr).toMatch(/^error\[FILE_UNREADABLE\] nowhere: /);
  });
});

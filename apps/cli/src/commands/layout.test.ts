import { describe, expect, it } from 'vitest';
import { runInMemory } from '../memory-terminal.fixture.ts';

const DRAWN = {
  layout: 'l1',
  handlerAt: { eastM: 100, northM: 0 },
  things: [
    { thing: 'p1', kind: 'post', eastM: 130, northM: 40, label: 'oak post' },
    { thing: 'd1', kind: 'dummy', eastM: 100, northM: 20 },
    { thing: 'h1', kind: 'hazard', eastM: 101, northM: 10, label: 'old wire' },
  ],
  windFromDeg: 270,
  windMPerS: 3,
};
const run = (drawn: unknown, ...args: readonly string[]) =>
  runInMemory(['layout', 'j', ...args], [typeof drawn === 'string' ? drawn : JSON.stringify(drawn)]);

describe('layout', () => {
  it('answers with the contract’s fields, worked by hand', async () => {
    const { exit, answer, stderr } = await run(DRAWN, '--json');
    expect({ exit, stderr }).toEqual({ exit: 0, stderr: '' });
    const [post, dummy] = answer.lines;
    expect(Object.keys(dummy).slice(0, 5)).toEqual(['to', 'distanceM', 'bearingDeg', 'paces', 'nearest']);
    expect(Object.keys(dummy.nearest)).toEqual(['thing', 'gapDeg', 'clearanceM']);
    // 30 east, 40 north: 50 m at 36.87 degrees, 66.67 paces of 0.75 m.
    expect(post).toMatchObject({ to: 'p1', distanceM: 50, bearingDeg: expect.closeTo(36.8699, 4) });
    expect(post.paces).toBeCloseTo(66.6667, 4);
    // The wire is 1 m beside the dummy's line; atan(1/10) = 5.7106 degrees.
    expect(dummy.nearest).toEqual({ thing: 'h1', gapDeg: expect.closeTo(5.7106, 4), clearanceM: 1 });
    const codes = answer.warnings.map(({ code }: { code: string }) => code);
    // The dummy lies 20 m up, upwind of the post's line: its scent drifts across. The wire is 5.2 m off that line (1 x 0.8 - 10 x 0.6).
    expect(codes).toEqual(['scent-across', 'hazard-on-line']);
    for (const { sentence } of answer.warnings) expect(sentence).toMatch(/^[A-Z].*\.$/);
  });

  it('paces as told, and the drawing’s own name may be left out', async () => {
    const { layout: _, ...nameless } = DRAWN;
    const { exit, answer } = await run(nameless, '--json', '--pace', '1');
    expect({ exit, paceM: answer.paceM, paces: answer.lines[0].paces }).toEqual({
      exit: 0,
      paceM: 1,
      paces: 50,
    });
  });

  it('has null where nothing else lies, and a warning where there is nothing to send to', async () => {
    const alone = await run({ ...DRAWN, things: DRAWN.things.slice(0, 1) }, '--json');
    expect(alone.answer.lines[0].nearest).toBeNull();
    const empty = await run({ ...DRAWN, things: [] }, '--json');
    expect(empty.answer).toMatchObject({ lines: [], warnings: [{ code: 'no-line' }] });
  });

  it('reads well to people, things by their labels', async () => {
    const { stdout } = await run(DRAWN);
    expect(stdout).toMatch(/line to +distance, m +bearing, ° +paces/);
    expect(stdout).toMatch(/oak post +50 +36\.9 +67 /);
    expect(stdout).toContain('Line to d1: old wire lies on it.');
    expect(stdout).toContain('a pace is 0.75 m');
    expect(stdout).not.toMatch(/NaN|undefined|null|Infinity/);
  });

  it('draws to scale: every place can be read back from the SVG in metres', async () => {
    const { exit, stdout, terminal } = await run(DRAWN, '--svg', 'out.svg');
    expect(exit).toBe(0);
    expect(stdout).toContain('Line to d1: old wire lies on it.');
    const svg = terminal.files.get('out.svg') ?? '';
    expect(svg).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg"[^>]*role="img"/);
    expect(svg).toMatch(/<desc[^>]*>Oak post, 50 m, 37°; dummy, 20 m, 0°; old wire, 10 m, 6°;/);
    const number = (element: string, name: string) =>
      Number(new RegExp(` ${name}="(-?[0-9.e-]+)"`).exec(element)?.[1]);
    const metres = number(svg, 'data-metres-per-unit');
    const placeM = (kind: string) => {
      const element = new RegExp(`<g [^>]*data-mark="${kind}"[^>]*>`).exec(svg)?.[0] ?? '';
      return [
        (number(element, 'data-x') - number(svg, 'data-send-x')) * metres,
        (number(svg, 'data-send-y') - number(element, 'data-y')) * metres,
      ] as const;
    };
    // Places are written to a hundredth of a unit, a tenth of a metre each here: 0.01 m is ten times that.
    const [post, dummy] = [placeM('post'), placeM('dummy')];
    expect(Math.abs(Math.hypot(...post) - 50)).toBeLessThan(0.01);
    expect(Math.abs(Math.hypot(...dummy) - 20)).toBeLessThan(0.01);
    // The way out is up: halfway between bearings 0 and 36.87, so the two lie 18.43 degrees to either side.
    const asideDeg = ([right, up]: readonly [number, number]) => (Math.atan2(right, up) * 180) / Math.PI;
    expect(asideDeg(post)).toBeCloseTo(18.43, 1);
    expect(asideDeg(dummy)).toBeCloseTo(-18.43, 1);
  });

  it.each([
    ['not JSON', 'LAYOUT_NOT_GOOD', 'layout'],
    ['[]', 'LAYOUT_NOT_GOOD', 'layout'],
    [{ layout: 'l', things: [] }, 'FIELD_MISSING', 'handlerAt'],
    [{ ...DRAWN, handlerAt: { eastM: 'NaN', northM: 0 } }, 'FIELD_TYPE', 'handlerAt.eastM'],
    [{ ...DRAWN, windFromDeg: 400 }, 'FIELD_RANGE', 'windFromDeg'],
    [
      { ...DRAWN, things: [{ thing: 'x', kind: 'tree', eastM: 1, northM: 1 }] },
      'FIELD_VALUE',
      'things[0].kind',
    ],
    [
      { ...DRAWN, things: [DRAWN.things[0], { thing: 'x', kind: 'jump', eastM: 100.3, northM: 0.3 }] },
      'THING_AT_HANDLER',
      'things[1]',
    ],
  ])('%j is bad input: %s at %s', async (drawn, code, field) => {
    const { exit, stderr, answer } = await run(drawn, '--json');
    expect(exit).toBe(3);
    expect(answer.error).toMatchObject({ code, field, file: 'j' });
    expect(stderr).toMatch(new RegExp(`^error\\[${code}\\] j: [^\\n]+\\n$`));
    expect(stderr).not.toContain('body.');
  });

  it('a missing file is the world’s failure, a pace that is none wrong usage', async () => {
    expect((await runInMemory(['layout', 'nofile'], [])).exit).toBe(5);
    expect((await runInMemory(['layout'], [])).exit).toBe(2);
    expect((await run(DRAWN, '--pace', '0')).exit).toBe(2);
    expect((await run(DRAWN, '--pace', 'NaN')).exit).toBe(2);
  });
});

import { describe, expect, it } from 'vitest';
import type { Layout, Thing } from './layout.ts';
import { layoutWarnings } from './layout-warnings.ts';

const at = (thing: string, kind: Thing['kind'], eastM: number, northM: number): Thing => ({
  thing,
  kind,
  eastM,
  northM,
});
const layout = (more: Partial<Layout>, ...things: Thing[]): Layout => ({
  handlerAt: { eastM: 0, northM: 0 },
  things,
  ...more,
});
const codes = (drawn: Layout): string[] =>
  layoutWarnings(drawn).map((one) => ('to' in one ? `${one.code} ${one.to}` : one.code));
const post = at('p', 'post', 0, 60);

describe('what a handler would call interference', () => {
  it('a clear line draws no warning: a post at 60 m and a dummy at a right angle', () => {
    expect(codes(layout({}, post, at('d', 'dummy', 40, 0)))).toEqual([]);
  });

  it('a dummy on the way: 4 m beside the line, and the line to it leads on to the post', () => {
    // At 30 m out, 4 m aside: atan(4/30) = 7.6 degrees, so from the other line the post stands beyond and in line.
    expect(codes(layout({}, post, at('d', 'dummy', 4, 30)))).toEqual(['on-the-way p', 'beyond-in-line d']);
  });

  it('a narrow gap: 12 degrees apart at the same distance, each in the other’s', () => {
    const turn = (12 * Math.PI) / 180;
    const other = at('q', 'post', 60 * Math.sin(turn), 60 * Math.cos(turn));
    expect(codes(layout({}, post, other))).toEqual(['narrow-gap p', 'narrow-gap q']);
    const [first] = layoutWarnings(layout({}, post, other));
    // Clearance by hand: 60 sin 12 = 12.475 m.
    expect(first).toMatchObject({ thing: 'q' });
    expect(first).toHaveProperty('gapDeg', expect.closeTo(12, 9));
    expect(first).toHaveProperty('clearanceM', expect.closeTo(12.4747, 4));
  });

  it('hazards on and near the line; a jump or a marker on it is none', () => {
    expect(codes(layout({}, post, at('wire', 'hazard', 1, 30)))).toEqual(['hazard-on-line p']);
    expect(codes(layout({}, post, at('wire', 'hazard', 4, 30)))).toEqual(['hazard-near-line p']);
    expect(codes(layout({}, post, at('wire', 'hazard', 6, 30)))).toEqual([]);
    expect(codes(layout({}, post, at('j', 'jump', 0, 30), at('o', 'other', 0, 20)))).toEqual([]);
  });

  it('scent that drifts across: wind from the west, a dummy 20 m west of the line', () => {
    const dummy = at('d', 'dummy', -20, 30);
    const windy = layout({ windFromDeg: 270, windMPerS: 3 }, post, dummy);
    const scent = layoutWarnings(windy).find(({ code }) => code === 'scent-across');
    expect(scent).toMatchObject({ to: 'p', thing: 'd', downwindM: expect.closeTo(20, 9) });
    // From the east it drifts away from the line; calm it drifts nowhere; 50 m away it is spent; a post has none.
    for (const none of [
      { ...windy, windFromDeg: 90 },
      { ...windy, windMPerS: 0 },
      { ...windy, windMPerS: 0.4 },
      { ...windy, things: [post, at('d', 'dummy', -50, 30)] },
      { ...windy, things: [post, at('d', 'post', -20, 30)] },
    ])
      expect(codes(none)).not.toContain('scent-across p');
  });

  it('scent along the line: a dummy upwind on the left whose wedge just opens to it, and just not', () => {
    // Wind from the north; the wedge opens 15 degrees to either side: 30 m downwind it is 8.04 m wide to a side.
    const far = at('p', 'post', 0, 40);
    const wind = { windFromDeg: 0, windMPerS: 3 };
    expect(codes(layout(wind, far, at('d', 'dummy', -8, 30)))).toContain('scent-across p');
    expect(codes(layout(wind, far, at('d', 'dummy', -8.1, 30)))).not.toContain('scent-across p');
  });

  it('sent from apart: the line past the handler, and the figures of the two places', () => {
    const sendFrom = { eastM: 0, northM: -20 };
    const drawn = layout({ sendFrom }, at('p', 'post', 2, 60));
    expect(codes(drawn)).toEqual(['passes-handler p', 'send-apart']);
    expect(layoutWarnings(drawn).at(-1)).toEqual({ code: 'send-apart', distanceM: 20, bearingDeg: 180 });
    expect(codes(layout({ sendFrom }, at('p', 'post', 60, -20)))).toEqual(['send-apart']);
  });

  it('things together, at the send point, too far, or none at all', () => {
    expect(codes(layout({}, at('d', 'dummy', 9, 9), at('e', 'dummy', 9, 9.2)))).toContain('together');
    expect(codes(layout({ sendFrom: { eastM: 5, northM: 0 } }, at('d', 'dummy', 5, 0.1)))).toContain(
      'at-send-point',
    );
    expect(codes(layout({}, at('p', 'post', 0, 401)))).toEqual(['longer-than-an-ask p']);
    expect(codes(layout({}, at('h', 'hazard', 9, 9)))).toEqual(['no-line']);
  });

  it('two things of one name can’t be told apart', () => {
    const drawn = layout({}, post, at('p', 'dummy', 40, 0), at('p', 'other', -40, 0));
    expect(layoutWarnings(drawn)).toEqual([{ code: 'same-name', thing: 'p', count: 3 }]);
  });

  it('wind told by half is told, calm needs no direction', () => {
    expect(layoutWarnings(layout({ windMPerS: 3 }, post))).toEqual([
      { code: 'wind-half-told', missing: 'windFromDeg' },
    ]);
    expect(layoutWarnings(layout({ windFromDeg: 90 }, post))).toEqual([
      { code: 'wind-half-told', missing: 'windMPerS' },
    ]);
    expect(layoutWarnings(layout({ windMPerS: 0 }, post))).toEqual([]);
  });
});

import { describe, expect, it } from 'vitest';
import type { Layout, Thing } from './layout.ts';
import { layoutLines, thingsAtHandler } from './layout-lines.ts';

const at = (thing: string, kind: Thing['kind'], eastM: number, northM: number): Thing => ({
  thing,
  kind,
  eastM,
  northM,
});
const origin = { eastM: 0, northM: 0 };
const layout = (...things: Thing[]): Layout => ({ handlerAt: origin, things });

describe('lines of a layout', () => {
  it('measures a 3-4-5 line and its paces by hand', () => {
    const [line] = layoutLines({ ...layout(at('p', 'post', 130, 40)), handlerAt: { eastM: 100, northM: 0 } });
    // 30 east and 40 north: 50 m on atan(3/4) = 36.8699 degrees; 50 / 0.75 = 66.67 paces.
    expect(line).toMatchObject({ to: 'p', distanceM: 50, nearest: null });
    expect(line!.bearingDeg).toBeCloseTo(36.8699, 4);
    expect(line!.paces).toBeCloseTo(66.6667, 4);
    expect(layoutLines(layout(at('p', 'post', 30, 40)), 1)[0]!.paces).toBe(50);
  });

  it('finds the nearest by clearance from the stretch, not by its angle nor by its distance', () => {
    // On the line north to 100: `wide` lies 10 m off beside it (gap 11.3 degrees); `far` stands in line 30 m beyond (gap 0).
    const [line] = layoutLines(
      layout(at('p', 'post', 0, 100), at('far', 'dummy', 0, 130), at('wide', 'hazard', 10, 50)),
    );
    expect(line!.nearest).toMatchObject({ thing: 'wide', clearanceM: 10 });
    expect(line!.nearest!.gapDeg).toBeCloseTo(11.3099, 4);
    const [beyond] = layoutLines(layout(at('p', 'post', 0, 100), at('far', 'dummy', 0, 130)));
    expect(beyond!.nearest).toEqual({ thing: 'far', gapDeg: 0, clearanceM: 30 });
    const [behind] = layoutLines(layout(at('p', 'post', 0, 100), at('back', 'other', 0, -7)));
    expect(behind!.nearest).toEqual({ thing: 'back', gapDeg: 180, clearanceM: 7 });
  });

  it('draws lines to posts and dummies alone; things in one place leave no clearance', () => {
    const lines = layoutLines(
      layout(at('h', 'hazard', 5, 5), at('j', 'jump', 9, 9), at('d', 'dummy', 3, 0), at('e', 'dummy', 3, 0)),
    );
    expect(lines.map(({ to }) => to)).toEqual(['d', 'e']);
    expect(lines[0]!.nearest).toEqual({ thing: 'e', gapDeg: 0, clearanceM: 0 });
  });

  it('tells the wind square to a line, from the left positive, and nothing where it is told by half', () => {
    const north = layout(at('p', 'post', 0, 50));
    // Wind from the west, 270 degrees: a line to the north has all of it from its left.
    expect(layoutLines({ ...north, windFromDeg: 270, windMPerS: 4 })[0]!.windAcrossMPerS).toBeCloseTo(4, 12);
    expect(layoutLines({ ...north, windFromDeg: 45, windMPerS: 4 })[0]!.windAcrossMPerS).toBeCloseTo(
      -2.8284,
      4,
    );
    expect(layoutLines({ ...north, windMPerS: 0 })[0]!.windAcrossMPerS).toBe(0);
    expect(layoutLines({ ...north, windMPerS: 4 })[0]).not.toHaveProperty('windAcrossMPerS');
    expect(layoutLines({ ...north, windFromDeg: 9 })[0]).not.toHaveProperty('windAcrossMPerS');
  });

  it('has the line from the send point too where the handler stands apart', () => {
    const apart = { ...layout(at('p', 'post', 0, 50)), sendFrom: { eastM: 0, northM: 20 } };
    expect(layoutLines(apart)[0]!.fromSend).toEqual({ distanceM: 30, bearingDeg: 0 });
    expect(layoutLines({ ...apart, sendFrom: { eastM: 0.6, northM: 0 } })[0]).not.toHaveProperty('fromSend');
  });

  it('says no to a thing at the handler, a place that is none and a pace that is none', () => {
    const near = layout(at('p', 'post', 0, 50), at('d', 'dummy', 0.3, 0.4));
    expect(thingsAtHandler(near).map(({ thing }) => thing)).toEqual(['d']);
    expect(thingsAtHandler(layout(at('d', 'dummy', 0.3, 0.41)))).toEqual([]);
    expect(() => layoutLines(near)).toThrow('things: expected none within 0.5 m of the handler, got d');
    expect(() => layoutLines(layout(at('p', 'post', Number.NaN, 1)))).toThrow(RangeError);
    expect(() => layoutLines(layout(), 0)).toThrow(RangeError);
  });
});

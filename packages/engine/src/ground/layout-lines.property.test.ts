import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { angleApartDeg } from '../quantity/index.ts';
import type { Layout, PlanePoint } from './layout.ts';
import { layoutLines, thingsAtHandler } from './layout-lines.ts';
import { layoutWarnings } from './layout-warnings.ts';
import { distanceBetweenM } from './plane.ts';

const place = fc.record({
  eastM: fc.double({ min: -200, max: 200, noNaN: true }),
  northM: fc.double({ min: -200, max: 200, noNaN: true }),
});
const layouts = fc
  .record({
    handlerAt: place,
    sendFrom: fc.option(place, { nil: undefined }),
    things: fc.array(fc.tuple(place, fc.constantFrom('post', 'dummy', 'hazard', 'jump', 'other')), {
      maxLength: 6,
    }),
    windFromDeg: fc.option(fc.integer({ min: 0, max: 360 }), { nil: undefined }),
    windMPerS: fc.option(fc.integer({ min: 0, max: 9 }), { nil: undefined }),
  })
  .map(
    ({ things, ...rest }): Layout => ({
      ...rest,
      things: things.map(([at, kind], i) => ({ thing: `t${i}`, kind, ...at })),
    }),
  )
  .filter((layout) => thingsAtHandler(layout).length === 0);

/** The same layout turned clockwise about the origin and shifted. */
function moved(layout: Layout, turnDeg: number, shift: PlanePoint): Layout {
  const [sin, cos] = [Math.sin((turnDeg * Math.PI) / 180), Math.cos((turnDeg * Math.PI) / 180)];
  const move = <P extends PlanePoint>(point: P): P => ({
    ...point,
    eastM: point.eastM * cos + point.northM * sin + shift.eastM,
    northM: point.northM * cos - point.eastM * sin + shift.northM,
  });
  return {
    ...layout,
    handlerAt: move(layout.handlerAt),
    sendFrom: layout.sendFrom && move(layout.sendFrom),
    things: layout.things.map(move),
    windFromDeg: layout.windFromDeg === undefined ? undefined : layout.windFromDeg + turnDeg,
  };
}

describe('laws of a layout', () => {
  it('a clearance is no more than the distance to the thing, and no less than to the nearest end of reach', () => {
    fc.assert(
      fc.property(layouts, (layout) => {
        for (const { to, nearest, distanceM } of layoutLines(layout)) {
          if (nearest === null) continue;
          const other = layout.things.find(({ thing }) => thing === nearest.thing)!;
          const goal = layout.things.find(({ thing }) => thing === to)!;
          const fromHandlerM = distanceBetweenM(layout.handlerAt, other);
          expect(nearest.clearanceM).toBeLessThanOrEqual(fromHandlerM + 1e-9);
          expect(nearest.clearanceM).toBeLessThanOrEqual(distanceBetweenM(goal, other) + 1e-9);
          // The triangle: from any point of the stretch to the handler is no more than the line's length.
          expect(nearest.clearanceM).toBeGreaterThanOrEqual(fromHandlerM - distanceM - 1e-9);
        }
      }),
    );
  });

  it('nothing changes when the ground is turned and shifted, but for the bearings', () => {
    fc.assert(
      fc.property(layouts, fc.integer({ min: 0, max: 359 }), place, (layout, turnDeg, shift) => {
        const there = moved(layout, turnDeg, shift);
        fc.pre(thingsAtHandler(there).length === 0);
        const [before, after] = [layoutLines(layout), layoutLines(there)];
        before.forEach((line, i) => {
          const other = after[i]!;
          // 1e-9 m: rounding of the turning itself, 500 m in doubles.
          expect(Math.abs(other.distanceM - line.distanceM)).toBeLessThan(1e-9);
          expect(angleApartDeg(other.bearingDeg, line.bearingDeg + turnDeg)).toBeLessThan(1e-7);
          expect(Math.abs((other.nearest?.clearanceM ?? 0) - (line.nearest?.clearanceM ?? 0))).toBeLessThan(
            1e-9,
          );
          expect(Math.abs((other.windAcrossMPerS ?? 0) - (line.windAcrossMPerS ?? 0))).toBeLessThan(1e-7);
        });
      }),
    );
  });

  it('warnings hold no figure that is none, and their gaps are angles', () => {
    fc.assert(
      fc.property(layouts, (layout) => {
        for (const warning of layoutWarnings(layout)) {
          for (const value of Object.values(warning))
            if (typeof value === 'number') expect(Number.isFinite(value) && value >= 0).toBe(true);
          if ('gapDeg' in warning) expect(warning.gapDeg).toBeLessThanOrEqual(180);
        }
      }),
    );
  });
});

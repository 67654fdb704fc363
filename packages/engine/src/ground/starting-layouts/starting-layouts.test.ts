import { describe, expect, it } from 'vitest';
import { isLineTo, layoutLines } from '../layout-lines.ts';
import { layoutWarnings } from '../layout-warnings.ts';
import { distanceBetweenM } from '../plane.ts';
import { FEATURE_CODES, STARTING_LAYOUT_CODES, STARTING_LAYOUTS } from './starting-layouts.ts';

it('has each code once', () => {
  expect(STARTING_LAYOUTS.map(({ code }) => code)).toEqual([...STARTING_LAYOUT_CODES]);
});

describe.each(STARTING_LAYOUTS)('$code', ({ layout }) => {
  it('has nothing in the way of anything', () => {
    expect(layoutWarnings(layout)).toEqual([]);
  });

  it('has every thing once, a metre and more from every other and from the handler', () => {
    const ids = layout.things.map(({ thing }) => thing);
    expect(new Set(ids).size).toBe(ids.length);
    layout.things.forEach((a, i) => {
      expect(distanceBetweenM(a, layout.handlerAt)).toBeGreaterThan(1);
      for (const b of layout.things.slice(i + 1)) expect(distanceBetweenM(a, b)).toBeGreaterThan(1);
    });
  });

  it('sends a dog 15 to 50 m, lines 15 degrees and more apart', () => {
    const lines = layoutLines(layout);
    expect(lines.length).toBeGreaterThan(0);
    for (const { distanceM } of lines) {
      expect(distanceM).toBeGreaterThanOrEqual(15);
      expect(distanceM).toBeLessThanOrEqual(50);
    }
    const bearings = lines.map(({ bearingDeg }) => (bearingDeg + 180) % 360).sort((a, b) => a - b);
    bearings.slice(1).forEach((deg, i) => {
      expect(deg - bearings[i]!).toBeGreaterThanOrEqual(15);
    });
  });

  it('labels what it marks by its code alone, and what the dog goes to not at all', () => {
    for (const thing of layout.things) {
      if (isLineTo(thing)) expect(thing.label).toBeUndefined();
      else expect(FEATURE_CODES).toContain(thing.label);
    }
  });
});

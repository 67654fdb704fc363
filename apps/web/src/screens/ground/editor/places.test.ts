import { distanceBetweenM, type Layout } from '@sedgeline/engine/ground';
import { words } from '@sedgeline/words';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { freePlace } from './free-place.ts';
import { judgeDrawing, judgeThing } from './judge-drawing.ts';
import { typedNumber } from './typed-number.ts';
import { toWholePaces } from './whole-paces.ts';

const HERE = { eastM: 0, northM: 0 };

describe('whole paces', () => {
  it('worked by hand: 20 m and 31.4 degrees is 27 paces of 0.75 m at 31 degrees', () => {
    const at = (31.4 * Math.PI) / 180;
    const snapped = toWholePaces(HERE, { eastM: 20 * Math.sin(at), northM: 20 * Math.cos(at) });
    const whole = (31 * Math.PI) / 180;
    expect(snapped.eastM).toBeCloseTo(20.25 * Math.sin(whole), 9);
    expect(snapped.northM).toBeCloseTo(20.25 * Math.cos(whole), 9);
  });

  it('moves nothing that lies on whole paces, and nothing farther than half a pace and half a degree', () => {
    const length = fc.double({ min: 0.5, max: 300, noNaN: true });
    fc.assert(
      fc.property(length, fc.double({ min: 0, max: 360, noNaN: true }), (distanceM, bearing) => {
        const rad = (bearing * Math.PI) / 180;
        const place = { eastM: distanceM * Math.sin(rad), northM: distanceM * Math.cos(rad) };
        const snapped = toWholePaces(HERE, place);
        const halfDegreeM = (distanceM + 0.375) * (0.5 * (Math.PI / 180));
        expect(distanceBetweenM(place, snapped)).toBeLessThanOrEqual(Math.hypot(0.375, halfDegreeM) + 1e-9);
        expect(distanceBetweenM(toWholePaces(HERE, snapped), snapped)).toBeLessThan(1e-9);
      }),
    );
  });
});

it('puts sixty new things down clear of one another', () => {
  let layout: Layout = { handlerAt: HERE, things: [] };
  for (let i = 0; i < 60; i++)
    layout = {
      ...layout,
      things: [...layout.things, { thing: `t${i}`, kind: 'dummy', ...freePlace(layout, 40) }],
    };
  const all = [layout.handlerAt, ...layout.things];
  all.forEach((a, i) => {
    for (const b of all.slice(i + 1)) expect(distanceBetweenM(a, b)).toBeGreaterThan(3.9);
  });
});

it.each([
  ['12', 12],
  [' 12,5 ', 12.5],
  ['-.5', -0.5],
  ['', null],
  ['12 m', null],
  ['NaN', null],
  ['1e3', null],
  ['Infinity', null],
  ['1,2,3', null],
])('reads %j as %j', (text, value) => {
  expect(typedNumber(text)).toBe(value);
});

describe('a drawing measured', () => {
  const post = { thing: 'p', kind: 'post' as const, eastM: 0, northM: 20 };

  it('says what lies at your feet, and measures the rest', () => {
    const feet = { thing: 'f', kind: 'dummy' as const, eastM: 0.2, northM: 0.1 };
    const judged = judgeDrawing({ handlerAt: HERE, things: [feet, post] }, words());
    expect(judged.warnings.map(({ text }) => text)).toEqual(['Dummy lies at your feet: no line goes there.']);
    expect([...judged.lines.keys()]).toEqual(['p']);
    expect(judged.lines.get('p')?.distanceM).toBe(20);
  });

  it('says which things lie in one place, and that wind is told by half', () => {
    const twin = { ...post, thing: 'q' };
    const judged = judgeDrawing({ handlerAt: HERE, things: [post, twin], windMPerS: 4 }, words());
    const texts = judged.warnings.map(({ text }) => text).join('\n');
    expect(texts).toContain('Post 1 and post 2 lie in one place.');
    expect(texts).toContain('not from where');
    expect(texts).not.toMatch(/NaN|undefined/);
  });

  it('names two things in one place alike, whichever of them it is asked of', () => {
    const twin = { ...post, thing: 'q' };
    const layout = { handlerAt: HERE, things: [post, twin] };
    const { names } = judgeDrawing(layout, words());
    for (const id of ['p', 'q']) {
      const texts = judgeThing(layout, id, names, words()).warnings.map(({ text }) => text);
      expect(texts).toContain('Post 1 and post 2 lie in one place.');
    }
  });

  it('says of a thing at the handler’s feet that it lies there, and nothing of the drawing as a whole', () => {
    const layout = { handlerAt: HERE, things: [{ ...post, ...HERE }] };
    const { names, warnings } = judgeDrawing(layout, words());
    const about = warnings.filter(({ about }) => about.includes('p'));
    expect(judgeThing(layout, 'p', names, words()).warnings).toEqual(about);
    expect(about).toHaveLength(1);
  });

  it('names each of two things at the handler’s feet as the drawing does', () => {
    const layout = {
      handlerAt: HERE,
      things: [
        { ...post, ...HERE },
        { ...post, ...HERE, thing: 'q' },
      ],
    };
    const { names, warnings } = judgeDrawing(layout, words());
    for (const id of ['p', 'q'])
      expect(judgeThing(layout, id, names, words()).warnings).toEqual(
        warnings.filter(({ about }) => about.includes(id)),
      );
  });

  it('says the same of one thing alone as of all together', () => {
    const kinds = ['post', 'dummy', 'hazard', 'jump', 'other'] as const;
    const place = { eastM: fc.integer({ min: -40, max: 40 }), northM: fc.integer({ min: -5, max: 60 }) };
    const thing = fc.record({ kind: fc.constantFrom(...kinds), ...place });
    const apart = fc.option(fc.record(place), { nil: undefined });
    fc.assert(
      fc.property(fc.array(thing, { minLength: 1, maxLength: 12 }), apart, (drawn, sendFrom) => {
        const things = drawn.map((each, i) => ({ ...each, thing: `t${i}` }));
        const layout = { handlerAt: HERE, sendFrom, things, windFromDeg: 200, windMPerS: 3 };
        const all = judgeDrawing(layout, words());
        for (const id of ['t0', things.at(-1)?.thing ?? '']) {
          const one = judgeThing(layout, id, all.names, words());
          expect(one.lines.get(id)).toEqual(all.lines.get(id));
          const about = all.warnings.filter(({ about }) => about.includes(id)).map(({ text }) => text);
          expect(one.warnings.map(({ text }) => text).sort()).toEqual(about.sort());
        }
      }),
      { numRuns: 200 },
    );
  });
});

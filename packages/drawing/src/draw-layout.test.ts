import type { Layout, Thing } from '@sedgeline/engine/ground';
import { words } from '@sedgeline/words';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawLayout, drawPart } from './draw-layout.ts';
import type { Mark, RepDrawing } from './drawing.ts';
import { fitGround } from './fit-ground.ts';
import { sayLayout } from './say-layout.ts';
import { overlap } from './spots.ts';

const WORDS = words().picture;
const CARDS = [
  { width: 366, height: 380, labels: true },
  { width: 720, height: 540, labels: true },
  { width: 160, height: 120, labels: false },
];
const BOX = CARDS[0]!;
const place = { eastM: fc.integer({ min: -300, max: 300 }), northM: fc.integer({ min: -300, max: 300 }) };
const thing: fc.Arbitrary<Omit<Thing, 'thing'>> = fc.record(
  {
    ...place,
    kind: fc.constantFrom('post', 'dummy', 'hazard', 'jump', 'other'),
    how: fc.constantFrom('placed', 'thrown', 'launched'),
    label: fc.option(fc.constantFrom('wall', 'track', 'a very long name of something by the gate'), {
      nil: undefined,
    }),
    blind: fc.boolean(),
  },
  { requiredKeys: ['eastM', 'northM', 'kind'] },
);
const layout: fc.Arbitrary<Layout> = fc
  .record(
    {
      handlerAt: fc.record(place),
      sendFrom: fc.record(place),
      things: fc.array(thing, { maxLength: 30 }),
      windFromDeg: fc.integer({ min: 0, max: 360 }),
      windMPerS: fc.integer({ min: 0, max: 20 }),
    },
    { requiredKeys: ['handlerAt', 'things'] },
  )
  .map((drawn) => ({ ...drawn, things: drawn.things.map((each, i) => ({ ...each, thing: `t${i}` })) }));
const card = fc.constantFrom(...CARDS);
const up = fc.constantFrom('north' as const, 'send' as const);

const things = (drawing: Pick<RepDrawing, 'marks'>) =>
  drawing.marks.filter((mark): mark is Extract<Mark, { mark: 'thing' }> => mark.mark === 'thing');

describe('any layout on any card', () => {
  it('lies wholly on it at one scale, whichever way is up, and comes back to the same metres', () => {
    fc.assert(
      fc.property(layout, card, up, (drawn, box, upWish) => {
        const scale = fitGround(drawn, box, upWish);
        const drawing = drawLayout(drawn, scale, box, WORDS, { grid: true });
        expect(JSON.stringify(drawing)).not.toMatch(/NaN|Infinity|null,"y"/);
        things(drawing).forEach(({ at }, i) => {
          const from = drawn.sendFrom ?? drawn.handlerAt;
          const each = drawn.things[i]!;
          for (const [value, size] of [[at.x, box.width] as const, [at.y, box.height] as const]) {
            expect(value).toBeGreaterThanOrEqual(0);
            expect(value).toBeLessThanOrEqual(size);
          }
          // A turn keeps lengths: on the card in metres, as on the ground. Double precision over 1 km: 1e-9 m.
          const units = Math.hypot(at.x - drawing.send.x, at.y - drawing.send.y);
          const metres = Math.hypot(each.eastM - from.eastM, each.northM - from.northM);
          expect(units * drawing.metresPerUnit).toBeCloseTo(metres, 6);
          const back = scale.toGround(at);
          expect(back.eastM).toBeCloseTo(each.eastM, 6);
          expect(back.northM).toBeCloseTo(each.northM, 6);
        });
      }),
      { numRuns: 200 },
    );
  });

  it('has no label over another or over the edge', () => {
    fc.assert(
      fc.property(layout, card, up, (drawn, box, upWish) => {
        const { labels } = drawLayout(drawn, fitGround(drawn, box, upWish), box, WORDS);
        labels.forEach((label, i) => {
          expect(label.box.x).toBeGreaterThanOrEqual(0);
          expect(label.box.x + label.box.width).toBeLessThanOrEqual(box.width);
          for (const other of labels.slice(i + 1)) expect(overlap(label.box, other.box)).toBe(0);
        });
      }),
      { numRuns: 100 },
    );
  });
});

const post: Thing = { thing: 'p', kind: 'post', eastM: 40, northM: 0 };
const blind: Thing = { thing: 'b', kind: 'dummy', eastM: 0, northM: 30, blind: true };
const wall = (n: number, eastM: number): Thing => ({
  thing: `w${n}`,
  kind: 'other',
  eastM,
  northM: 10,
  label: 'wall',
});
const HERE = { eastM: 0, northM: 0 };
const draw = (drawn: Layout, upWish: 'north' | 'send' = 'north', options = {}) =>
  drawLayout(drawn, fitGround(drawn, BOX, upWish), BOX, WORDS, options);

describe('worked by hand', () => {
  it('north is up, or the one way out is: a post due east stands above the send point, north to its left', () => {
    const alone = { handlerAt: HERE, things: [post] };
    const east = draw(alone);
    expect(things(east)[0]!.at.x).toBeGreaterThan(east.send.x);
    expect(things(east)[0]!.at.y).toBeCloseTo(east.send.y, 9);
    const out = draw(alone, 'send');
    expect(things(out)[0]!.at.x).toBeCloseTo(out.send.x, 9);
    expect(things(out)[0]!.at.y).toBeLessThan(out.send.y);
    expect(out.north?.towardsDeg).toBeCloseTo(270, 9);
  });

  it('turns the wind with the ground: from the west it blows to the right with north up, up with east up', () => {
    const windy = { handlerAt: HERE, things: [post], windFromDeg: 270, windMPerS: 4 };
    expect(draw(windy).wind?.towardsDeg).toBeCloseTo(90, 9);
    expect(draw(windy, 'send').wind?.towardsDeg).toBeCloseTo(0, 9);
    expect(draw({ ...windy, windMPerS: undefined }).wind).toBeNull();
  });

  it('labels with the distance from where the dog is sent, not from the handler', () => {
    const drawn = { handlerAt: HERE, sendFrom: { eastM: 0, northM: 10 }, things: [blind] };
    expect(draw(drawn).labels.map(({ text }) => text)).toContain('blind, 20 m');
    expect(sayLayout(drawn, WORDS)).toBe('Blind, 20 m, 0°; you stand 10 m from the send point.');
  });

  it('has a sight to posts and dummies alone, broken edges for what was not seen, markers of one name joined', () => {
    const { marks, labels } = draw({ handlerAt: HERE, things: [post, blind, wall(1, -20), wall(2, 20)] });
    expect(marks.filter(({ mark }) => mark === 'sight')).toHaveLength(2);
    expect(things({ marks }).map(({ isUnseen }) => isUnseen)).toEqual([false, true, false, false]);
    const edges = marks.filter(({ mark }) => mark === 'edge');
    expect(edges).toHaveLength(1);
    expect(labels.filter(({ text }) => text === 'wall')).toHaveLength(1);
  });

  it('what is moved is left out of the rest and drawn alone, under the name that it has among all', () => {
    const drawn = { handlerAt: HERE, things: [{ ...post, thing: 'q', northM: 20 }, post, blind] };
    const moving = { part: 'thing', thing: 'p' } as const;
    expect(things(draw(drawn, 'north', { moving }))).toHaveLength(2);
    const alone = drawPart(drawn, fitGround(drawn, BOX, 'north'), BOX, WORDS, moving);
    expect(things(alone)).toHaveLength(1);
    expect(alone.labels.map(({ text }) => text)).toEqual(['post 2, 40 m']);
  });

  it('refuses a place that is not finite', () => {
    expect(() => draw({ handlerAt: { eastM: Number.NaN, northM: 0 }, things: [] })).toThrow(RangeError);
  });
});

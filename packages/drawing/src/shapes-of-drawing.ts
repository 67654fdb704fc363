import type { LabelTone, PlacedLabel, RepDrawing } from './drawing.ts';
import { group, type Ink, type Paint, path, type Shape } from './shape.ts';
import { shapeOfMark } from './shape-of-mark.ts';
import { n, spot } from './spots.ts';

/** What is painted first lies under what comes after: cover, ruler, marks, wind, labels. */
export function shapesOfDrawing(drawing: RepDrawing): Shape[] {
  const { cover, ruler, marks, wind, north, labels, box } = drawing;
  return [
    ...(cover ? [{ ...path(cover, { stroke: 'line', width: 1.3 }), data: { mark: 'cover' } }] : []),
    ...(ruler ? [shapeOfRuler(ruler)] : []),
    ...marks.map((mark) => shapeOfMark(mark, !box.labels)),
    ...(wind ? [shapeOfWind(wind)] : []),
    ...(north ? [shapeOfNorth(north)] : []),
    ...labels.map(shapeOfLabel),
  ];
}

const LABEL_INKS: Readonly<
  Record<LabelTone, { readonly text: Ink; readonly tie: Ink; readonly weight: number }>
> = {
  strong: { text: 'ink', tie: 'ink', weight: 700 },
  clay: { text: 'clay', tie: 'clay', weight: 750 },
  water: { text: 'water', tie: 'soft', weight: 600 },
  note: { text: 'soft', tie: 'soft', weight: 600 },
};
const onGrass = (fill: Ink): Paint => ({ fill, stroke: 'grass', width: 3.5, rim: true });

/** A label in its place, with the line that ties it to what it names. */
export function shapeOfLabel({ text, tone, leader, baseline, anchor, size }: PlacedLabel): Shape {
  const inks = LABEL_INKS[tone];
  const tie = leader
    ? [path(`M${spot(leader.from)} L${spot(leader.to)}`, { stroke: inks.tie, width: 1.3 })]
    : [];
  return group([
    ...tie,
    {
      tag: 'text',
      at: { x: n(baseline.x), y: n(baseline.y) },
      type: { anchor, size, weight: inks.weight },
      paint: onGrass(inks.text),
      text,
    },
  ]);
}

/** The ruler at the side, its figures beside it. */
export function shapeOfRuler(ruler: NonNullable<RepDrawing['ruler']>): Shape {
  const strokes = [
    path(`M${n(ruler.x)} ${n(ruler.foot)} V${n(ruler.top)}`),
    ...ruler.ticks.map((tick, i) =>
      path(`M${n(ruler.x - (i % 2 === 0 ? 7 : 4))} ${n(tick.y)} H${n(ruler.x)}`),
    ),
  ];
  const figures = ruler.ticks.flatMap(({ y, text }): Shape[] =>
    text === null
      ? []
      : [
          {
            tag: 'text',
            at: { x: n(ruler.x - 11), y: n(y + 4.5) },
            type: { anchor: 'end', size: 13, weight: 600 },
            paint: onGrass('soft'),
            text,
          },
        ],
  );
  const paint: Paint = { stroke: 'soft', width: 1.6, cap: 'butt' };
  return group([group(strokes, { paint }), ...figures], { data: { mark: 'ruler' } });
}

/** An arrow the way the wind blows. */
export function shapeOfWind({ at, towardsDeg }: NonNullable<RepDrawing['wind']>): Shape {
  return group([path('M0 17 V-17 M-6.5 -9 L0 -17 L6.5 -9')], {
    at: { transform: `translate(${spot(at)}) rotate(${n(towardsDeg)})` },
    data: { mark: 'wind' },
    paint: { stroke: 'water', width: 2.6 },
  });
}

/** A needle to the north with its letter. */
function shapeOfNorth({ at, towardsDeg, text }: NonNullable<RepDrawing['north']>): Shape {
  return group(
    [
      group([path('M0 13 V-3'), path('M-5 -2 L0 -14 L5 -2 Z', { fill: 'soft' })], {
        at: { transform: `rotate(${n(towardsDeg)})` },
        paint: { stroke: 'soft', width: 1.8 },
      }),
      {
        tag: 'text',
        at: { x: 0, y: 30 },
        type: { anchor: 'middle', size: 13, weight: 700 },
        paint: onGrass('soft'),
        text,
      },
    ],
    { at: { transform: `translate(${spot(at)})` }, data: { mark: 'north' } },
  );
}

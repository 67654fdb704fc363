import type { Mark } from './drawing.ts';
import { group, type Paint, path, type Shape } from './shape.ts';
import { n } from './spots.ts';

type Thing = Extract<Mark, { mark: 'thing' }>;

const STAKE: Paint = { width: 4, fill: 'none' };

/** A dummy with its cord (dashed where the dog did not see it placed), a post on its ring, a jump, a hazard. */
export function shapeOfThing(mark: Thing): Shape {
  const isAsked = mark.role === 'asked';
  return group(shapesOfKind(mark), {
    at: { transform: `translate(${n(mark.at.x)} ${n(mark.at.y)}) scale(${mark.size})` },
    data: { mark: mark.kind, role: mark.role, x: n(mark.at.x), y: n(mark.at.y) },
    paint: { stroke: isAsked ? 'ink' : 'soft', width: isAsked ? 2.4 : 2, fill: 'card' },
  });
}

function shapesOfKind({ kind, isUnseen }: Thing): Shape[] {
  switch (kind) {
    case 'dummy':
      return [
        group(
          [
            path('M11 0 q9 .5 8.5 7', { width: 2, fill: 'none' }),
            {
              tag: 'rect',
              at: { x: -11, y: -5.5, width: 22, height: 11, rx: 5.5 },
              ...(isUnseen && { paint: { dash: '4 3.2', cap: 'butt' } }),
            },
          ],
          { at: { transform: 'rotate(-24)' } },
        ),
      ];
    case 'post':
      return [{ tag: 'ellipse', at: { cx: 0, cy: 0, rx: 7.5, ry: 2.8 } }, path('M0 0 V-15', STAKE)];
    case 'jump':
      return [path('M-14 -6 V6 M14 -6 V6 M-14 -1 H14 M-14 3.5 H14', STAKE)];
    case 'hazard':
      return [path('M0 -11 L10.5 7.5 H-10.5 Z M0 -4.5 V1.5 M0 4.6 V4.7', { stroke: 'clay', width: 2.4 })];
    case 'other':
      return [path('M0 -7 L7 0 L0 7 L-7 0 Z')];
  }
}

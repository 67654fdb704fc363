import type { Mark } from './drawing.ts';
import { group, type Paint, path, type Shape } from './shape.ts';
import { shapeOfThing } from './shape-of-thing.ts';
import { n, spot } from './spots.ts';

/** How thick the strokes of a way are, on a card with labels and on a small one. */
const FULL = { way: 4.5, stop: 8, whistle: 4.5, unrun: 2, unrunDash: '2.5 7', ditch: 7, water: 22 } as const;
const SMALL = { way: 3, stop: 5, whistle: 3, unrun: 1.5, unrunDash: '2 5', ditch: 5, water: 13 } as const;

/** One mark of a card. Places in its attributes are the true ones: the card's scale turns them back into metres. */
export function shapeOfMark(mark: Mark, isSmall: boolean): Shape {
  const thick = isSmall ? SMALL : FULL;
  const from = (a: { x: number; y: number }, b: { x: number; y: number }) => ({
    x1: n(a.x),
    y1: n(a.y),
    x2: n(b.x),
    y2: n(b.y),
  });
  switch (mark.mark) {
    case 'line':
    case 'unrun':
    case 'recall':
      return group(
        [
          { tag: 'line', at: from(mark.from, mark.to), data: { mark: mark.mark } },
          ...(mark.headPath ? [path(mark.headPath)] : []),
        ],
        { paint: wayPaint(mark.mark, thick) },
      );
    case 'stop':
    case 'whistle':
      return {
        tag: 'line',
        at: from(mark.from, mark.to),
        data: { mark: mark.mark },
        paint: { stroke: mark.mark === 'stop' ? 'ink' : 'clay', width: thick[mark.mark] },
      };
    case 'cast':
      return group([path(mark.path), path(mark.headPath)], {
        data: { mark: 'cast', side: mark.side, 'to-x': n(mark.to.x), 'to-y': n(mark.to.y) },
        paint: { stroke: 'sedge', width: thick.way },
      });
    case 'hunt':
      return {
        tag: 'circle',
        at: { cx: n(mark.at.x), cy: n(mark.at.y), r: n(mark.radius) },
        data: { mark: 'hunt' },
        paint: { stroke: 'sedge', width: 2.5, dash: '1 8', fill: 'sedge', fillOpacity: 0.07 },
      };
    case 'obstacle':
      return group([path(mark.path), ...(mark.posts ? [path(mark.posts)] : [])], {
        data: { mark: 'obstacle', x: n(mark.at.x), y: n(mark.at.y) },
        paint: obstaclePaint(mark.level, thick),
      });
    case 'sight':
      return {
        tag: 'line',
        at: from(mark.from, mark.to),
        data: { mark: 'sight' },
        paint: mark.isChosen
          ? { stroke: 'ink', width: isSmall ? 2 : 3 }
          : { stroke: 'soft', width: isSmall ? 1 : 1.5, opacity: 0.55 },
      };
    case 'edge':
      return {
        tag: 'path',
        at: { d: mark.along.map((at, i) => `${i === 0 ? 'M' : 'L'}${spot(at)}`).join(' ') },
        data: { mark: 'edge' },
        paint: { stroke: 'soft', width: isSmall ? 3 : 5, opacity: 0.45 },
      };
    case 'chosen':
      return {
        tag: 'circle',
        at: { cx: n(mark.at.x), cy: n(mark.at.y), r: 24 },
        data: { mark: 'chosen' },
        paint: { stroke: 'sedge', width: 3 },
      };
    case 'thing':
      return shapeOfThing(mark);
    case 'handler':
      return standing(mark, [path('M0 -21.5 L5.8 -9.4 A11 11 0 1 1 -5.8 -9.4 Z')], {
        fill: 'ink',
        stroke: 'grass',
        width: 3,
        rim: true,
      });
    case 'dog':
      return standing(mark, [{ tag: 'ellipse', at: { rx: 5.8, ry: 9.6 } }], {
        fill: 'reed',
        stroke: 'grass',
        width: 2.5,
        rim: true,
      });
  }
}

function wayPaint(mark: 'line' | 'unrun' | 'recall', thick: typeof FULL | typeof SMALL): Paint {
  if (mark === 'unrun') return { stroke: 'ink', width: thick.unrun, dash: thick.unrunDash, opacity: 0.75 };
  return { stroke: mark === 'recall' ? 'sedge' : 'ink', width: thick.way };
}

function obstaclePaint(level: 1 | 2 | 3, thick: typeof FULL | typeof SMALL): Paint {
  if (level === 2) return { stroke: 'soft', width: 2.4 };
  return level === 1
    ? { stroke: 'water', width: thick.ditch, opacity: 0.36 }
    : { stroke: 'water', width: thick.water, opacity: 0.3 };
}

function standing(
  mark: Extract<Mark, { mark: 'handler' | 'dog' }>,
  children: readonly Shape[],
  paint: Paint,
): Shape {
  const { at, aimDeg, size } = mark;
  return group(children, {
    at: { transform: `translate(${n(at.x)} ${n(at.y)}) rotate(${n(aimDeg)}) scale(${size})` },
    data: { mark: mark.mark },
    paint,
  });
}

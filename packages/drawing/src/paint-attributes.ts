import type { Ink, Paint, Shape } from './shape.ts';

/** SVG's own attributes of how a shape is put down; `colour` gives an ink's value. */
export function paintAttributes(
  { paint, type }: Pick<Shape, 'paint' | 'type'>,
  colour: (ink: Ink) => string,
): Readonly<Record<string, string | number>> {
  const inked = (ink: Ink | 'none'): string => (ink === 'none' ? ink : colour(ink));
  return {
    ...strokeAttributes(paint ?? {}, colour),
    ...(paint?.fill !== undefined && { fill: inked(paint.fill) }),
    ...(paint?.fillOpacity !== undefined && { 'fill-opacity': paint.fillOpacity }),
    ...(paint?.opacity !== undefined && { opacity: paint.opacity }),
    ...(paint?.rim === true && { 'paint-order': 'stroke' }),
    ...(type && { 'text-anchor': type.anchor, 'font-size': type.size, 'font-weight': type.weight }),
  };
}

function strokeAttributes(paint: Paint, colour: (ink: Ink) => string): Record<string, string | number> {
  return {
    ...(paint.stroke !== undefined && { stroke: colour(paint.stroke) }),
    ...(paint.width !== undefined && { 'stroke-width': paint.width }),
    ...(paint.dash !== undefined && { 'stroke-dasharray': paint.dash }),
    ...(paint.cap !== undefined && { 'stroke-linecap': paint.cap }),
  };
}

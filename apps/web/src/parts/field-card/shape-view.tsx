import { type Ink, paintAttributes, type Shape } from '@sedgeline/drawing';
import { createElement, memo, type ReactNode } from 'react';

/** React's names for the attributes of SVG that have a hyphen. */
const REACT_NAMES: Readonly<Record<string, string>> = {
  'stroke-width': 'strokeWidth',
  'stroke-dasharray': 'strokeDasharray',
  'stroke-linecap': 'strokeLinecap',
  'fill-opacity': 'fillOpacity',
  'paint-order': 'paintOrder',
  'text-anchor': 'textAnchor',
  'font-size': 'fontSize',
  'font-weight': 'fontWeight',
};
const token = (ink: Ink): string => `var(--${ink})`;

/** A shape of a drawing on the screen, in the page's own colours. */
export const ShapeView = memo(function ShapeView({ shape }: { readonly shape: Shape }): ReactNode {
  const paint = Object.entries(paintAttributes(shape, token)).map(([name, value]) => [
    REACT_NAMES[name] ?? name,
    value,
  ]);
  const data = Object.entries(shape.data ?? {}).map(([name, value]) => [`data-${name}`, value]);
  const attributes = { ...shape.at, ...Object.fromEntries(data), ...Object.fromEntries(paint) };
  return createElement(
    shape.tag,
    attributes,
    shape.text,
    ...(shape.children ?? []).map((child, i) => <ShapeView key={i} shape={child} />),
  );
});

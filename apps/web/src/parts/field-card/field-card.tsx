import { type CardBox, drawRep, sayRep, shapesOfDrawing } from '@sedgeline/drawing';
import type { RepPicture } from '@sedgeline/engine/ground';
import { useId, useMemo, useRef } from 'react';
import { useWords } from '../words-context.tsx';
import './field-card.css';
import { ShapeView } from './shape-view.tsx';
import { useOwnShape } from './use-own-shape.ts';

/**
 * The drawing's own size; on screen the card is as wide as its place and scales as one. Where its place is taller or
 * lower than this, a labelled card is drawn anew in the place's own shape, so that no ground is lost at its sides.
 */
const SIZES = {
  full: { width: 366, height: 300, labels: true },
  low: { width: 366, height: 224, labels: true },
  wide: { width: 560, height: 400, labels: true },
  small: { width: 160, height: 108, labels: false },
  pocket: { width: 126, height: 138, labels: false },
} as const;

export interface FieldCardProps {
  readonly picture: RepPicture;
  readonly size?: keyof typeof SIZES;
  readonly dogName?: string | undefined;
  /** What the picture is called when it is read out; the catalogue's name when left out. */
  readonly title?: string | undefined;
}

/** A rep drawn to scale from above: send point at the foot, out is up, a ruler at the side. */
export function FieldCard({ picture, size = 'full', dogName, title }: FieldCardProps) {
  const words = useWords();
  const id = useId();
  const cardWords = useMemo(() => ({ ...words.picture, dogName }), [words, dogName]);
  const svg = useRef<SVGSVGElement>(null);
  const shape = useOwnShape(svg);
  const drawing = useMemo(
    () => drawRep(picture, boxOf(size, shape), cardWords),
    [picture, size, shape, cardWords],
  );
  const shapes = useMemo(() => shapesOfDrawing(drawing), [drawing]);
  const said = useMemo(() => sayRep(picture, cardWords), [picture, cardWords]);
  const { width, height } = drawing.box;
  return (
    <svg
      ref={svg}
      className={`field-card field-card-${SIZES[size].labels ? size : 'small'}`}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-labelledby={`${id}-title ${id}-said`}
      data-metres-per-unit={drawing.metresPerUnit}
      data-send-x={drawing.send.x}
      data-send-y={drawing.send.y}
    >
      <title id={`${id}-title`}>{title ?? words.picture.title}</title>
      <desc id={`${id}-said`}>{said}</desc>
      {shapes.map((each, i) => (
        <ShapeView key={i} shape={each} />
      ))}
    </svg>
  );
}

/** Lowest and tallest a card may be drawn, as height over width: below it no label fits, above it is empty ground. */
const LOWEST = 0.45;
const TALLEST = 1.4;

function boxOf(size: keyof typeof SIZES, shape: number | null): CardBox {
  const box = SIZES[size];
  if (shape === null || !box.labels) return box;
  return { ...box, height: Math.round(box.width * Math.min(TALLEST, Math.max(LOWEST, shape))) };
}

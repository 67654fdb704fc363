import { drawLayout, fitGround, sayLayout, shapesOfDrawing } from '@sedgeline/drawing';
import type { Layout } from '@sedgeline/engine/ground';
import { useId, useMemo } from 'react';
import { useWords } from '../words-context.tsx';
import './field-card.css';
import { ShapeView } from './shape-view.tsx';

const SIZES = {
  small: { width: 220, height: 170, labels: false },
  full: { width: 366, height: 320, labels: true },
} as const;

/** A whole layout drawn to scale from above, the way out up: send point at the foot, a line to all that lies out. */
export function GroundCard({
  layout,
  size = 'small',
  title,
}: {
  readonly layout: Layout;
  readonly size?: keyof typeof SIZES;
  readonly title: string;
}) {
  const { picture } = useWords();
  const id = useId();
  const shapes = useMemo(() => {
    const box = SIZES[size];
    return shapesOfDrawing(drawLayout(layout, fitGround(layout, box, 'send'), box, picture));
  }, [layout, size, picture]);
  const { width, height } = SIZES[size];
  return (
    <svg
      className={`field-card field-card-${size}`}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-labelledby={`${id}-title ${id}-said`}
    >
      <title id={`${id}-title`}>{title}</title>
      <desc id={`${id}-said`}>{sayLayout(layout, picture)}</desc>
      {shapes.map((shape, i) => (
        <ShapeView key={i} shape={shape} />
      ))}
    </svg>
  );
}

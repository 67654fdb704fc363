import { type RefObject, useEffect, useState } from 'react';

/** A change of shape smaller than this is not worth a new drawing: 2 in 100 is 6 units of a card's height. */
const WORTH_IT = 0.02;

/** Height over width of an element as it stands on the screen; `null` before it is measured. */
export function useOwnShape(element: RefObject<Element | null>): number | null {
  const [shape, setShape] = useState<number | null>(null);
  useEffect(() => {
    if (!element.current) return;
    const watch = new ResizeObserver(([entry]) => {
      if (!entry || entry.contentRect.width === 0 || entry.contentRect.height === 0) return;
      const now = entry.contentRect.height / entry.contentRect.width;
      setShape((before) => (before !== null && Math.abs(now / before - 1) < WORTH_IT ? before : now));
    });
    watch.observe(element.current);
    return () => watch.disconnect();
  }, [element]);
  return shape;
}

import type { CardBox } from '@sedgeline/drawing';
import { useSyncExternalStore } from 'react';

const WIDE = '(min-width: 60rem)';
const BOXES: Readonly<Record<'phone' | 'laptop', CardBox>> = {
  phone: { width: 366, height: 400, labels: true },
  laptop: { width: 640, height: 500, labels: true },
};

function watch(changed: () => void): () => void {
  const list = matchMedia(WIDE);
  list.addEventListener('change', changed);
  return () => list.removeEventListener('change', changed);
}

/** The board's own size: one unit is about a pixel, so that what is drawn is as big as a thumb wants it. */
export function useBoardBox(): CardBox {
  return useSyncExternalStore(watch, () => BOXES[matchMedia(WIDE).matches ? 'laptop' : 'phone']);
}

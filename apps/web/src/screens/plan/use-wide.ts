import { useSyncExternalStore } from 'react';

/** From here on there is room for the timeline and an opened rep side by side; the stylesheet's own measure. */
const WIDE = '(min-width: 60rem)';

function watch(changed: () => void): () => void {
  const wide = window.matchMedia(WIDE);
  wide.addEventListener('change', changed);
  return () => wide.removeEventListener('change', changed);
}

/** Whether the window is a laptop's. */
export const useWide = (): boolean => useSyncExternalStore(watch, () => window.matchMedia(WIDE).matches);

import { useSyncExternalStore } from 'react';

/** Beside the pad on a laptop, over it on a phone, low on a phone that is short. */
const WIDE = '(min-width: 60rem) and (min-height: 34rem)';
const LOW = '(max-height: 47rem)';

type CardSize = 'full' | 'low' | 'wide';

function size(): CardSize {
  if (matchMedia(WIDE).matches) return 'wide';
  return matchMedia(LOW).matches ? 'low' : 'full';
}

function watch(changed: () => void): () => void {
  const lists = [matchMedia(WIDE), matchMedia(LOW)];
  for (const list of lists) list.addEventListener('change', changed);
  return () => {
    for (const list of lists) list.removeEventListener('change', changed);
  };
}

/** Which form of the field card fits the window. */
export function useCardSize(): CardSize {
  return useSyncExternalStore(watch, size);
}

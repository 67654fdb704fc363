import { useSyncExternalStore } from 'react';

/** Beside the pad on a laptop, over it on a phone, low on a phone that is short. */
const WIDE = '(min-width: 60rem) and (min-height: 34rem)';
const LOW = '(max-height: 47rem)';
/** A phone held across; as in beside.css. */
const ACROSS = '(orientation: landscape) and (min-width: 40rem) and (max-height: 34rem)';

type CardSize = 'full' | 'low' | 'wide';

function size(): CardSize {
  if (matchMedia(WIDE).matches) return 'wide';
  return matchMedia(LOW).matches ? 'low' : 'full';
}

function watch(changed: () => void): () => void {
  const lists = [matchMedia(WIDE), matchMedia(LOW), matchMedia(ACROSS)];
  for (const list of lists) list.addEventListener('change', changed);
  return () => {
    for (const list of lists) list.removeEventListener('change', changed);
  };
}

/** Which form of the field card fits the window. */
export function useCardSize(): CardSize {
  return useSyncExternalStore(watch, size);
}

/** Whether the phone is held across: then what may be said stands under the card, and the pad beside it. */
export function useIsAcross(): boolean {
  return useSyncExternalStore(watch, () => matchMedia(ACROSS).matches);
}

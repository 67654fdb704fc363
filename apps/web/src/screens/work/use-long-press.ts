import { type KeyboardEvent, type PointerEvent, useCallback, useEffect, useRef, useState } from 'react';

/** So long a press is meant, in milliseconds: a fold of cloth does not hold still on one spot (our judgement, 2026). */
export const LONG_PRESS_MS = 700;
/** A press that strays this far is a brush, in CSS pixels (our judgement, 2026). */
const STRAY_PX = 24;

/** A press that must be held: by finger, mouse, or a key held down. */
export interface LongPress {
  readonly isHeld: boolean;
  readonly begin: (at?: { readonly x: number; readonly y: number }) => void;
  readonly end: () => void;
  readonly handlers: {
    readonly onPointerDown: (event: PointerEvent) => void;
    readonly onPointerMove: (event: PointerEvent) => void;
    readonly onPointerUp: () => void;
    readonly onPointerCancel: () => void;
    readonly onKeyDown: (event: KeyboardEvent) => void;
    readonly onKeyUp: () => void;
    readonly onBlur: () => void;
  };
}

/** Calls `onLong` when a press has been held for `LONG_PRESS_MS`; a shorter one does nothing. */
export function useLongPress(onLong: () => void): LongPress {
  const [isHeld, setHeld] = useState(false);
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const from = useRef<{ readonly x: number; readonly y: number } | null>(null);
  const end = useCallback(() => {
    clearTimeout(timer.current);
    timer.current = undefined;
    from.current = null;
    setHeld(false);
  }, []);
  const begin = useCallback(
    (at?: { readonly x: number; readonly y: number }) => {
      if (timer.current !== undefined) return;
      from.current = at ?? null;
      setHeld(true);
      timer.current = setTimeout(() => {
        end();
        onLong();
      }, LONG_PRESS_MS);
    },
    [end, onLong],
  );
  useEffect(() => () => clearTimeout(timer.current), []);
  const move = ({ clientX, clientY }: PointerEvent) => {
    const { current } = from;
    if (current !== null && Math.hypot(clientX - current.x, clientY - current.y) > STRAY_PX) end();
  };
  return {
    isHeld,
    begin,
    end,
    handlers: {
      onPointerDown: ({ clientX, clientY }) => begin({ x: clientX, y: clientY }),
      onPointerMove: move,
      onPointerUp: end,
      onPointerCancel: end,
      onKeyDown: (event) => {
        if (event.key !== ' ' && event.key !== 'Enter') return;
        event.preventDefault();
        begin();
      },
      onKeyUp: end,
      onBlur: end,
    },
  };
}

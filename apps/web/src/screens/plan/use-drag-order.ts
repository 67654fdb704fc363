import { type PointerEvent, type RefObject, useEffect, useRef, useState } from 'react';

/** A rep on its way: its number, how far it was drawn from its place, and the number whose place it would take. */
export interface Drag {
  readonly n: number;
  readonly dx: number;
  readonly dy: number;
  readonly over: number;
}

/** Nearer than this to the upper or lower edge of what is seen, the page moves along. */
const EDGE_PX = 96;
const SCROLL_PX = 14;

interface Held {
  readonly n: number;
  readonly startX: number;
  readonly startY: number;
  x: number;
  y: number;
}

/**
 * Reorders the items of a list (`data-rep` their numbers) by dragging a grip, by finger, pen or mouse. The page moves along at its
 * edges; Escape, or letting go outside the window, leaves all as it was.
 */
export function useDragOrder(list: RefObject<HTMLElement | null>, onMove: (n: number, to: number) => void) {
  const [drag, setDrag] = useState<Drag | null>(null);
  const held = useRef<Held | null>(null);
  const isDragging = drag !== null;

  const look = () => {
    const at = held.current;
    if (at === null || list.current === null) return;
    const dx = at.x + window.scrollX - at.startX;
    const dy = at.y + window.scrollY - at.startY;
    setDrag({ n: at.n, dx, dy, over: nearestRep(list.current, at) });
  };
  const end = () => {
    held.current = null;
    setDrag(null);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: only whether something is dragged starts and ends the watch
  useEffect(() => {
    if (!isDragging) return;
    let frame = 0;
    const scroll = () => {
      const at = held.current;
      if (at === null) return;
      const step = at.y < EDGE_PX ? -SCROLL_PX : at.y > window.innerHeight - EDGE_PX ? SCROLL_PX : 0;
      if (step !== 0) {
        window.scrollBy(0, step);
        look();
      }
      frame = requestAnimationFrame(scroll);
    };
    frame = requestAnimationFrame(scroll);
    const leave = (event: KeyboardEvent) => event.key === 'Escape' && end();
    document.addEventListener('keydown', leave);
    return () => {
      cancelAnimationFrame(frame);
      document.removeEventListener('keydown', leave);
    };
  }, [isDragging]);

  const grip = (n: number) => ({
    onPointerDown: (event: PointerEvent<HTMLElement>) => {
      if (event.button !== 0) return;
      event.preventDefault();
      event.currentTarget.setPointerCapture(event.pointerId);
      const { clientX: x, clientY: y } = event;
      held.current = { n, startX: x + window.scrollX, startY: y + window.scrollY, x, y };
      look();
    },
    onPointerMove: (event: PointerEvent<HTMLElement>) => {
      if (held.current === null) return;
      held.current.x = event.clientX;
      held.current.y = event.clientY;
      look();
    },
    onPointerUp: () => {
      const to = drag?.over;
      if (held.current !== null && to !== undefined && to !== n) onMove(n, to);
      end();
    },
    onPointerCancel: end,
  });
  return { drag, grip };
}

/** The rep whose card lies nearest to the pointer, but for the one that is dragged, whose place is where it came from. */
function nearestRep(list: HTMLElement, at: Held): number {
  let nearest = at.n;
  let leastPx = Number.POSITIVE_INFINITY;
  for (const item of list.querySelectorAll<HTMLElement>('[data-rep]')) {
    const n = Number(item.dataset.rep);
    const box = item.getBoundingClientRect();
    const movedX = n === at.n ? at.x + window.scrollX - at.startX : 0;
    const movedY = n === at.n ? at.y + window.scrollY - at.startY : 0;
    const x = box.x + box.width / 2 - movedX;
    const y = box.y + box.height / 2 - movedY;
    const px = Math.hypot(at.x - x, at.y - y);
    if (px < leastPx) {
      leastPx = px;
      nearest = n;
    }
  }
  return nearest;
}

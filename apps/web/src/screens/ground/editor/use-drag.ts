import type { CardBox, GroundScale, Part, Spot } from '@sedgeline/drawing';
import type { PlanePoint } from '@sedgeline/engine/ground';
import { type PointerEvent, type RefObject, useRef } from 'react';

/** A pointer that goes less far than this was a tap. CSS pixels. */
const TAP_PX = 4;
/** How near a part a pointer must come down to take it, in the board's units: half of 48. */
export const REACH = 24;
/** What is dragged stays this far from the board's edge. */
const EDGE = 10;

interface Drag {
  readonly part: Part;
  readonly pointer: number;
  readonly from: Spot;
  /** From the pointer to the part's own place, so that it does not jump under the thumb. */
  readonly offset: Spot;
  moved: boolean;
  frame: number;
  to: PlanePoint | null;
}

export interface DragCalls {
  readonly spots: readonly { readonly part: Part; readonly at: Spot }[];
  readonly onTake: (part: Part | null) => void;
  /** A frame of the drag; `null` when it is over. */
  readonly onLive: (part: Part, to: PlanePoint | null) => void;
  readonly onDrop: (part: Part, to: PlanePoint) => void;
  readonly settle: (part: Part, to: PlanePoint) => PlanePoint;
}

/** Takes, moves and drops what lies under a pointer, one step a frame. */
export function useDrag(
  svg: RefObject<SVGSVGElement | null>,
  box: CardBox,
  scale: GroundScale,
  { spots, onTake, onLive, onDrop, settle }: DragCalls,
) {
  const drag = useRef<Drag | null>(null);
  const spotOf = (event: PointerEvent): Spot => {
    const { left, top, width } = svg.current?.getBoundingClientRect() ?? { left: 0, top: 0, width: 1 };
    const unit = box.width / Math.max(width, 1);
    return { x: (event.clientX - left) * unit, y: (event.clientY - top) * unit };
  };
  const end = (event: PointerEvent, isDrop: boolean): void => {
    const { current } = drag;
    if (current === null || current.pointer !== event.pointerId) return;
    drag.current = null;
    cancelAnimationFrame(current.frame);
    if (!current.moved) return;
    onLive(current.part, null);
    if (isDrop && current.to !== null) onDrop(current.part, current.to);
  };
  return {
    onPointerDown: (event: PointerEvent) => {
      if (drag.current !== null || event.button !== 0) return;
      const at = spotOf(event);
      const taken = nearest(spots, at);
      onTake(taken?.part ?? null);
      if (taken === null) return;
      svg.current?.setPointerCapture(event.pointerId);
      const offset = { x: taken.at.x - at.x, y: taken.at.y - at.y };
      drag.current = {
        part: taken.part,
        pointer: event.pointerId,
        from: at,
        offset,
        moved: false,
        frame: 0,
        to: null,
      };
    },
    onPointerMove: (event: PointerEvent) => {
      const { current } = drag;
      if (current === null || current.pointer !== event.pointerId) return;
      const at = spotOf(event);
      if (!current.moved && Math.hypot(at.x - current.from.x, at.y - current.from.y) < TAP_PX) return;
      current.moved = true;
      const inside = (value: number, size: number): number => Math.min(size - EDGE, Math.max(EDGE, value));
      const spot = {
        x: inside(at.x + current.offset.x, box.width),
        y: inside(at.y + current.offset.y, box.height),
      };
      current.to = settle(current.part, scale.toGround(spot));
      cancelAnimationFrame(current.frame);
      current.frame = requestAnimationFrame(() => {
        if (drag.current === current && current.to !== null) onLive(current.part, current.to);
      });
    },
    onPointerUp: (event: PointerEvent) => end(event, true),
    onPointerCancel: (event: PointerEvent) => end(event, false),
  };
}

function nearest(spots: DragCalls['spots'], at: Spot): DragCalls['spots'][number] | null {
  let found: DragCalls['spots'][number] | null = null;
  let least = REACH;
  // What is painted last lies on top: of equals it is the one that is meant.
  for (const each of spots) {
    const away = Math.hypot(each.at.x - at.x, each.at.y - at.y);
    if (away <= least) [found, least] = [each, away];
  }
  return found;
}

import { type CardBox, fitGround, type GroundScale, type UpWish } from '@sedgeline/drawing';
import { useCallback, useMemo, useState } from 'react';
import type { EditedLayout } from './layout-edit.ts';

/** Room at the board's edge that still counts as on it, in its units. */
const EDGE = 12;
const WIDER = 1.5;

interface Frame {
  readonly layout: EditedLayout;
  readonly up: UpWish;
  readonly wider: number;
}

/**
 * How the ground lies on the board. It stays as it is while things are moved on it, and is fitted anew when something
 * comes to lie outside, or when it is asked for.
 */
export function useBoardScale(layout: EditedLayout, box: CardBox) {
  const [frame, setFrame] = useState<Frame>({ layout, up: 'send', wider: 1 });
  const fitted = useMemo(() => fitGround(frame.layout, box, frame.up, frame.wider), [frame, box]);
  const isOut = frame.layout !== layout && !holds(fitted, layout, box);
  // Set while rendering: the frame before would show what is not on it.
  if (isOut) setFrame({ ...frame, layout, wider: 1 });
  const fit = useCallback(() => setFrame((last) => ({ ...last, layout, wider: 1 })), [layout]);
  const widen = useCallback(() => setFrame((last) => ({ ...last, wider: last.wider * WIDER })), []);
  const turn = useCallback(
    () => setFrame((last) => ({ layout, up: last.up === 'send' ? 'north' : 'send', wider: 1 })),
    [layout],
  );
  return { scale: fitted, up: frame.up, fit, widen, turn };
}

function holds(scale: GroundScale, layout: EditedLayout, box: CardBox): boolean {
  return [layout.handlerAt, layout.sendFrom ?? layout.handlerAt, ...layout.things].every((place) => {
    const { x, y } = scale.toCard(place);
    return x >= EDGE && x <= box.width - EDGE && y >= EDGE && y <= box.height - EDGE;
  });
}

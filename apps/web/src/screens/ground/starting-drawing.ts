import { type FeatureCode, STARTING_LAYOUTS } from '@sedgeline/engine/ground';
import type { Words } from '@sedgeline/words';
import type { EditedLayout } from './editor/layout-edit.ts';

/** Start of a layout with nothing on it. */
export const EMPTY_FIELD = 'empty';

/** A layout to begin from, by its code, its markers named; an empty field for any other code. */
export function startingDrawing(code: string, { ground }: Words): EditedLayout {
  const start = STARTING_LAYOUTS.find((each) => each.code === code);
  if (start === undefined) return { handlerAt: { eastM: 0, northM: 0 }, things: [] };
  const things = start.layout.things.map((thing) =>
    thing.label === undefined ? thing : { ...thing, label: ground.feature(thing.label as FeatureCode) },
  );
  return { ...start.layout, things, name: ground.starting(start.code).name };
}

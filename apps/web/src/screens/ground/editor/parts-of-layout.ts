import type { Part } from '@sedgeline/drawing';
import { bearingDegOf, distanceBetweenM, PACE_M, type PlanePoint } from '@sedgeline/engine/ground';
import type { Words } from '@sedgeline/words';
import type { EditedLayout } from './layout-edit.ts';

/** Everything that can be chosen and moved, in the order Tab goes: handler, the dog where it is sent from elsewhere, things. */
export function partsOf({ sendFrom, things }: EditedLayout): Part[] {
  return [
    { part: 'handler' },
    ...(sendFrom === undefined ? [] : [{ part: 'send' } as const]),
    ...things.map(({ thing }) => ({ part: 'thing', thing }) as const),
  ];
}

export const keyOfPart = (part: Part): string => (part.part === 'thing' ? `thing ${part.thing}` : part.part);

/** Where a part lies; `null` for a thing that is gone. */
export function placeOfPart(part: Part, { handlerAt, sendFrom, things }: EditedLayout): PlanePoint | null {
  if (part.part === 'handler') return handlerAt;
  if (part.part === 'send') return sendFrom ?? handlerAt;
  return things.find(({ thing }) => thing === part.thing) ?? null;
}

/** What a part's distance and bearing are counted from; `null` for the handler with the dog beside him. */
export function originOfPart(part: Part, { handlerAt, sendFrom }: EditedLayout): PlanePoint | null {
  if (part.part === 'thing') return sendFrom ?? handlerAt;
  if (sendFrom === undefined) return null;
  return part.part === 'send' ? handlerAt : sendFrom;
}

export function nameOfPart(part: Part, names: ReadonlyMap<string, string>, { ground }: Words): string {
  if (part.part === 'handler') return ground.editor.you;
  return part.part === 'send' ? ground.editor.dog : (names.get(part.thing) ?? '');
}

/** Distance, paces and bearing of a part from where it is counted; empty for what is counted from nowhere. */
export function figuresOfPart(part: Part, layout: EditedLayout, { ground }: Words): string {
  const [at, from] = [placeOfPart(part, layout), originOfPart(part, layout)];
  if (at === null || from === null) return '';
  const distanceM = distanceBetweenM(from, at);
  return ground.editor.chosen.figures(distanceM, distanceM / PACE_M, bearingDegOf(from, at));
}

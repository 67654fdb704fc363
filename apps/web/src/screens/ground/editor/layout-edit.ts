import type { Part } from '@sedgeline/drawing';
import type { Layout, PlanePoint, Thing } from '@sedgeline/engine/ground';

/** A layout while it is drawn: what a `layout-drawn` fact will say of it, but for its identity and its ground. */
export interface EditedLayout extends Layout {
  readonly name?: string | undefined;
}

export type ThingChange = Partial<Pick<Thing, 'label' | 'how' | 'blind'>>;

export type Edit =
  | { readonly do: 'move'; readonly part: Part; readonly to: PlanePoint }
  | { readonly do: 'add'; readonly thing: Thing }
  | { readonly do: 'remove'; readonly thing: string }
  | { readonly do: 'change'; readonly thing: string; readonly change: ThingChange }
  /** Sends from a place of its own, or from the handler's side again. */
  | { readonly do: 'send'; readonly from: PlanePoint | null }
  | { readonly do: 'wind'; readonly fromDeg: number | null; readonly mPerS: number | null }
  | { readonly do: 'name'; readonly name: string };

/** A centimetre: finer than anything that is put down by hand. */
const FINEST = 100;
/** As far as the journal's drawing goes. */
const FARTHEST_M = 10_000;

/** A place as it is kept: to the centimetre, within the drawing's reach. */
export function kept({ eastM, northM }: PlanePoint): PlanePoint {
  const within = (value: number): number =>
    Math.round(Math.min(FARTHEST_M, Math.max(-FARTHEST_M, value)) * FINEST) / FINEST + 0;
  return { eastM: within(eastM), northM: within(northM) };
}

/** The layout with one change. The same layout where there is nothing to change. */
export function applyEdit(layout: EditedLayout, edit: Edit): EditedLayout {
  switch (edit.do) {
    case 'move':
      return movePart(layout, edit.part, kept(edit.to));
    case 'add':
      return { ...layout, things: [...layout.things, { ...edit.thing, ...kept(edit.thing) }] };
    case 'remove':
      return { ...layout, things: layout.things.filter(({ thing }) => thing !== edit.thing) };
    case 'change':
      return changeThing(layout, edit.thing, edit.change);
    case 'send':
      return without({ ...layout, sendFrom: edit.from === null ? undefined : kept(edit.from) });
    case 'wind':
      return without({
        ...layout,
        windFromDeg: edit.fromDeg ?? undefined,
        windMPerS: edit.mPerS ?? undefined,
      });
    case 'name':
      return without({ ...layout, name: edit.name.trim() === '' ? undefined : edit.name });
  }
}

function movePart(layout: EditedLayout, part: Part, to: PlanePoint): EditedLayout {
  if (part.part === 'handler') return { ...layout, handlerAt: to };
  if (part.part === 'send')
    return layout.sendFrom === undefined ? { ...layout, handlerAt: to } : { ...layout, sendFrom: to };
  return changeThing(layout, part.thing, to);
}

function changeThing(layout: EditedLayout, id: string, change: Partial<Thing>): EditedLayout {
  return {
    ...layout,
    things: layout.things.map((thing) => (thing.thing === id ? without({ ...thing, ...change }) : thing)),
  };
}

/** The same without fields that say nothing, as the journal wants it. */
function without<Whole extends object>(whole: Whole): Whole {
  const said = Object.entries(whole).filter(
    ([, value]) => value !== undefined && value !== '' && value !== false,
  );
  return Object.fromEntries(said) as Whole;
}

import { isLineTo, type Layout, type Thing } from '@sedgeline/engine/ground';
import { boxesOfMark } from './boxes-of-mark.ts';
import { drawGrid } from './draw-grid.ts';
import type { CardBox, Mark, RepDrawing, Spot } from './drawing.ts';
import type { GroundScale } from './fit-ground.ts';
import { isOnEdge, type LayoutWords, wantedGroundLabels } from './layout-labels.ts';
import { placeLabels } from './place-labels.ts';
import { boxesOfRuler, drawRuler } from './ruler.ts';
import { around, bearingDeg, towards } from './spots.ts';
import { standBeside } from './stand-beside.ts';
import { windPlace } from './wind-place.ts';

/** One of what a layout is made of. */
export type Part =
  | { readonly part: 'handler' }
  | { readonly part: 'send' }
  | { readonly part: 'thing'; readonly thing: string };

export interface LayoutOptions {
  /** Stands out, with its line, and is labelled before all others. */
  readonly chosen?: Part | null;
  /** Is being moved: left out here, to be drawn by `drawPart`. */
  readonly moving?: Part | null;
  /** Crosses on the ground at the ruler's steps, for drawing by. */
  readonly grid?: boolean;
}

/** Marks are this big on a small card, against 1 on one with labels. */
const SMALL = 0.66;
/** The ruler and its figures stand left of this, for what may be under a label. */
const NORTH_AT = { x: 26, y: 30 } as const;

/**
 * Draws a whole layout to scale: a line from where the dog is sent to every post and dummy with its distance, handler
 * and dog, hazards, wind, north, a ruler that counts from the send point. Pure. Throws RangeError on places that are
 * not finite.
 */
export function drawLayout(
  layout: Layout,
  scale: GroundScale,
  box: CardBox,
  words: LayoutWords,
  { chosen = null, moving = null, grid = false }: LayoutOptions = {},
): RepDrawing {
  const rest = withoutMoving(layout, moving);
  const size = box.labels ? 1 : SMALL;
  const people = moving === null || moving.part === 'thing' ? peopleOf(layout, scale, size) : [];
  const sights = people.length === 0 ? [] : sightsOf(rest, scale, chosen);
  const ring = chosen === null || isSame(chosen, moving) ? null : placeOf(chosen, layout, scale);
  const marks: Mark[] = [
    ...edgesOf(layout, scale),
    ...sights,
    ...(ring ? [{ mark: 'chosen' as const, at: ring }] : []),
    ...people,
    ...rest.things.map((thing) => thingMark(thing, scale, isOnEdge(thing, layout) ? size * 0.55 : size)),
  ];
  const send = scale.toCard(layout.sendFrom ?? layout.handlerAt);
  const bare = { box, metresPerUnit: 1 / scale.unitsPerMetre, send, marks };
  if (!box.labels) return { ...bare, cover: '', ruler: null, wind: null, labels: [] };

  const foot = Math.max(send.y, box.height / 2);
  const ruler = drawRuler(box, foot, scale.unitsPerMetre, words);
  const north = { at: NORTH_AT, towardsDeg: (360 - scale.upDeg) % 360, text: words.north };
  const drawn = marks.flatMap(boxesOfMark);
  const northBox = around({ x: NORTH_AT.x, y: NORTH_AT.y + 8 }, 16, 26);
  const wind = windPlace(layout, scale.upDeg, box, [...drawn, northBox]);
  const taken = [...boxesOfRuler(ruler), northBox, ...(wind ? [around(wind.at, 21)] : [])];
  const chosenThing = chosen?.part === 'thing' ? chosen.thing : null;
  const wanted = wantedGroundLabels(rest, scale, people, wind?.at ?? null, box, chosenThing, words);
  const labels = placeLabels(wanted, box, taken, drawn);
  const cover = grid ? drawGrid(scale, box, words.unitM, send) : '';
  return { ...bare, cover, ruler, wind, north, labels };
}

/** What is being moved, drawn alone: for a frame of a drag. */
export function drawPart(
  layout: Layout,
  scale: GroundScale,
  box: CardBox,
  words: LayoutWords,
  part: Part,
): Pick<RepDrawing, 'marks' | 'labels'> {
  const at = placeOf(part, layout, scale);
  if (at === null) return { marks: [], labels: [] };
  const ring: Mark = { mark: 'chosen', at };
  if (part.part !== 'thing')
    return { marks: [...sightsOf(layout, scale, null), ring, ...peopleOf(layout, scale, 1)], labels: [] };
  const things = layout.things.filter(({ thing }) => thing === part.thing);
  const alone = { ...layout, things };
  const marks = [...sightsOf(alone, scale, part), ring, ...things.map((thing) => thingMark(thing, scale, 1))];
  // Named among all, so that "post 2" stays "post 2" while it moves; away from the thumb.
  const wanted = wantedGroundLabels(layout, scale, [], null, box, part.thing, words).slice(0, 1);
  return {
    marks,
    labels: placeLabels(
      wanted.map((label) => ({ ...label, sides: ['above', 'left', 'right'] })),
      box,
      [],
      [around(at, 24)],
    ),
  };
}

export function isSame(a: Part | null, b: Part | null): boolean {
  if (a === null || b === null) return a === b;
  return a.part === 'thing' ? b.part === 'thing' && a.thing === b.thing : a.part === b.part;
}

function withoutMoving(layout: Layout, moving: Part | null): Layout {
  if (moving?.part !== 'thing') return layout;
  return { ...layout, things: layout.things.filter(({ thing }) => thing !== moving.thing) };
}

function placeOf(part: Part, layout: Layout, scale: GroundScale): Spot | null {
  if (part.part === 'handler') return scale.toCard(layout.handlerAt);
  if (part.part === 'send') return scale.toCard(layout.sendFrom ?? layout.handlerAt);
  const thing = layout.things.find((each) => each.thing === part.thing);
  return thing === undefined ? null : scale.toCard(thing);
}

/** Markers of one name, joined in the order in which they were put down. */
function edgesOf({ things }: Layout, scale: GroundScale): Mark[] {
  const named = new Map<string, Spot[]>();
  for (const thing of things) {
    if (thing.kind !== 'other' || !thing.label) continue;
    named.set(thing.label, [...(named.get(thing.label) ?? []), scale.toCard(thing)]);
  }
  return [...named.values()].flatMap((along) => (along.length > 1 ? [{ mark: 'edge' as const, along }] : []));
}

function thingMark(thing: Thing, scale: GroundScale, size: number): Mark {
  return {
    mark: 'thing',
    at: scale.toCard(thing),
    kind: thing.kind,
    role: isLineTo(thing) ? 'asked' : 'scenery',
    isUnseen: thing.blind === true,
    size,
  };
}

function sightsOf(layout: Layout, scale: GroundScale, chosen: Part | null): Mark[] {
  const from = scale.toCard(layout.sendFrom ?? layout.handlerAt);
  const isChosen = ({ thing }: Thing) => chosen?.part === 'thing' && chosen.thing === thing;
  return layout.things
    .filter(isLineTo)
    .sort((a, b) => Number(isChosen(a)) - Number(isChosen(b)))
    .map((thing) => ({ mark: 'sight', from, to: scale.toCard(thing), isChosen: isChosen(thing) }));
}

/** Handler and dog, both looking the way the dogs are sent, side by side where they are at one place. */
function peopleOf(layout: Layout, scale: GroundScale, size: number): Mark[] {
  const handlerAt = scale.toCard(layout.handlerAt);
  const dogAt = scale.toCard(layout.sendFrom ?? layout.handlerAt);
  const on = wayOn(layout, scale, dogAt);
  const { together, standing } = standBeside(handlerAt, dogAt, on, size);
  const handler: Mark = { mark: 'handler', at: handlerAt, aimDeg: bearingDeg(on), size };
  const dog: Mark = { mark: 'dog', at: standing, aimDeg: bearingDeg(on), size };
  return size < 1 && together ? [handler] : [dog, handler];
}

function wayOn(layout: Layout, scale: GroundScale, from: Spot): Spot {
  const ways = layout.things.filter(isLineTo).map((thing) => towards(from, scale.toCard(thing)));
  const sum = ways.reduce((a, b) => ({ x: a.x + b.x, y: a.y + b.y }), { x: 0, y: 0 });
  return towards({ x: 0, y: 0 }, sum);
}

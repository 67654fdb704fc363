import { distanceBetweenM, isLineTo, type Layout, type Thing } from '@sedgeline/engine/ground';
import type { CardWords } from './card-words.ts';
import type { CardBox, Mark, Spot } from './drawing.ts';
import type { GroundScale } from './fit-ground.ts';
import type { WantedLabel } from './place-labels.ts';

/** Words of a whole layout, beside those of a card. */
export interface LayoutWords extends CardWords {
  /** Short for north, at the arrow's tip. */
  readonly north: string;
  bearing(bearingDeg: number): string;
  /** One of several of a kind: "post 2". */
  numbered(name: string, number: number): string;
}

/** What is named by what it is called, else by its kind, with a number where there are several. By id of the thing. */
export function namesOfThings({ things }: Layout, words: LayoutWords): ReadonlyMap<string, string> {
  const plain = things.map((thing) => [thing.thing, plainName(thing, words)] as const);
  const counts = new Map<string, number>();
  for (const [, name] of plain) counts.set(name, (counts.get(name) ?? 0) + 1);
  const used = new Map<string, number>();
  return new Map(
    plain.map(([id, name]) => {
      if (counts.get(name) === 1) return [id, name];
      const number = (used.get(name) ?? 0) + 1;
      used.set(name, number);
      return [id, words.numbered(name, number)];
    }),
  );
}

function plainName(thing: Thing, words: LayoutWords): string {
  if (thing.label) return thing.label;
  if (thing.kind !== 'dummy') return words.thing(thing.kind, 'asked');
  if (thing.blind === true) return words.goal('blind');
  return thing.how === 'thrown' || thing.how === 'launched'
    ? words.goal('mark')
    : words.thing('dummy', 'asked');
}

/** Whether a thing is one of several markers of one name: of a wall, a track, an edge of something. */
export function isOnEdge({ kind, label }: Thing, { things }: Layout): boolean {
  return (
    kind === 'other' &&
    Boolean(label) &&
    things.filter((other) => other.kind === kind && other.label === label).length > 1
  );
}

/** What one thing is called on the drawing, with how far it lies from where the dog is sent. */
export function thingLabel(thing: Thing, name: string, layout: Layout, words: LayoutWords): string {
  return words.thingAt(name, distanceBetweenM(layout.sendFrom ?? layout.handlerAt, thing));
}

/** Every label a layout would like, what is chosen first, then hazards, what the dog goes to, people, wind. */
export function wantedGroundLabels(
  layout: Layout,
  scale: GroundScale,
  people: readonly Mark[],
  wind: Spot | null,
  box: CardBox,
  chosen: string | null,
  words: LayoutWords,
): WantedLabel[] {
  if (!box.labels) return [];
  const names = namesOfThings(layout, words);
  const rank = (thing: Thing): number =>
    thing.thing === chosen ? 0 : thing.kind === 'hazard' ? 1 : isLineTo(thing) ? 2 : 3;
  const isNamedBefore = (thing: Thing): boolean =>
    isOnEdge(thing, layout) && layout.things.find(({ label }) => label === thing.label) !== thing;
  const things = layout.things
    .filter((thing) => thing.thing === chosen || !isNamedBefore(thing))
    .sort((a, b) => rank(a) - rank(b))
    .map((thing): WantedLabel => {
      const name = names.get(thing.thing) ?? '';
      const at = scale.toCard(thing);
      return {
        text: isOnEdge(thing, layout)
          ? (thing.label ?? '')
          : thing.kind === 'hazard'
            ? name
            : thingLabel(thing, name, layout, words),
        tone: thing.thing === chosen ? 'strong' : thing.kind === 'hazard' ? 'clay' : 'note',
        at,
        reachX: thing.thing === chosen ? 27 : 19,
        reachY: 12,
        sides:
          at.x > box.width / 2 ? ['right', 'above', 'below', 'left'] : ['left', 'above', 'below', 'right'],
        tied: true,
      };
    });
  const persons = people.map((mark): WantedLabel => {
    const isHandler = mark.mark === 'handler';
    const at = 'at' in mark ? mark.at : scale.send;
    return {
      text: isHandler ? words.you : (words.dogName ?? words.dog),
      tone: 'note',
      at,
      reachX: isHandler ? 13 : 9,
      reachY: 13,
      sides: isHandler ? ['right', 'below', 'left'] : ['left', 'below', 'right'],
      tied: false,
    };
  });
  return [...things, ...persons, ...windLabel(layout, wind, words)].filter(({ text }) => text !== '');
}

function windLabel(layout: Layout, at: Spot | null, words: LayoutWords): WantedLabel[] {
  if (at === null) return [];
  const text = words.wind(layout.windMPerS ?? 0);
  const sides = ['below', 'right', 'above'] as const;
  return [{ text, tone: 'water', at, reachX: 18, reachY: 18, sides, tied: false }];
}

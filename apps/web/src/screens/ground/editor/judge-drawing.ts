import { namesOfThings } from '@sedgeline/drawing';
import { type LayoutLine, layoutLines, layoutWarnings, thingsAtHandler } from '@sedgeline/engine/ground';
import type { Words } from '@sedgeline/words';
import type { EditedLayout } from './layout-edit.ts';

/** A drawing measured: lines by what they go to, and what may interfere, said. */
export interface JudgedDrawing {
  readonly names: ReadonlyMap<string, string>;
  readonly lines: ReadonlyMap<string, LayoutLine>;
  readonly warnings: readonly {
    readonly key: string;
    readonly about: readonly string[];
    readonly text: string;
  }[];
}

type Warning = ReturnType<typeof layoutWarnings>[number];

/** Measures a drawing. What lies at the handler's feet is said, and the rest measured without it. */
export function judgeDrawing(layout: EditedLayout, words: Words): JudgedDrawing {
  const names = namesOfThings(layout, words.picture);
  const atFeet = new Set(thingsAtHandler(layout).map(({ thing }) => thing));
  const sound = { ...layout, things: layout.things.filter(({ thing }) => !atFeet.has(thing)) };
  const told = layoutWarnings(sound).map((warning) => toldWarning(warning, names, words));
  const feet = [...atFeet].map((thing) => atFeetWarning(thing, names, words));
  const lines = new Map(layoutLines(sound).map((line) => [line.to, line]));
  return { names, lines, warnings: [...feet, ...told] };
}

/**
 * Measures one thing of a drawing, as often as there are frames: its line, and what it and any other do to each other.
 * What `judgeDrawing` says of the same thing, for an n-th of the work.
 */
export function judgeThing(
  layout: EditedLayout,
  id: string,
  names: ReadonlyMap<string, string>,
  words: Words,
): JudgedDrawing {
  const thing = layout.things.find((each) => each.thing === id);
  const atFeet = new Set(thingsAtHandler(layout));
  if (thing === undefined) return { names, lines: new Map(), warnings: [] };
  if (atFeet.has(thing)) return { names, lines: new Map(), warnings: [atFeetWarning(id, names, words)] };
  const others = layout.things.filter((each) => each !== thing && !atFeet.has(each));
  // Markers have no lines of their own, and are in the way of one like anything else.
  const beside = others.map((other) => ({ ...other, kind: 'other' as const }));
  const line = layoutLines({ ...layout, things: [thing, ...beside] }).find(({ to }) => to === id);
  const found = new Map<string, JudgedDrawing['warnings'][number]>();
  // In the drawing's own order, by which a sentence about two names them.
  const pairs = others.map((other) => layout.things.filter((each) => each === thing || each === other));
  for (const things of [[thing], ...pairs]) {
    for (const warning of layoutWarnings({ ...layout, things })) {
      const told = toldWarning(warning, names, words);
      if (told.about.includes(id)) found.set(told.key, told);
    }
  }
  return { names, lines: new Map(line ? [[id, line]] : []), warnings: [...found.values()] };
}

const atFeetWarning = (thing: string, names: ReadonlyMap<string, string>, { ground }: Words) => ({
  key: `at-handler ${thing}`,
  about: [thing],
  text: begun(ground.editor.warnings.atHandler(names.get(thing) ?? thing)),
});

function toldWarning(
  warning: Warning,
  names: ReadonlyMap<string, string>,
  { layout: say }: Words,
): JudgedDrawing['warnings'][number] {
  const nameOf = (id: string): string => names.get(id) ?? id;
  const about = [
    ...('to' in warning ? [warning.to] : []),
    ...('thing' in warning ? [warning.thing] : []),
    ...('other' in warning ? [warning.other] : []),
  ];
  const named = {
    ...warning,
    ...('to' in warning && { to: nameOf(warning.to) }),
    ...('thing' in warning && { thing: nameOf(warning.thing) }),
    ...('other' in warning && { other: nameOf(warning.other) }),
  };
  return { key: [warning.code, ...about].join(' '), about, text: begun(say.warning(named)) };
}

/** A sentence may begin with the name of a thing. */
const begun = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

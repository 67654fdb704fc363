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

/** Measures a drawing. What lies at the handler's feet is said, and the rest measured without it. */
export function judgeDrawing(layout: EditedLayout, { picture, layout: say, ground }: Words): JudgedDrawing {
  const names = namesOfThings(layout, picture);
  const nameOf = (id: string): string => names.get(id) ?? id;
  const atFeet = new Set(thingsAtHandler(layout).map(({ thing }) => thing));
  const sound = { ...layout, things: layout.things.filter(({ thing }) => !atFeet.has(thing)) };
  const told = layoutWarnings(sound).map((warning) => {
    const about = ['to', 'thing', 'other'].flatMap((field) =>
      field in warning ? [String(warning[field as keyof typeof warning])] : [],
    );
    const named = {
      ...warning,
      ...('to' in warning && { to: nameOf(warning.to) }),
      ...('thing' in warning && { thing: nameOf(warning.thing) }),
      ...('other' in warning && { other: nameOf(warning.other) }),
    };
    return { key: [warning.code, ...about].join(' '), about, text: begun(say.warning(named)) };
  });
  const feet = [...atFeet].map((thing) => ({
    key: `at-handler ${thing}`,
    about: [thing],
    text: begun(ground.editor.warnings.atHandler(nameOf(thing))),
  }));
  const lines = new Map(layoutLines(sound).map((line) => [line.to, line]));
  return { names, lines, warnings: [...feet, ...told] };
}

/** A sentence may begin with the name of a thing. */
const begun = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

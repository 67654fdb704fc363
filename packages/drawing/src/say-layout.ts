import { bearingDegOf, distanceBetweenM, type Layout } from '@sedgeline/engine/ground';
import { type LayoutWords, namesOfThings } from './layout-labels.ts';

/** The text that stands for a drawn layout: everything on it with distance and bearing from where the dog is sent. */
export function sayLayout(layout: Layout, words: LayoutWords): string {
  const from = layout.sendFrom ?? layout.handlerAt;
  const names = namesOfThings(layout, words);
  const things = layout.things.map((thing) => {
    const said = words.thingAt(names.get(thing.thing) ?? '', distanceBetweenM(from, thing));
    return `${said}, ${words.bearing(bearingDegOf(from, thing))}`;
  });
  const apartM = distanceBetweenM(from, layout.handlerAt);
  const where = apartM >= 1 ? [words.said.handlerApart(apartM)] : [];
  const { windMPerS, windFromDeg } = layout;
  const wind = windMPerS && windFromDeg !== undefined ? [words.wind(windMPerS)] : [];
  const parts = [...things, ...where, ...wind];
  const text = parts.length > 0 ? parts.join('; ') : words.said.nothing;
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}

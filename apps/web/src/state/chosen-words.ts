import { type Words, words } from '@sedgeline/words';
import { useSettings } from './settings.ts';

let last: { readonly key: string; readonly words: Words } | null = null;

/** The catalogue in the handler's dialect and units; the same object until either changes. */
export function useChosenWords(): Words {
  const dialect = useSettings((s) => s.dialect);
  const units = useSettings((s) => s.units);
  const key = `${dialect} ${units}`;
  if (last?.key !== key) last = { key, words: words(dialect, units) };
  return last.words;
}

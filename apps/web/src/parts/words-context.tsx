import { type Words, words } from '@sedgeline/words';
import { createContext, type ReactNode, useContext } from 'react';

const WordsContext = createContext<Words>(words());

/** Hands the catalogue down; keep `value` the same while dialect and units are, or every screen renders again. */
export function WordsProvider({ value, children }: { readonly value: Words; readonly children: ReactNode }) {
  return <WordsContext value={value}>{children}</WordsContext>;
}

/** The catalogue of sentences in the handler's own words and units. */
export const useWords = (): Words => useContext(WordsContext);

import { type ReactNode, useState } from 'react';
import { createPortal } from 'react-dom';
import { WhySheet } from './why-sheet.tsx';

/** The sheet that says why, and how a screen opens it for a rep. Opening it with `null` closes it. */
export function useWhySheet(): {
  readonly isOpen: boolean;
  readonly openWhy: (rep: string | null) => void;
  readonly sheet: ReactNode;
} {
  const [rep, setRep] = useState<string | null>(null);
  return {
    isOpen: rep !== null,
    openWhy: setRep,
    // Outside whatever opens it: a sheet in a table's cell would be dressed as one.
    sheet:
      rep === null ? null : createPortal(<WhySheet rep={rep} onClose={() => setRep(null)} />, document.body),
  };
}

import type { BroughtBack } from '@sedgeline/words';
import { useRef } from 'react';
import { Button } from '../../parts/button.tsx';
import { useWords } from '../../parts/words-context.tsx';

/** A file chosen, and what came of it. */
export function BringBack({
  broughtBack,
  onBringBack,
}: {
  readonly broughtBack: BroughtBack | null;
  readonly onBringBack: (file: File) => void;
}) {
  const { keeping } = useWords();
  const chooser = useRef<HTMLInputElement>(null);
  const isNothing =
    broughtBack !== null && broughtBack.added + broughtBack.known + broughtBack.differing === 0;
  return (
    <>
      <input
        ref={chooser}
        type="file"
        accept=".jsonl,.ndjson,.json,.txt"
        hidden
        onChange={({ currentTarget }) => {
          const file = currentTarget.files?.[0];
          if (file) onBringBack(file);
          currentTarget.value = '';
        }}
      />
      <Button onClick={() => chooser.current?.click()}>{keeping.bringBack}</Button>
      <p className="soft setup-note" role="status">
        {broughtBack === null && keeping.bringBackHint}
        {broughtBack !== null && (isNothing ? keeping.notAnExport : keeping.broughtBack(broughtBack))}
      </p>
    </>
  );
}

import { useEffect, useRef, useState } from 'react';
import type { InstallAnswer, InstallOffer } from '../../devices/install-prompt.ts';
import { Button } from '../../parts/button.tsx';
import { useWords } from '../../parts/words-context.tsx';

export interface InstallPartProps {
  readonly install: { readonly offer: InstallOffer; readonly ask: () => Promise<InstallAnswer> };
}

/** Onto the home screen: where the browser offers it, or how it is done by hand. Nothing where it is there already. */
export function InstallPart({ install: { offer, ask } }: InstallPartProps) {
  const { install } = useWords().setup;
  const [answer, setAnswer] = useState<InstallAnswer | null>(null);
  const said = useRef<HTMLParagraphElement>(null);
  // The key goes when it has been pressed: whoever works by keyboard stands on what was said.
  useEffect(() => {
    if (answer !== null) said.current?.focus();
  }, [answer]);
  if (offer === 'none' && answer === null) return null;
  return (
    <section className="setup-part" aria-labelledby="install-title">
      <h2 id="install-title">{install.title}</h2>
      {offer === 'by-hand' ? <p>{install.byHand}</p> : <p>{install.why}</p>}
      {offer === 'prompt' && <Button onClick={() => void ask().then(setAnswer)}>{install.ask}</Button>}
      <p ref={said} className="soft setup-note" role="status" tabIndex={-1}>
        {answer === null
          ? install.hint[offer === 'by-hand' ? 'by-hand' : 'prompt']
          : install.answered[answer]}
      </p>
    </section>
  );
}

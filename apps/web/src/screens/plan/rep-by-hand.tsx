import type { LaidLeg } from '@sedgeline/engine/session';
import { useState } from 'react';
import { AskEditor } from '../../parts/ask-editor/ask-editor.tsx';
import { setAskField } from '../../parts/ask-editor/set-ask-field.ts';
import { Choice } from '../../parts/choice.tsx';
import { LinkSummary } from '../../parts/link-summary.tsx';
import { useWords } from '../../parts/words-context.tsx';

/** The handler's own asks: every field of every leg, the chain kept true to each change. */
export function RepByHand({
  legs,
  onSet,
}: {
  readonly legs: readonly LaidLeg[];
  readonly onSet: (legs: readonly LaidLeg[]) => void;
}) {
  const { planScreen, work, trade } = useWords();
  const [isOpen, setOpen] = useState(false);
  const [wanted, setWanted] = useState(0);
  const at = Math.min(wanted, legs.length - 1);
  const leg = legs[at];
  return (
    <details className="rep-by-hand" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <LinkSummary>{planScreen.byHand}</LinkSummary>
      {isOpen && leg !== undefined && (
        <div className="ask-by-hand">
          {legs.length > 1 && (
            <Choice
              legend={work.panel.leg}
              options={legs.map(({ skill }, n) => ({ value: String(n), label: trade.skill(skill) }))}
              value={String(at)}
              onChoose={(n) => setWanted(Number(n))}
            />
          )}
          <AskEditor leg={leg} onSet={(field, value) => onSet(setAskField(legs, at, field, value))} />
        </div>
      )}
    </details>
  );
}

import type { PlannedRep } from '@sedgeline/engine/session';
import { useState } from 'react';
import { AskEditor } from '../../parts/ask-editor/ask-editor.tsx';
import { useWords } from '../../parts/words-context.tsx';
import { LegChance } from './leg-chance.tsx';
import { useAskDraft } from './use-ask-draft.ts';

interface PanelAskProps {
  readonly rep: PlannedRep;
  /** Legs before this one are graded: what was done is amended, not asked anew. */
  readonly firstOpen: number;
}

/** What is asked, leg by leg, every field of it; the card above follows. */
export function PanelAsk({ rep, firstOpen }: PanelAskProps) {
  const { work, trade } = useWords();
  const draft = useAskDraft(rep);
  const [leg, setLeg] = useState(firstOpen);
  const asked = draft.rep.legs[leg];
  const judged = rep.legs[leg];
  return (
    <section className="work-panel-part" aria-label={work.panel.ask}>
      <div className="work-tabs" role="tablist" aria-label={work.panel.leg}>
        {draft.rep.legs.map(({ skill }, i) => (
          <button
            key={i}
            type="button"
            role="tab"
            aria-selected={i === leg}
            disabled={i < firstOpen}
            onClick={() => setLeg(i)}
          >
            {trade.skill(skill)}
          </button>
        ))}
      </div>
      {judged !== undefined && <LegChance leg={judged} />}
      {asked !== undefined && (
        <AskEditor leg={asked} onSet={(field, value) => draft.set(leg, field, value)} />
      )}
    </section>
  );
}

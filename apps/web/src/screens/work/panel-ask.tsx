import type { PlannedRep } from '@sedgeline/engine/session';
import { useState } from 'react';
import { useWords } from '../../parts/words-context.tsx';
import { AskEditor } from './ask-editor.tsx';
import { LegChance } from './leg-chance.tsx';
import { useAskDraft } from './use-ask-draft.ts';

interface PanelAskProps {
  readonly rep: PlannedRep;
  /** Legs before this one are graded: what was done is amended, not asked anew. */
  readonly firstOpen: number;
}

/** How much later (or earlier) "I blew later" moves the stop: a tenth of the send, at least 1 m (our judgement, 2026). */
const BLEW_SHARE = 0.1;

/** What is asked, leg by leg, every field of it; the card above follows. */
export function PanelAsk({ rep, firstOpen }: PanelAskProps) {
  const { work, trade } = useWords();
  const draft = useAskDraft(rep);
  const [leg, setLeg] = useState(firstOpen);
  const asked = draft.rep.legs[leg];
  const judged = rep.legs[leg];
  const stop = draft.rep.legs.findIndex(({ skill }, i) => skill === 'stop' && i >= firstOpen);
  const stopM = draft.rep.legs[stop]?.ask.distanceM ?? 0;
  const byM = Math.max(1, Math.round(stopM * BLEW_SHARE));
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
      {stop >= 0 && (
        <div className="work-panel-keys" title={work.panel.blewHint(byM)}>
          <button type="button" onClick={() => draft.set(stop, 'distanceM', Math.max(1, stopM - byM))}>
            {work.panel.blewEarly}
          </button>
          <button type="button" onClick={() => draft.set(stop, 'distanceM', Math.min(400, stopM + byM))}>
            {work.panel.blewLate}
          </button>
        </div>
      )}
      {asked !== undefined && (
        <AskEditor leg={asked} onSet={(field, value) => draft.set(leg, field, value)} />
      )}
    </section>
  );
}

import type { Ask } from '@sedgeline/engine/ability';
import type { PlannedRep } from '@sedgeline/engine/session';
import type { AskedRep } from '@sedgeline/projections';
import { useCallback, useRef, useState } from 'react';
import { setAskField } from '../../parts/ask-editor/set-ask-field.ts';
import { tapWork } from '../../state/kennel.ts';

/** The rep as the handler is changing it: shown at once, judged by the worker as fast as it answers. */
export interface AskDraft {
  readonly rep: AskedRep;
  readonly set: (leg: number, field: keyof Ask, value: Ask[keyof Ask]) => void;
}

/** A draft of the rep in hand; every change is sent on, only the latest where the worker is still busy. */
export function useAskDraft(rep: PlannedRep): AskDraft {
  const [draft, setDraft] = useState<AskedRep>(() => ({
    legs: rep.legs.map(({ skill, ask }) => ({ skill, ask })),
    clean: rep.clean,
    purpose: rep.purpose,
  }));
  const latest = useRef(draft);
  const sent = useRef(draft);
  const isBusy = useRef(false);
  const sendOn = useCallback(async () => {
    if (isBusy.current) return;
    isBusy.current = true;
    while (sent.current !== latest.current) {
      sent.current = latest.current;
      await tapWork({ do: 'choose', rep: sent.current });
    }
    isBusy.current = false;
  }, []);
  const set = useCallback(
    (leg: number, field: keyof Ask, value: Ask[keyof Ask]) => {
      latest.current = { ...latest.current, legs: setAskField(latest.current.legs, leg, field, value) };
      setDraft(latest.current);
      void sendOn();
    },
    [sendOn],
  );
  return { rep: draft, set };
}

import { useEffect, useRef } from 'react';
import { canStayAwake } from '../../devices/wake-lock.ts';
import { useWords } from '../../parts/words-context.tsx';
import { useLive } from '../../state/live-state.ts';
import type { WorkScreen } from '../../workers/kennel-calls.ts';
import { useLongPress } from './use-long-press.ts';
import { useNow } from './use-now.ts';

interface PocketScreenProps {
  readonly screen: WorkScreen;
  readonly onBack: () => void;
}

/** Awake, dark and touch-proof: for the pocket. Only a press that is held comes back; keys and remotes go on recording. */
export function PocketScreen({ screen, onBack }: PocketScreenProps) {
  const { work, ask, listenScreen } = useWords();
  const live = useLive((s) => s.running);
  const nowMs = useNow();
  const { view, chosen } = screen;
  const rep = chosen?.rep ?? view.asked;
  const { isHeld, begin, end, handlers } = useLongPress(onBack);
  const dialog = useRef<HTMLDivElement>(null);
  useEffect(() => {
    dialog.current?.focus({ preventScroll: true });
  }, []);
  useEffect(() => {
    const down = (event: KeyboardEvent) => event.key === 'Escape' && begin();
    const up = (event: KeyboardEvent) => event.key === 'Escape' && end();
    addEventListener('keydown', down);
    addEventListener('keyup', up);
    return () => {
      removeEventListener('keydown', down);
      removeEventListener('keyup', up);
    };
  }, [begin, end]);
  return (
    <div
      ref={dialog}
      className="work-pocket"
      role="dialog"
      aria-modal="true"
      aria-label={work.pocket.title}
      tabIndex={-1}
      onContextMenu={(event) => event.preventDefault()}
    >
      <p className="work-pocket-now">
        <b>{view.dogName}</b> {work.rep(view.repNumber)}
        <time>{work.clock((nowMs - view.openedAtMs) / 1000)}</time>
      </p>
      {rep !== null && <p className="work-pocket-ask">{ask.rep(rep.legs)}</p>}
      <div className="work-pocket-say">
        <p>{canStayAwake() ? work.pocket.awake : work.pocket.notAwake}</p>
        {live !== null && (
          <p data-listening>
            {listenScreen.live.light} {listenScreen.at(live.doneS)}. {listenScreen.live.pocket}
          </p>
        )}
        <p>{work.pocket.keysGoOn}</p>
      </div>
      <button
        type="button"
        className="work-pocket-hold"
        data-held={isHeld}
        aria-describedby="pocket-hint"
        {...handlers}
        onClick={({ detail }) => {
          // A screen reader presses without a pointer and without a key: there is nothing it could hold.
          if (detail === 0) onBack();
        }}
      >
        <span className="work-pocket-fill" aria-hidden="true" />
        <span>{work.pocket.hold}</span>
      </button>
      <p id="pocket-hint" className="work-pocket-hint">
        {work.pocket.holdHint}
      </p>
    </div>
  );
}

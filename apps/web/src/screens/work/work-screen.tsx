import { type ReactNode, useCallback, useDeferredValue, useEffect, useRef, useState } from 'react';
import { useWakeLock } from '../../devices/wake-lock.ts';
import { Announcer } from '../../parts/announcer.tsx';
import { ListeningBar } from '../../parts/listening-bar.tsx';
import { useWords } from '../../parts/words-context.tsx';
import { refreshWork, watchSession } from '../../state/kennel.ts';
import { useKennel } from '../../state/kennel-store.ts';
import { useSettings } from '../../state/settings.ts';
import { BreakScreen } from './break-screen.tsx';
import { NotSavedBar } from './not-saved-bar.tsx';
import { PauseScreen } from './pause-screen.tsx';
import { PocketScreen } from './pocket-screen.tsx';
import { RepScreen } from './rep-screen.tsx';
import { SessionHeader } from './session-header.tsx';
import { TurnBar } from './turn-bar.tsx';
import { useTurn } from './use-turn.ts';
import { useWorkTaps } from './use-work-taps.ts';

/** After so long away, the suggestion is made afresh: the break has come due, the day has gone on (our judgement, 2026). */
const AWAY_MS = 5 * 60_000;

/** Work: one session, where it is. `news` stands over it and takes its room from the card, never from the pad. */
export function WorkScreen({ session, news }: { readonly session: string; readonly news: ReactNode }) {
  const { work } = useWords();
  const hand = useSettings((s) => s.hand);
  const isReady = useKennel((s) => s.isReady);
  const shown = useKennel((s) => (s.work?.session === session ? s.work : null));
  const taps = useWorkTaps();
  const main = useRef<HTMLElement>(null);
  const latest = shown?.screen ?? null;
  // First drawn in slices, then at once with every tap.
  const isDrawn = useDeferredValue(latest !== null, false);
  const screen = isDrawn ? latest : null;
  const isShown = screen !== null;
  const [isPocketed, setPocketed] = useState(false);
  const intoPocket = useCallback(() => setPocketed(true), []);
  const outOfPocket = useCallback(() => setPocketed(false), []);
  useWakeLock(isShown);
  useTurn(screen);
  useRefreshAfterAway(isShown && isReady);
  useEffect(() => {
    if (isReady) void watchSession(session);
  }, [isReady, session]);
  useEffect(() => {
    main.current?.focus({ preventScroll: true });
  }, []);
  const dogName = screen?.view.dogName;
  useEffect(() => {
    if (dogName !== undefined) document.title = work.title(dogName);
  }, [work, dogName]);
  return (
    <main
      ref={main}
      className="work"
      data-hand={hand}
      data-open={isShown}
      data-rough={shown?.isRough ?? true}
      tabIndex={-1}
      id="main"
    >
      <div className="work-news">
        <NotSavedBar />
        <ListeningBar />
        {news}
      </div>
      <Announcer />
      {screen !== null && (
        <div className="work-top">
          <SessionHeader view={screen.view} />
          {screen.view.inTurn !== null && <TurnBar inTurn={screen.view.inTurn} session={session} />}
        </div>
      )}
      {shown?.isRough === true && (
        <p className="work-opening" role="status">
          {work.opening}
        </p>
      )}
      {screen !== null && (
        <Part screen={screen} isRough={shown?.isRough ?? true} taps={taps} onPocket={intoPocket} />
      )}
      {screen !== null && isPocketed && <PocketScreen screen={screen} onBack={outOfPocket} />}
    </main>
  );
}

function Part({ screen, isRough, taps, onPocket }: Parameters<typeof RepScreen>[0]) {
  const { view, chosen } = screen;
  const { breakRunning } = view;
  const isPause = breakRunning === null && view.asked === null && chosen === null;
  // No key answers before the record is read: a tap that is let fall would look like one that was taken.
  if (breakRunning !== null || isPause) {
    return (
      <fieldset className="work-held" disabled={isRough}>
        {isPause && <PauseScreen screen={screen} taps={taps} />}
        {breakRunning !== null && <BreakScreen running={breakRunning} taps={taps} />}
      </fieldset>
    );
  }
  return <RepScreen screen={screen} isRough={isRough} taps={taps} onPocket={onPocket} />;
}

function useRefreshAfterAway(isOn: boolean): void {
  useEffect(() => {
    if (!isOn) return;
    let leftAtMs = Date.now();
    const look = () => {
      if (document.visibilityState === 'hidden') leftAtMs = Date.now();
      else if (Date.now() - leftAtMs > AWAY_MS) void refreshWork();
    };
    document.addEventListener('visibilitychange', look);
    return () => document.removeEventListener('visibilitychange', look);
  }, [isOn]);
}

import { startTransition } from 'react';
import { createRoot } from 'react-dom/client';
import { navigate } from 'wouter/use-browser-location';
import { App } from './app.tsx';
import { startAppUpdate } from './devices/app-update.ts';
import { listenForInstall } from './devices/install-prompt.ts';
import { openRecord } from './state/kennel.ts';
import { useKennel } from './state/kennel-store.ts';
import { followTheme, useSettings } from './state/settings.ts';

const FRONT_DOOR = '/';
/** Whoever came in elsewhere and asks for Dogs before the facts are read wants Dogs. */
const cameByFrontDoor = location.pathname === FRONT_DOOR;

/** Where the last checkpoint sent it: that is known before the facts are read, and may be over by them. */
let sentTo: string | null = null;

/** Opened at its front door with a session under way, the program goes where the work is. */
function goToOpenSession(session: string | null): void {
  if (session === null || !cameByFrontDoor || location.pathname !== FRONT_DOOR) return;
  sentTo = session;
  navigate(`/work/${session}`, { replace: true });
}

/** Back to the front door where the facts say that the session was over. */
function leaveIfOver(): void {
  if (sentTo === null || location.pathname !== `/work/${sentTo}`) return;
  const isOpen = useKennel.getState().dogs?.dogs.some((row) => row.openSession === sentTo);
  if (isOpen === false) navigate(FRONT_DOOR, { replace: true });
}

/** The last checkpoint tells where the work is before the facts are read. */
const stopListening = useKennel.subscribe(({ work }) => {
  if (work === null) return;
  stopListening();
  goToOpenSession(work.session);
});

followTheme(document.documentElement);
listenForInstall(window);
const root = document.getElementById('root');
if (root === null) throw new Error('index.html: expected an element with the id "root"');
// In a transition, React draws in slices: a tap or a scroll gets in between.
const screens = createRoot(root);
startTransition(() => screens.render(<App />));
void openRecord(useSettings.getState().record).then((session) => {
  stopListening();
  leaveIfOver();
  goToOpenSession(session);
  void import('./state/sweep-at-opening.ts').then(({ sweepAtOpening }) => sweepAtOpening());
});
startAppUpdate();

import { create } from 'zustand';
import { canAddByHand, isOnHomeScreen } from './home-screen.ts';

/**
 * How the program can be put on the home screen here: the browser asks for us (`prompt`), the person does it by hand
 * from the browser's own menu (`by-hand`), or not at all, or it is there already (`none`).
 */
export type InstallOffer = 'prompt' | 'by-hand' | 'none';
export type InstallAnswer = 'accepted' | 'dismissed';

/** Chromium's event that holds its own install prompt back. It can be asked once. */
interface InstallEvent extends Event {
  prompt(): Promise<{ readonly outcome: InstallAnswer }>;
}

interface Install {
  readonly offer: InstallOffer;
  /** Lets the browser ask; resolves with what was answered. */
  readonly ask: () => Promise<InstallAnswer>;
}

const NOTHING: Install = { offer: 'none', ask: async () => 'dismissed' };

/** Whether the program can be put on the home screen, and the way to do it. */
export const useInstall = create<Install>()(() => NOTHING);

/** What of a page is listened to and looked at. */
export type InstallPage = EventTarget & {
  readonly navigator: { readonly userAgent: string; readonly maxTouchPoints: number };
  readonly matchMedia: (query: string) => { readonly matches: boolean };
};

/** Listens for the browser's offer; it is shown in Setup, never in the way. */
export function listenForInstall(page: InstallPage): void {
  const there = isOnHomeScreen(page.navigator, (query) => page.matchMedia(query).matches);
  useInstall.setState(!there && canAddByHand(page.navigator) ? { ...NOTHING, offer: 'by-hand' } : NOTHING);
  page.addEventListener('beforeinstallprompt', (event) => {
    event.preventDefault();
    const held = event as InstallEvent;
    const ask = async (): Promise<InstallAnswer> => {
      useInstall.setState(NOTHING);
      return (await held.prompt()).outcome;
    };
    useInstall.setState({ offer: 'prompt', ask });
  });
  page.addEventListener('appinstalled', () => useInstall.setState(NOTHING));
}

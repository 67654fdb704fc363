import { create } from 'zustand';

/** Chromium's event that holds its own install prompt back. */
interface InstallEvent extends Event {
  prompt(): Promise<unknown>;
}

/** Whether the browser offers to put the program on the home screen, and the way to ask it to. */
export const useInstall = create<{ readonly isOffered: boolean; readonly ask: () => void }>()(() => ({
  isOffered: false,
  ask: () => undefined,
}));

/** Listens for the browser's offer; it is shown in Setup, never in the way. */
export function listenForInstall(): void {
  addEventListener('beforeinstallprompt', (event) => {
    event.preventDefault();
    const offer = event as InstallEvent;
    useInstall.setState({ isOffered: true, ask: () => void offer.prompt() });
  });
  addEventListener('appinstalled', () => useInstall.setState({ isOffered: false }));
}

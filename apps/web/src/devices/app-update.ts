import { registerSW } from 'virtual:pwa-register';
import { create } from 'zustand';

/** A newer program is waiting, and the way to take it. It is never taken in the middle of a session. */
export const useAppUpdate = create<{
  readonly isWaiting: boolean;
  readonly isOfflineReady: boolean;
  readonly take: () => void;
}>()(() => ({ isWaiting: false, isOfflineReady: false, take: () => undefined }));

/** Registers the service worker; the page is reloaded only by `take`. */
export function startAppUpdate(): void {
  const update = registerSW({
    onNeedRefresh: () => useAppUpdate.setState({ isWaiting: true, take: () => void update(true) }),
    onOfflineReady: () => useAppUpdate.setState({ isOfflineReady: true }),
  });
}

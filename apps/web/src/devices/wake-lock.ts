import { useEffect } from 'react';

/** Whether this browser can keep the screen awake at all. */
export const canStayAwake = (): boolean => 'wakeLock' in navigator;

/** Keeps the screen awake while `isWanted`; asked for again when the page comes back. A refusal changes nothing. */
export function useWakeLock(isWanted: boolean): void {
  useEffect(() => {
    if (!isWanted || !canStayAwake()) return;
    let lock: WakeLockSentinel | null = null;
    let isOver = false;
    const ask = async () => {
      if (document.visibilityState !== 'visible') return;
      try {
        lock = await navigator.wakeLock.request('screen');
        if (isOver) await lock.release();
      } catch {
        lock = null;
      }
    };
    void ask();
    document.addEventListener('visibilitychange', ask);
    return () => {
      isOver = true;
      document.removeEventListener('visibilitychange', ask);
      void lock?.release();
    };
  }, [isWanted]);
}

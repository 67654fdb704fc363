import { playTone, readyTone } from '../devices/soft-tone.ts';
import { vibrate } from '../devices/vibrate.ts';
import { useSettings } from './settings.ts';

/** Lets the hand feel something, where the handler wants it and it is not to be quiet. */
export function pulse(what: Parameters<typeof vibrate>[0]): void {
  const { vibration, quiet } = useSettings.getState();
  if (vibration && !quiet) vibrate(what);
}

/** Makes sound possible at a touch, where a tone may be wanted later. */
export function readySound(): void {
  if (useSettings.getState().tone) readyTone();
}

/** Plays the tone after so many seconds, where it is wanted; what comes back takes it back. */
export function soundAfter(seconds: number): () => void {
  const { tone, quiet } = useSettings.getState();
  return tone && !quiet ? playTone(seconds) : () => undefined;
}

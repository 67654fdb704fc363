import { GRADES } from '@sedgeline/engine/ability';
import { useEffect } from 'react';
import { useSettings } from '../../state/settings.ts';
import type { After } from '../../workers/kennel-calls.ts';
import { CAUSES, EXPECTATIONS, FIRST_STRIP_KEY } from './after-strip.tsx';
import type { WideKey } from './outcome-pad.tsx';
import type { WorkTaps } from './use-work-taps.ts';

/** What the keys act on just now. */
export interface KeysNow {
  readonly taps: WorkTaps;
  readonly wide: WideKey;
  readonly after: After | null;
  readonly pressWide: () => void;
  readonly openMore: () => void;
  readonly openWhy: () => void;
}

/** Whether the key belongs to a field that is being typed into, or to a control the keyboard stands on. */
function isSpokenFor(event: KeyboardEvent): boolean {
  const at = event.target;
  if (!(at instanceof HTMLElement)) return false;
  if (at.matches('input, select, textarea, [contenteditable]')) return true;
  return event.key === ' ' && at.matches('button, a, summary, [role="button"]');
}

function pressStrip(after: After, index: number, taps: WorkTaps): void {
  const cause = CAUSES[index];
  const expectation = EXPECTATIONS[index];
  if (after.about === 'cause' && cause !== undefined) taps.cause(cause);
  if (after.about === 'expectation' && expectation !== undefined) taps.expectation(expectation);
}

function press(key: string, now: KeysNow): boolean {
  const { taps, after } = now;
  const grade = GRADES[Number(key) - 1];
  if (grade !== undefined) taps.grade(grade);
  else if (key === '0') taps.undo();
  else if (key === ' ') now.pressWide();
  else if (key === 'h') taps.turn('harder');
  else if (key === 'e') taps.turn('easier');
  else if (key === 'c') taps.turn('clean');
  else if (key === 'b') taps.startBreak();
  else if (key === 'm') now.openMore();
  else if (key === 'w') now.openWhy();
  else if (after !== null && /^[4-7]$/.test(key)) pressStrip(after, Number(key) - FIRST_STRIP_KEY, taps);
  else return false;
  return true;
}

/** Single keys of a paired keyboard or clicker that types; off in Setup, in fields, and with a modifier held. */
export function useWorkKeys(now: KeysNow, isOn: boolean): void {
  const isWanted = useSettings((s) => s.keysOnWork);
  useEffect(() => {
    if (!isOn || !isWanted) return;
    const listen = (event: KeyboardEvent) => {
      if (event.defaultPrevented || event.repeat || event.ctrlKey || event.metaKey || event.altKey) return;
      if (isSpokenFor(event)) return;
      if (press(event.key.toLowerCase(), now)) event.preventDefault();
    };
    addEventListener('keydown', listen);
    return () => removeEventListener('keydown', listen);
  }, [now, isOn, isWanted]);
}

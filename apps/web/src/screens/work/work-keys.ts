import { GRADES } from '@sedgeline/engine/ability';
import { useLayoutEffect } from 'react';
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
  readonly openPocket: () => void;
  /** On to the next of the dogs worked in turn; nothing where it is worked alone. */
  readonly nextDog: () => void;
  /** Says or takes back that the miss in hand paid all the same. */
  readonly gotIt: () => void;
}

/** Whether the key belongs to a field that is being typed into, or to a control the keyboard stands on. */
function isSpokenFor(event: KeyboardEvent): boolean {
  const at = event.target;
  if (!(at instanceof HTMLElement)) return false;
  if (at.matches('input, select, textarea, [contenteditable]')) return true;
  return /^( |Enter)$/.test(event.key) && at.matches('button, a, summary, [role="button"]');
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
  else if (key === '0' || key === 'pageup') taps.undo();
  else if (key === ' ' || key === 'pagedown') now.pressWide();
  else if (key === 'enter') taps.grade('missed');
  else if (key === 'h') taps.turn('harder');
  else if (key === 'e') taps.turn('easier');
  else if (key === 'c') taps.turn('clean');
  else if (key === 'b') taps.startBreak();
  else if (key === 'm') now.openMore();
  else if (key === 'w') now.openWhy();
  else if (key === 'l') taps.blew('later');
  else if (key === 'k') taps.blew('earlier');
  else if (key === 'g') now.gotIt();
  else if (key === 'n') now.nextDog();
  else if (key === 'p') now.openPocket();
  else if (after !== null && /^[4-7]$/.test(key)) pressStrip(after, Number(key) - FIRST_STRIP_KEY, taps);
  else return false;
  return true;
}

/** Single keys of a paired keyboard, a clicker that types or a presenter's remote (page keys and Enter); off in Setup, in fields, and with a modifier held. */
export function useWorkKeys(now: KeysNow, isOn: boolean): void {
  const isWanted = useSettings((s) => s.keysOnWork);
  // Before the picture is painted: a key pressed on what is seen is never taken for the picture before it.
  useLayoutEffect(() => {
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

import type { FilmMarkName } from '@sedgeline/words';

/** The letter of each mark, shown on its key. */
export const MARK_LETTERS: Readonly<Record<FilmMarkName, string>> = {
  sent: 'S',
  whistle: 'W',
  halt: 'H',
  cast: 'C',
  'pick-up': 'P',
  delivery: 'D',
};
export const UNDO_LETTER = 'U';
export const LOOP_LETTER = 'L';

/** So far the arrows go, seconds. */
export const JUMP_S = 5;

/** What the keys of the bench do. */
export interface FilmActs {
  readonly step: (by: 1 | -1, isHeld: boolean) => void;
  readonly jump: (byS: number) => void;
  readonly toggle: () => void;
  readonly mark: (what: FilmMarkName) => void;
  readonly undo: () => void;
  readonly loop: () => void;
  readonly turnRep: (by: 1 | -1) => void;
}

/** Whether the key belongs to what the keyboard stands on: a field being typed into, a slider's arrows, a button's space. */
function isSpokenFor({ key, target }: KeyboardEvent): boolean {
  if (!(target instanceof HTMLElement)) return false;
  if (target.matches('input[type="range"], input[type="radio"]')) return /^(Arrow|Home|End|Page)/.test(key);
  if (target.matches('input, select, textarea, [contenteditable]')) return true;
  return /^( |Enter)$/.test(key) && target.matches('button, a, summary, label');
}

/**
 * The keys of the bench. They work while the keyboard stands somewhere on it and nowhere else, so that no letter typed in another place
 * makes a mark. Comma and full stop for a frame, arrows and space are what players of films commonly have.
 */
export function pressFilmKey(event: KeyboardEvent, acts: FilmActs): void {
  if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey || isSpokenFor(event)) return;
  const key = event.key.length === 1 ? event.key.toUpperCase() : event.key;
  const what = (Object.keys(MARK_LETTERS) as FilmMarkName[]).find((name) => MARK_LETTERS[name] === key);
  if (key === ',') acts.step(-1, event.repeat);
  else if (key === '.') acts.step(1, event.repeat);
  else if (key === 'ArrowLeft') acts.jump(-JUMP_S);
  else if (key === 'ArrowRight') acts.jump(JUMP_S);
  else if (event.repeat) return;
  else if (key === ' ') acts.toggle();
  else if (what !== undefined) acts.mark(what);
  else if (key === UNDO_LETTER) acts.undo();
  else if (key === LOOP_LETTER) acts.loop();
  else if (key === 'ArrowUp') acts.turnRep(-1);
  else if (key === 'ArrowDown') acts.turnRep(1);
  else return;
  event.preventDefault();
}

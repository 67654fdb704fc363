import { turnBack } from '@sedgeline/drawing';
import type { PlanePoint, Thing } from '@sedgeline/engine/ground';

/** What a key on the board asks for. */
export type BoardKey =
  | { readonly key: 'move'; readonly rightM: number; readonly upM: number }
  | { readonly key: 'add'; readonly what: Pick<Thing, 'kind' | 'blind'> }
  | { readonly key: 'remove' | 'paces' | 'undo' | 'redo' | 'let-go' };

/** How far an arrow key moves, and with Shift, in units of length. */
const STEP = 1;
const LONG_STEP = 5;

const ARROWS: Readonly<Record<string, readonly [right: number, up: number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};
const ADDS: Readonly<Record<string, Pick<Thing, 'kind' | 'blind'>>> = {
  p: { kind: 'post' },
  d: { kind: 'dummy' },
  b: { kind: 'dummy', blind: true },
  h: { kind: 'hazard' },
  j: { kind: 'jump' },
  m: { kind: 'other' },
};

export interface PressedKey {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly altKey: boolean;
}

/** What a key means on the board; `null` for one that is the browser's. `unitM`: metres in the shown unit of length. */
export function boardKey(pressed: PressedKey, unitM: number): BoardKey | null {
  const letter = pressed.key.toLowerCase();
  if (pressed.ctrlKey || pressed.metaKey) {
    if (letter === 'z') return { key: pressed.shiftKey ? 'redo' : 'undo' };
    return letter === 'y' ? { key: 'redo' } : null;
  }
  if (pressed.altKey) return null;
  const arrow = ARROWS[pressed.key];
  if (arrow !== undefined) {
    const step = (pressed.shiftKey ? LONG_STEP : STEP) * unitM;
    return { key: 'move', rightM: arrow[0] * step, upM: arrow[1] * step };
  }
  if (pressed.key === 'Delete' || pressed.key === 'Backspace') return { key: 'remove' };
  if (pressed.key === 'Escape') return { key: 'let-go' };
  if (letter === 's') return { key: 'paces' };
  const what = ADDS[letter];
  return what === undefined ? null : { key: 'add', what };
}

/** Where an arrow key takes a place, on a drawing with this bearing up. */
export function movedBy(
  at: PlanePoint,
  move: { readonly rightM: number; readonly upM: number },
  upDeg: number,
): PlanePoint {
  const { eastM, northM } = turnBack(move.rightM, move.upM, upDeg);
  return { eastM: at.eastM + eastM, northM: at.northM + northM };
}

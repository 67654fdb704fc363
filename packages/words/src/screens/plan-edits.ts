import type { Tongue } from '../tongue.ts';

/** Words of what a handler does to a plan: the keys, and what is said when it is done. */
export function planEditWords(t: Tongue) {
  const rep = (n: number): string => `rep ${t.number(n)}`;
  return {
    open: (n: number, ask: string): string => `Rep ${t.number(n)}: ${ask}`,
    keysOf: (n: number): string => `Change ${rep(n)}`,
    keysHint: 'On a card: Alt with an arrow moves it, Delete drops it, S swaps it, L locks it.',
    grip: (n: number): string => `Drag ${rep(n)} to another place`,
    earlier: 'Earlier',
    later: 'Later',
    lock: 'Lock',
    locked: 'Locked',
    swap: 'Swap',
    drop: 'Drop',
    addAfter: 'Add one after',
    easier: 'Easier',
    byHand: 'Set it by hand',
    breakAfter: 'Break after it',
    noBreak: 'Take the break out',
    undo: 'Undo',
    another: 'Another like it',
    mend: 'Mend it',
    said: {
      planned: 'Planned anew.',
      dropped: (n: number): string => `Dropped: ${rep(n)}.`,
      moved: (n: number, to: number): string => `Moved: ${rep(n)} is now ${rep(to)}.`,
      swapped: (n: number): string => `Swapped: ${rep(n)}.`,
      added: (n: number): string => `Added: ${rep(n)}.`,
      asked: (n: number): string => `Changed: ${rep(n)}.`,
      break: (after: number, takes: boolean): string =>
        takes ? `A break after ${rep(after)}.` : `No break after ${rep(after)}.`,
      locked: (n: number): string => `Locked: ${rep(n)} stays as it is in another plan.`,
      unlocked: (n: number): string => `Let go: ${rep(n)} may change in another plan.`,
      mended: 'Mended.',
      undone: 'The last change is undone.',
      broken: (rules: readonly string[]): string =>
        rules.length === 0 ? '' : `Not kept: ${rules.join('; ').toLowerCase()}.`,
      nothingElse: 'Nothing was changed: there is nothing else to ask there that would do.',
    },
  };
}

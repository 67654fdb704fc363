import type { PlanEdit } from '@sedgeline/engine/session';
import type { Words } from '@sedgeline/words';

/** What is said once an edit is made, to whoever listens to the screen. */
export function saidOfEdit(said: Words['planScreen']['said'], change: PlanEdit): string {
  switch (change.do) {
    case 'drop':
      return said.dropped(change.n);
    case 'move':
      return said.moved(change.n, change.to);
    case 'swap':
      return said.swapped(change.n);
    case 'add':
      return said.added(change.after + 1);
    case 'ask':
      return said.asked(change.n);
    case 'break':
      return said.break(change.after, change.takes);
  }
}

import type { MouseEvent } from 'react';

/**
 * A tap does not move the keyboard's focus: otherwise the space bar of a paired clicker would press the key that was
 * last tapped, and not the wide one.
 */
export function keepFocus(event: MouseEvent): void {
  event.preventDefault();
}

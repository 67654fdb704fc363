import type { Box } from './drawing.ts';
import { overlap } from './spots.ts';

/** How much of a box is covered, by all of the boxes together, each counted. */
export type BoxIndex = (box: Box) => number;

/** Side of a cell, in the drawing's units: a label covers a handful of them. */
const CELL = 32;

/** Looks up what boxes cover by cells, so that a drawing with a thousand of them is labelled in a moment. */
export function boxIndex(boxes: readonly Box[]): BoxIndex {
  const cells = new Map<number, number[]>();
  boxes.forEach((box, i) => {
    for (const key of cellsOf(box)) {
      const cell = cells.get(key);
      if (cell === undefined) cells.set(key, [i]);
      else cell.push(i);
    }
  });
  const lastLook = new Int32Array(boxes.length);
  let look = 0;
  return (box) => {
    look += 1;
    let covered = 0;
    for (const key of cellsOf(box)) {
      for (const i of cells.get(key) ?? []) {
        if (lastLook[i] === look) continue;
        lastLook[i] = look;
        const other = boxes[i];
        if (other !== undefined) covered += overlap(other, box);
      }
    }
    return covered;
  };
}

/** More rows than any drawing has cells. */
const ROWS = 65_536;

function cellsOf({ x, y, width, height }: Box): number[] {
  const keys: number[] = [];
  for (let column = Math.floor(x / CELL); column <= Math.floor((x + width) / CELL); column++)
    for (let row = Math.floor(y / CELL); row <= Math.floor((y + height) / CELL); row++)
      keys.push(column * ROWS + row);
  return keys;
}

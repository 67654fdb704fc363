import fc from 'fast-check';
import { expect, it } from 'vitest';
import { boxIndex } from './box-index.ts';
import { overlap } from './spots.ts';

const box = fc.record({
  x: fc.double({ min: -100, max: 500, noNaN: true }),
  y: fc.double({ min: -100, max: 500, noNaN: true }),
  width: fc.double({ min: 0, max: 200, noNaN: true }),
  height: fc.double({ min: 0, max: 60, noNaN: true }),
});

it('adds up what looking at every box adds up', () => {
  fc.assert(
    fc.property(
      fc.array(box, { maxLength: 60 }),
      fc.array(box, { minLength: 1, maxLength: 5 }),
      (boxes, asked) => {
        const covered = boxIndex(boxes);
        for (const each of asked) {
          const slowly = boxes.reduce((sum, other) => sum + overlap(other, each), 0);
          // Sums of the same figures in another order: 1e-9 of areas up to a million.
          expect(Math.abs(covered(each) - slowly)).toBeLessThanOrEqual(1e-9 * Math.max(1, slowly));
        }
      },
    ),
  );
});

import { describe, expect, it } from 'vitest';
import { numberRows, timeMarks } from './line-places.ts';

/** The narrowest line there is, of a phone 320 px wide, and how wide a minute is at least, CSS pixels. */
const LINE_PX = 254;
const MINUTE_PX = 44;
/** "0:00" is 34 px wide, "1:03:12" some 56: measured in the program's face at 15 px. */
const LABEL_PX = 36;
const LONG_LABEL_PX = 58;

describe('where a time line is marked', () => {
  it('marks whole steps from the beginning', () => {
    expect(timeMarks(32)).toEqual([0, 10, 20, 30]);
    expect(timeMarks(81)).toEqual([0, 30, 60]);
    expect(timeMarks(160)).toEqual([0, 60, 120]);
    expect(timeMarks(0.4)).toEqual([0]);
  });

  it('never writes one mark into the next, however long the sound is', () => {
    for (let lengthS = 1; lengthS < 8000; lengthS += 7) {
      const widthPx = Math.max(LINE_PX, (MINUTE_PX * lengthS) / 60);
      const marks = timeMarks(lengthS);
      const label = lengthS >= 3600 ? LONG_LABEL_PX : LABEL_PX;
      // The first begins at the line's end, half a label farther along than if it stood in the middle.
      for (const [n, s] of marks.entries())
        if (n > 0) {
          const between = ((s - marks[n - 1]!) / lengthS) * widthPx;
          expect(between, `${lengthS} s, ${s}`).toBeGreaterThanOrEqual(n === 1 ? 1.5 * label : label);
        }
    }
  });

  it('writes numbers in as few rows as keep them apart', () => {
    // 100 s: closer than 9.4 s is too close.
    expect(numberRows([5, 20, 40], 100)).toEqual([0, 0, 0]);
    expect(numberRows([5, 10, 40], 100)).toEqual([0, 1, 0]);
    expect(numberRows([5, 10, 12, 15], 100)).toEqual([0, 1, 2, 0]);
    expect(numberRows([], 100)).toEqual([]);
    // An hour is pushed sideways: 33 s stay apart enough.
    expect(numberRows([100, 134, 150], 3600)).toEqual([0, 0, 1]);
  });
});

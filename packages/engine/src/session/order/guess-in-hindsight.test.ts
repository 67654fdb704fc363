import { describe, expect, it } from 'vitest';
import { guessInHindsight } from './guess-in-hindsight.ts';

const order = (written: string) => [...written].map((one) => one === '1');

// Worked by hand.
describe('how well habits would have guessed a given order', () => {
  it('knows alternation for a pattern: nothing of its kind is as regular by chance', () => {
    const found = guessInHindsight(order('0101010101'));
    expect(found).toMatchObject({ by: 'alternate', accuracy: 1 });
    // Of the 126 arrangements of five in nine places two are as regular: itself, and 0|110011001, other than two before throughout.
    expect(found.byChance).toBeCloseTo(2 / 126, 12);
  });

  it('counts every arrangement of the same number: one clean of three places after a stop', () => {
    // 0|100, 0|010, 0|001. Saying what came last is never right of the clean one, and right of 1, 1 and 2 of the 2 stops:
    // 0.25, 0.25 and 0.5, so saying the other 0.75, 0.75 and 0.5. Two before is 0.5 for each: no clean place of the last two in the
    // first, one stop of one right in the others.
    expect(guessInHindsight(order('0100'))).toMatchObject({ by: 'alternate', accuracy: 0.75 });
    expect(guessInHindsight(order('0100')).byChance).toBeCloseTo(2 / 3, 12);
    expect(guessInHindsight(order('0010'))).toMatchObject({ by: 'alternate', accuracy: 0.75 });
    expect(guessInHindsight(order('0010')).byChance).toBeCloseTo(2 / 3, 12);
    expect(guessInHindsight(order('0001'))).toMatchObject({ accuracy: 0.5, byChance: 1 });
  });

  it('leaves the ends alone: they are seen, not judged', () => {
    expect(guessInHindsight(order('010101'), { from: 1, to: 5 }).accuracy).toBe(1);
    expect(guessInHindsight(order('000001'), { from: 1, to: 5 })).toMatchObject({
      accuracy: 0.5,
      byChance: 1,
    });
  });

  it('has nothing to guess where all are alike, or nothing is there', () => {
    expect(guessInHindsight(order('1111'))).toMatchObject({ accuracy: 0.5, byChance: 1 });
    expect(guessInHindsight([])).toMatchObject({ accuracy: 0.5, byChance: 1 });
  });

  it('looks at the last sixteen of a long order', () => {
    const long = guessInHindsight(order(`${'1'.repeat(30)}${'01'.repeat(8)}`));
    expect(long).toMatchObject({ by: 'alternate', accuracy: 1 });
    expect(long.byChance).toBeLessThan(0.001);
  });
});

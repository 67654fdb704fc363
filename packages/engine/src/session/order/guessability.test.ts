import { describe, expect, it } from 'vitest';
import { bestBalancedAccuracy } from './best-guess.ts';
import { guessability, type WeightedOrder } from './guessability.ts';

/** Orders written as 1 and 0, all as likely. */
const ways = (...orders: string[]): WeightedOrder[] =>
  orders.map((order) => ({ order: [...order].map((one) => one === '1'), weight: 1 }));
const everyOrder = (length: number) =>
  ways(...Array.from({ length: 2 ** length }, (_, n) => n.toString(2).padStart(length, '0')));

// Worked by hand; accuracies compared to 12 digits: sums of small fractions.
describe('how well simple rules guess an order', () => {
  it('is chance for coins, whatever rule and length (law)', () => {
    for (const length of [2, 5, 8]) {
      const { accuracy } = guessability(everyOrder(length), {}, [[true, false, true], [true]]);
      for (const rule of Object.values(accuracy)) expect(rule).toBeCloseTo(0.5, 12);
    }
  });

  it('sees through fixed alternation, whichever side begins', () => {
    const { accuracy, best } = guessability(ways('01010101', '10101010'));
    expect(accuracy.alternate).toBe(1);
    expect(accuracy['win-stay']).toBe(0);
    expect(accuracy['last-two']).toBe(1);
    expect(accuracy.place).toBeCloseTo(0.5, 12);
    expect(best).toEqual({ by: 'alternate', accuracy: 1 });
  });

  it('sees through double alternation by the last two only', () => {
    const { accuracy } = guessability(ways('00110011', '11001100', '01100110', '10011001'));
    // The second place is a coin and all after it is known: 6 of 7 and half of one.
    expect(accuracy['last-two']).toBeCloseTo(6.5 / 7, 12);
    // Changes at 3, 3, 4, 4 of 7 places.
    expect(accuracy['win-stay']).toBeCloseTo(0.5, 12);
  });

  it('sees the places of an order that is always the same', () => {
    expect(guessability(ways('0110')).accuracy.place).toBe(1);
  });

  it('sees a session that repeats the last ones, three at most, and half a hit where they are torn', () => {
    const last = [false, true, true, false].map(Boolean);
    expect(guessability(ways('0110'), {}, [last]).accuracy['last-sessions']).toBe(1);
    const other = last.map((one) => !one);
    expect(guessability(ways('0110'), {}, [last, other]).accuracy['last-sessions']).toBe(0.5);
    expect(guessability(ways('0110'), {}, [other, other, last, last, other]).accuracy['last-sessions']).toBe(
      1,
    );
  });

  it('weighs kinds alike: always saying stop is no guess where clean is rare', () => {
    const seen = new Map<number, [number, number]>([[0, [9, 1]]]);
    expect(bestBalancedAccuracy(seen)).toBe(0.5);
    // Nine stops of ten seen as such and the one clean send too, by hand: (8/9 + 1) / 2.
    expect(
      bestBalancedAccuracy(
        new Map<number, [number, number]>([
          [0, [8, 0]],
          [1, [1, 1]],
        ]),
      ),
    ).toBeCloseTo(17 / 18, 12);
  });

  it('judges only the places it is told to', () => {
    // 1..3 of 0010|1: only place 2 is yes; after "00" came yes, after "01" no.
    expect(guessability(ways('00101'), { from: 1, to: 4 }).accuracy['win-stay']).toBeCloseTo(1 / 4, 12);
  });

  it('says which argument is wrong', () => {
    expect(() => guessability([])).toThrow('ways: expected at least one order, got none');
    expect(() => guessability(ways('01', '011'))).toThrow('ways: expected orders of one length, got 2 and 3');
    expect(() => guessability([{ order: [true, false], weight: -1 }])).toThrow(
      'weight: expected >= 0, got -1',
    );
  });
});

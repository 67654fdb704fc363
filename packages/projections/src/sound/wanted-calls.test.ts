import { describe, expect, it } from 'vitest';
import { wantedCalls } from './wanted-calls.ts';

describe('the calls a rep should have had', () => {
  it('are a long blast for a stop and pips for a recall, and none for a send run straight through', () => {
    const kinds = (skills: readonly ('line' | 'stop' | 'recall')[]) =>
      wantedCalls(
        skills.map((skill) => ({ skill, tappedAtS: 100 })),
        false,
      ).map(({ leg, kind }) => [leg, kind]);
    expect(kinds(['line', 'stop'])).toEqual([[1, 'long']]);
    expect(kinds(['recall'])).toEqual([[0, 'pips']]);
    expect(kinds(['line'])).toEqual([]);
  });

  it('lie as far before the tap as the legs take that were tapped in one go with theirs', () => {
    const chain = (castS: number, homeS: number) =>
      wantedCalls(
        [
          { skill: 'stop', tappedAtS: 100 },
          { skill: 'cast-left', tappedAtS: castS },
          { skill: 'delivery', tappedAtS: homeS },
        ],
        false,
      )[0];
    // A stop takes 2.5 s, a cast 5 s, a delivery 11 s: the sums by hand.
    expect(chain(100, 100)?.lagS).toBe(18.5);
    expect(chain(101, 120)?.lagS).toBe(7.5);
    expect(chain(110, 120)?.lagS).toBe(2.5);
    expect(chain(100, 100)?.lagSpreadS).toBeCloseTo(Math.sqrt(1.5 ** 2 + 3 ** 2 + 6 ** 2), 12);
  });

  it('are told of by the tap of the leg that a stop ended, where that was a look of its own', () => {
    const cue = (first: 'line' | 'cast-left', second: 'stop' | 'recall', apartS: number) =>
      wantedCalls(
        [
          { skill: first, tappedAtS: 100 },
          { skill: second, tappedAtS: 100 + apartS },
        ],
        false,
      ).map(({ cueTappedAtS }) => cueTappedAtS);
    expect(cue('line', 'stop', 5)).toEqual([100]);
    expect(cue('cast-left', 'stop', 5)).toEqual([100]);
    expect(cue('line', 'stop', 2)).toEqual([null]);
    // A dog is called in when the handler likes, and not where the leg before ended.
    expect(cue('line', 'recall', 5)).toEqual([null]);
    expect(wantedCalls([{ skill: 'stop', tappedAtS: 100 }], false)[0]?.cueTappedAtS).toBeNull();
  });

  it('end with a click where the rep was marked with one', () => {
    expect(wantedCalls([{ skill: 'steady', tappedAtS: 7 }], true)).toMatchObject([
      { leg: null, kind: 'click', tappedAtS: 7 },
    ]);
    expect(wantedCalls([], true)).toEqual([]);
  });
});

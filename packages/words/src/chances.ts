/** Chances in words: always in a hundred, never 0 or 100, always with their interval where one is known. */

function hundredth(name: string, chance: number): number {
  if (!(chance >= 0 && chance <= 1)) throw new RangeError(`${name}: expected 0 to 1, got ${chance}`);
  return Math.round(chance * 100);
}

/** A chance in a hundred: "84", "under 1", "over 99". Throws RangeError outside 0 to 1. */
export function inHundred(chance: number): string {
  const n = hundredth('chance', chance);
  if (n < 1) return 'under 1';
  return n > 99 ? 'over 99' : String(n);
}

/** Whether what happened was about as often as stated: 10 in 100 is the width of a bin (our judgement, 2026). */
const CLOSE = 0.1;

/** The words of chances. */
export function chanceWords() {
  const withInterval = (chance: number, [low, high]: readonly [number, number]): string =>
    inHundred(low) === inHundred(high)
      ? `${inHundred(chance)} in 100`
      : `${inHundred(chance)} in 100, may be ${inHundred(low)} to ${inHundred(high)}`;
  return {
    inHundred,
    /** "84 in 100". */
    plain: (chance: number): string => `${inHundred(chance)} in 100`,
    /** "84 in 100, may be 72 to 92". */
    withInterval,
    /** A chance and its interval without "in 100", for a table of figures: "84, may be 72 to 92". */
    shortInterval: (chance: number, [low, high]: readonly [number, number]): string =>
      `${inHundred(chance)}, may be ${inHundred(low)} to ${inHundred(high)}`,
    /** The interval alone, for a narrow table: "may be 72 to 92". */
    mayBe: ([low, high]: readonly [number, number]): string =>
      `may be ${inHundred(low)} to ${inHundred(high)}`,
    /** A share that was counted: "76 in 100"; it may be 0 or 100. */
    share: shareOf,
    /** "92 in 100 to 61 in 100" for a step. */
    change: (before: number, now: number): string => `from ${inHundred(before)} to ${inHundred(now)} in 100`,
    /** How honest the stated chances were: "When we said 80 in 100, it was 76 in 100, over 214 legs." */
    honesty: (stated: number, happened: number, legs: number): string =>
      `When we said ${inHundred(stated)} in 100, it was ${shareOf(happened)}, over ${legs} ${legs === 1 ? 'leg' : 'legs'}.`,
    /** What that comparison means. */
    honestyVerdict: (stated: number, happened: number): string => {
      if (Math.abs(stated - happened) <= CLOSE) return 'about right';
      return happened > stated ? 'better than we said' : 'worse than we said';
    },
  };
}

/** A share that was counted, and so may be none or all. */
function shareOf(happened: number): string {
  return `${hundredth('happened', happened)} in 100`;
}

export type ChanceWords = ReturnType<typeof chanceWords>;

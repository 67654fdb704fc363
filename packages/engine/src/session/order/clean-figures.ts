import { bestBalancedAccuracy, type Seen, see } from './best-guess.ts';
import { type CleanNumber, chanceOfPattern } from './clean-number.ts';
import { bestOf, type Guessability, pairBefore } from './guessability.ts';
import { ORDER_LIMITS } from './limits.ts';

/** Situations of a guesser that sees the last send. */
const AFTER_STOP = 0;
const AFTER_CLEAN = 1;

/** Chance that a send is clean after exactly so many stops since the last clean one or the session's start. */
export type CleanHazard = readonly (number | null)[];

/**
 * The hazard of a clean send after none to three stops, exactly; `null` where that many stops can't come before a drawn send.
 * Rep 1 is a stop and is not drawn, so "none" is after a clean send. Every arrangement of a number of clean sends is equally
 * likely, so each pattern's chance follows from the number's alone (`chanceOfPattern`), for any length.
 */
export function cleanHazard(number: CleanNumber): CleanHazard {
  const sends = number.chances.length - 1;
  return Array.from({ length: ORDER_LIMITS.stops + 1 }, (_, stops) => {
    // The run begins after a drawn clean send, at as many places as it fits in, or with rep 1.
    const after = Math.max(0, sends - stops - 1);
    const asked = after * chanceOfPattern(number, stops + 1, 1) + fromStart(number, stops, 0);
    const clean = after * chanceOfPattern(number, stops + 2, 2) + fromStart(number, stops, 1);
    return asked > 0 ? clean / asked : null;
  });
}

/** Chance of `stops` stops running from the start, rep 1 being the first of them, with a further drawn send, clean or whatever. */
function fromStart(number: CleanNumber, stops: number, clean: 0 | 1): number {
  const drawn = stops - 1;
  if (drawn < 0 || drawn >= number.chances.length - 1) return 0;
  return chanceOfPattern(number, drawn + clean, clean);
}

/** Largest less smallest of the hazards that there are; 0 with fewer than two. */
export function hazardSpread(hazard: CleanHazard): number {
  const known = hazard.filter((chance) => chance !== null);
  return known.length < 2 ? 0 : Math.max(...known) - Math.min(...known);
}

/**
 * How well simple rules guess the clean sends, exactly and for any length: what `guessability` finds by walking every order (its test
 * compares the two). Every place is clean with the same chance, and sessions are drawn apart, so the place and the last
 * sessions say nothing.
 */
export function cleanGuessability(number: CleanNumber): Guessability {
  const sends = number.chances.length - 1;
  const one: Seen = new Map();
  const two: Seen = new Map();
  /** So many sends with these drawn ones before them, of which so many clean. */
  const seeAfter = (seen: Seen, situation: number, times: number, drawn: number, clean: number) => {
    if (times <= 0) return;
    const yes = chanceOfPattern(number, drawn + 1, clean + 1);
    see(seen, situation, times * (chanceOfPattern(number, drawn, clean) - yes), times * yes);
  };
  seeAfter(one, AFTER_STOP, 1, 0, 0);
  seeAfter(one, AFTER_STOP, sends - 1, 1, 0);
  seeAfter(one, AFTER_CLEAN, sends - 1, 1, 1);
  seeAfter(two, pairBefore(null, false), 1, 0, 0);
  for (const last of [0, 1]) {
    const isClean = last === 1;
    seeAfter(two, pairBefore(false, isClean), Math.min(1, sends - 1), 1, last);
    seeAfter(two, pairBefore(false, isClean), sends - 2, 2, last);
    seeAfter(two, pairBefore(true, isClean), sends - 2, 2, 1 + last);
  }
  const winStay = stayAccuracy(one);
  return bestOf({
    'win-stay': winStay,
    alternate: 1 - winStay,
    'last-two': bestBalancedAccuracy(two),
    place: 0.5,
    'last-sessions': 0.5,
  });
}

/** Balanced accuracy of saying what came last. */
function stayAccuracy(one: Seen): number {
  const [stopAfterStop, cleanAfterStop] = one.get(AFTER_STOP) ?? [0, 0];
  const [stopAfterClean, cleanAfterClean] = one.get(AFTER_CLEAN) ?? [0, 0];
  const stops = stopAfterStop + stopAfterClean;
  const cleans = cleanAfterStop + cleanAfterClean;
  return stops === 0 || cleans === 0 ? 0.5 : (stopAfterStop / stops + cleanAfterClean / cleans) / 2;
}

import type { Random } from '../../numeric/index.ts';
import { type CleanHazard, cleanGuessability, cleanHazard, hazardSpread } from './clean-figures.ts';
import { type CleanNumber, cleanNumber } from './clean-number.ts';
import type { BestGuess } from './guessability.ts';
import { ORDER_LIMITS } from './limits.ts';

/**
 * How flat and how hard to guess the bounds have to leave the draw: inside the limits of 0.1 and 0.6, so that nothing that is
 * rounded or counted in a record comes near them (our judgement, 2026).
 */
const FLAT_WITHIN = 0.08;
const GUESS_UNDER = 0.57;
const MOST_SENDS = 60;
/** Rep 1 checks a known thing and the last finishes well: neither is drawn. */
const EXEMPT = 2;

export interface CleanSends {
  /** For each send of the session whether it is run straight through; the first and the last never are. */
  readonly clean: readonly boolean[];
  /** Clean ones among the drawn sends less the wanted share of them, in sends. */
  readonly imbalance: number;
  /** How well the best simple rule guesses a session drawn like this one. */
  readonly bestGuess: BestGuess;
  /** Chance of a clean send after none to three stops. */
  readonly hazard: CleanHazard;
  /** The numbers that may come. */
  readonly least: number;
  readonly most: number;
}

/**
 * Which sends are run clean: every send but the first and the last is drawn with the same chance, and the number that comes is
 * accepted within bounds, so that the share stays near the dog's own (`wantedCleanShare`) and a clean send is as likely after
 * three stops as after none. No run of stops is forbidden. The bounds are the narrowest of a standard deviation either
 * way or more that leave the hazard flat within 0.08 and every simple rule under 0.57; fewer
 * than eight drawn sends may hold no clean one. A fixed number merely
 * shuffled would make a clean send likelier after each stop. Drawn as the number first and then its places, which is the
 * same law and needs no second try.
 * @param sends all sends of the session, whole number 1..60, the first and the last among them
 * @param share of the drawn sends to be clean, 0.2..0.6 in practice; over 0 and under 1
 * @throws RangeError outside these
 */
export function cleanSends(input: {
  readonly sends: number;
  readonly share: number;
  readonly random: Random;
}): CleanSends {
  const { sends, share, random } = input;
  if (!Number.isInteger(sends) || sends < 1 || sends > MOST_SENDS)
    throw new RangeError(
      `sends: expected a whole number 1..${MOST_SENDS}, got ${sends}; draw the rest as another session`,
    );
  if (!(share > 0 && share < 1))
    throw new RangeError(`share: expected over 0 and under 1, got ${share}; take it from the dog's record`);
  const drawn = sends - EXEMPT;
  if (drawn < 1) {
    const bestGuess = { by: 'win-stay', accuracy: 0.5 } as const;
    const hazard = [null, null, null, null];
    return { clean: new Array(sends).fill(false), imbalance: 0, bestGuess, hazard, least: 0, most: 0 };
  }
  const number = numberToDraw(drawn, share);
  const places = drawnPlaces(number, random);
  return {
    clean: [false, ...places, false],
    imbalance: places.filter(Boolean).length - share * drawn,
    bestGuess: cleanGuessability(number).best,
    hazard: cleanHazard(number),
    least: number.least,
    most: number.most,
  };
}

/**
 * The narrowest bounds that leave the draw flat and hard to guess; of two as narrow the one more even about the mean. From eight
 * drawn sends on one at least is clean, wherever such bounds are to be had.
 */
export function numberToDraw(drawn: number, share: number): CleanNumber {
  const some = drawn >= ORDER_LIMITS.fromSends ? 1 : 0;
  return (
    boundedNumber(drawn, share, some) ?? boundedNumber(drawn, share, 0) ?? cleanNumber(drawn, share, 0, drawn)
  );
}

function boundedNumber(drawn: number, share: number, fewest: number): CleanNumber | null {
  const mean = share * drawn;
  const narrowest = Math.max(1, Math.round(2 * Math.sqrt(mean * (1 - share))));
  for (let width = narrowest; width < drawn; width++) {
    const fitting: CleanNumber[] = [];
    for (
      let least = Math.max(fewest, Math.floor(mean) - width);
      least < mean && least + width <= drawn;
      least++
    ) {
      if (least + width <= mean) continue;
      const number = cleanNumber(drawn, share, least, least + width);
      if (hazardSpread(cleanHazard(number)) > FLAT_WITHIN) continue;
      if (cleanGuessability(number).best.accuracy < GUESS_UNDER) fitting.push(number);
    }
    const offCentre = ({ least, most }: CleanNumber) => Math.abs(least + most - 2 * mean);
    const [first, ...others] = fitting;
    if (first) return others.reduce((best, one) => (offCentre(one) < offCentre(best) ? one : best), first);
  }
  return null;
}

/** Draws the number, then its places, every arrangement equally likely (selection sampling, Fan1962). */
function drawnPlaces({ chances, least, most }: CleanNumber, random: Random): boolean[] {
  let left = least;
  for (let rest = random.uniform() - chances[least]!; rest >= 0 && left < most; rest -= chances[left]!)
    left++;
  const places = chances.length - 1;
  return Array.from({ length: places }, (_, place) => {
    const isClean = random.uniform() * (places - place) < left;
    if (isClean) left--;
    return isClean;
  });
}

import { createAbilityFilter, EASY_CONTEXT, type LegResult } from '@sedgeline/engine/ability';
import { diceNamed } from '../careers/dice.ts';
import { firstLegs, plainLegs, type Start, type StatedFirst, startOf, statedFirst } from './first-legs.ts';
import { TELLERS, type Told } from './tellers.ts';

const SOON = 5;
const RECORD = 10;

/** What one handler's statements change, in nats a leg; less than 0 is better. */
export interface TellerFigures {
  readonly teller: string;
  readonly soon: number;
  readonly all: number;
  readonly standardError: number;
  /** Share of the true chances of the first ten legs that lay in the stated 90 % interval. */
  readonly held: number;
}

export interface StartFigures {
  readonly start: Start;
  readonly tellers: readonly TellerFigures[];
  /** After ten legs: how far the chances of the next ten lie apart where nothing at all and 400 m were told. */
  readonly apart: { readonly mean: number; readonly most: number };
}

const mean = (numbers: readonly number[]) => numbers.reduce((sum, n) => sum + n, 0) / numbers.length;
const meanLoss = (legs: readonly StatedFirst[]) => mean(legs.map(({ logLoss }) => logLoss));
const heldShare = (rows: readonly (readonly StatedFirst[])[]) =>
  mean(rows.flatMap((row) => row.slice(0, RECORD).map(({ isHeld }) => Number(isHeld))));

/** Plays the same dogs for every start and handler. */
export function toldFigures(dogs: number, seed: number, starts: readonly Start[]) {
  const careers = Array.from({ length: dogs }, (_, n) => firstLegs(`told ${seed} dog ${n}`));
  const played = careers.map(({ legs }) => plainLegs(legs));
  const plain = played.map((legs) => statedFirst(legs, 0));
  const statedWith = (n: number, told: Told, start: Start) => statedFirst(played[n]!, startOf(told, start));
  const figures = starts.map((start): StartFigures => {
    const tellers = Object.entries(TELLERS).map(([teller, tell]): TellerFigures => {
      const rows = careers.map(({ dog }, n) =>
        statedWith(n, tell(dog, diceNamed(`told ${seed} ${teller} ${n}`)), start),
      );
      const soon = rows.map((row, n) => meanLoss(row.slice(0, SOON)) - meanLoss(plain[n]!.slice(0, SOON)));
      const all = rows.map((row, n) => meanLoss(row) - meanLoss(plain[n]!));
      const spread = mean(soon.map((one) => (one - mean(soon)) ** 2));
      const standardError = Math.sqrt(spread / dogs);
      return { teller, soon: mean(soon), all: mean(all), standardError, held: heldShare(rows) };
    });
    const gaps = careers.map((_, n) => {
      const never = statedWith(n, { farthestM: 0, place: 'home' }, start);
      const most = statedWith(n, { farthestM: 400, place: 'new' }, start);
      return most.map(({ notMissed }, leg) => Math.abs(notMissed - never[leg]!.notMissed)).slice(RECORD);
    });
    const apart = { mean: mean(gaps.flat()), most: Math.max(...gaps.flat()) };
    return { start, tellers, apart };
  });
  return {
    figures,
    plain: { soon: mean(plain.map((row) => meanLoss(row.slice(0, SOON)))), held: heldShare(plain) },
  };
}

/** Chance of not missing 15 m, before the first leg and after each of twelve misses there, as the engine itself states it. */
export function wronglyTold(told: Told | null): number[] {
  const filter = createAbilityFilter();
  if (told !== null) {
    filter.tell('puppy', 'stop', 0, { farthestM: told.farthestM, ground: told.place, ageMonths: 5 });
  }
  return Array.from({ length: 13 }, (_, n) => {
    const leg: LegResult = {
      dog: 'puppy',
      skill: 'stop',
      session: `s${Math.floor(n / 6)}`,
      atMs: n * 90_000 + Math.floor(n / 6) * 3 * 86_400_000,
      ask: { distanceM: 15 },
      context: { ...EASY_CONTEXT, ageMonths: 5 },
      grade: 'missed',
      weight: 1,
    };
    return 1 - filter.observe(leg).chance.missed;
  });
}

import { logistic } from '../../numeric/index.ts';

/** Log odds that no share of a session comes near. */
const LOG_ODDS_END = 40;

/** How many of the drawn sends are run clean: what may come, and how likely each number is. */
export interface CleanNumber {
  readonly least: number;
  readonly most: number;
  /** Chance of each number, 0..sends; 0 outside the bounds. */
  readonly chances: readonly number[];
  /** Chance with which each send is drawn, so that the mean share of the accepted draws is the wanted one. */
  readonly drawnWith: number;
}

/**
 * Each of `sends` drawn with the same chance, and the draw accepted when the number of clean ones is within bounds: a binomial cut
 * off at both ends. The chance is found so that the mean of what is accepted is `share` of the sends (the mean rises with it: halving).
 * @throws RangeError unless least < share * sends < most, both within 0..sends
 */
export function cleanNumber(sends: number, share: number, least: number, most: number): CleanNumber {
  if (!(least >= 0 && least < share * sends && share * sends < most && most <= sends))
    throw new RangeError(
      `least, most: expected 0 <= least < ${share * sends} < most <= ${sends}, got ${least} and ${most}`,
    );
  const ways = logWays(sends, least, most);
  let under = -LOG_ODDS_END;
  let over = LOG_ODDS_END;
  // 55 halvings of 80 leave less than the rounding of a double.
  for (let n = 0; n < 55; n++) {
    const middle = (under + over) / 2;
    if (meanOf(weighted(ways, middle), least) < share * sends) under = middle;
    else over = middle;
  }
  const logOdds = (under + over) / 2;
  const chances = new Array<number>(sends + 1).fill(0);
  weighted(ways, logOdds).forEach((chance, n) => {
    chances[least + n] = chance;
  });
  return { least, most, chances, drawnWith: logistic(logOdds) };
}

/** Logarithm of the arrangements of each number from `least` to `most`, but for a constant. */
function logWays(sends: number, least: number, most: number): number[] {
  const logs = [0];
  for (let number = least + 1; number <= most; number++)
    logs.push(logs.at(-1)! + Math.log((sends - number + 1) / number));
  return logs;
}

/** Chances of the numbers within bounds when each send is drawn with these log odds: by logarithms, so that no odds overflow. */
function weighted(ways: readonly number[], logOdds: number): number[] {
  const logs = ways.map((log, n) => log + n * logOdds);
  const top = Math.max(...logs);
  const weights = logs.map((log) => Math.exp(log - top));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return weights.map((weight) => weight / total);
}

const meanOf = (chances: readonly number[], least: number) =>
  chances.reduce((sum, chance, n) => sum + chance * (least + n), 0);

/** Every arrangement of a number being as likely: the chance that `among` given places hold exactly these `clean` ones. */
export function chanceOfPattern({ chances }: CleanNumber, among: number, clean: number): number {
  const sends = chances.length - 1;
  if (among > sends) return 0;
  return chances.reduce(
    (sum, chance, number) => (chance === 0 ? sum : sum + chance * shareWith(sends, number, among, clean)),
    0,
  );
}

/** Share of the arrangements of `number` in `sends` that have given values in `among` places, `clean` of them clean. */
function shareWith(sends: number, number: number, among: number, clean: number): number {
  let share = 1;
  for (let n = 0; n < among; n++) {
    const left = n < clean ? number - n : sends - number - (n - clean);
    if (left <= 0) return 0;
    share *= left / (sends - n);
  }
  return share;
}

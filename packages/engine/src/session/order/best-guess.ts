/** How much of the two kinds came in each situation that a guesser can tell apart, by its number: `[no, yes]`, chances or counts. */
export type Seen = Map<number, [number, number]>;

/** Adds to what was seen in a situation. */
export function see(seen: Seen, situation: number, no: number, yes: number): void {
  const cell = seen.get(situation);
  if (cell === undefined) seen.set(situation, [no, yes]);
  else {
    cell[0] += no;
    cell[1] += yes;
  }
}

/**
 * Balanced accuracy (the mean of the share of yes and the share of no that are guessed) of whoever says the best thing in
 * each situation: `sum over situations of max(P(s | no), P(s | yes)) / 2`, which is 0.5 plus half the total variation distance
 * between the two kinds. No rule that looks at these situations alone does better. 0.5..1; 0.5 where one kind never comes,
 * since there is nothing to guess.
 */
export function bestBalancedAccuracy(seen: Seen): number {
  let no = 0;
  let yes = 0;
  for (const cell of seen.values()) {
    no += cell[0];
    yes += cell[1];
  }
  if (no === 0 || yes === 0) return 0.5;
  let sum = 0;
  for (const cell of seen.values()) sum += Math.max(cell[0] / no, cell[1] / yes);
  return sum / 2;
}

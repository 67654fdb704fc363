import { seededRandom } from '@sedgeline/engine/numeric';
import {
  cleanSends,
  guessability,
  ORDER_LIMITS,
  sidesInOrder,
  type WeightedOrder,
} from '@sedgeline/engine/session';
import {
  evenOrdersKeeping,
  GELLERMANN_RULES,
  ordersKeeping,
} from '../../packages/engine/src/session/order/side-rules.ts';
import { sideRules } from '../../packages/engine/src/session/order/sides-in-order.ts';
import { drawnCleanSends, placesOfStops, sidesInARow } from './drawn-sessions.ts';
import { judgeOrders } from './judge-orders.ts';
import { countingAccuracy } from './walked-order.ts';
import { alternation, fixedNumber, longestRun, shuffledRuns } from './wrong-orders.ts';

const SENDS = [5, 8, 10, 12, 14, 16, 20];
const SHARES = [0.2, 0.35, 0.5, 0.6];
const three = (value: number) => value.toFixed(3);
const chances = (hazard: readonly (number | null)[]) =>
  hazard.map((chance) => (chance === null ? '–' : chance.toFixed(2))).join(' ');

const cleanRows = (seed: number) =>
  SENDS.flatMap((sends) =>
    SHARES.map((share) => {
      const { least, most, hazard, bestGuess } = cleanSends({ sends, share, random: seededRandom(seed) });
      const known = hazard.filter((chance) => chance !== null);
      const spread = Math.max(...known) - Math.min(...known);
      return `| ${sends} | ${share} | ${least} to ${most} | ${chances(hazard)} | ${three(spread)} | ${three(bestGuess.accuracy)} |`;
    }),
  );

const drawnRows = (sessions: number, seed: number) =>
  [8, 10, 12].map((sends) => {
    const judged = judgeOrders(drawnCleanSends(sessions, sends, 0.35, seed));
    const exact = cleanSends({ sends, share: 0.35, random: seededRandom(seed) });
    return `| ${sends} | ${chances(exact.hazard)} | ${chances(judged.hazard)} | ${three(exact.bestGuess.accuracy)} | ${three(judged.guess)} |`;
  });

/** Ten drawn sends at a share of 0.35, ordered wrongly on purpose. */
export const wrongWays = () => [
  alternation(10),
  fixedNumber(10, 3),
  fixedNumber(8, 3),
  longestRun(10, 0.35, 3),
  shuffledRuns(10, 0.35, 4),
  shuffledRuns(10, 0.35, 6),
];

const wrongRows = () =>
  wrongWays().map(({ name, ways }) => {
    const { hazard, spread, guess, by, isWithin } = judgeOrders(ways);
    return `| ${name} | ${chances(hazard)} | ${three(spread)} | ${three(guess)} (${by}) | ${isWithin ? 'yes' : 'no'} |`;
  });

const asWays = (orders: readonly number[], count: number): WeightedOrder[] =>
  orders.map((bits) => ({
    order: Array.from({ length: count }, (_, place) => ((bits >> place) & 1) === 1),
    weight: 1,
  }));

function sideRow(count: number, sessions: number, seed: number): string {
  const { among, bestGuess } = sidesInOrder({ count, random: seededRandom(seed) });
  const counting = countingAccuracy(asWays(evenOrdersKeeping(count, sideRules(count)), count));
  const row = sidesInARow(sessions, count, seed);
  return `| ${count} | ${among} | ${three(bestGuess.accuracy)} | ${three(row.worstGuess)} | ${three(row.asBefore)} | ${row.apartFrom.toFixed(1)} | ${(100 * row.repeated).toFixed(1)} | ${three(counting)} |`;
}

const placeRow = (stops: number, sessions: number, seed: number) => {
  const { smallest, mean, changed } = placesOfStops(sessions, stops, 0.2, 0.7, seededRandom(seed));
  return `| ${stops} | ${smallest.toFixed(2)} | ${mean.toFixed(2)} | ${three(changed)} |`;
};

/** The page of the study. Exact but for the tables that say how many sessions were drawn. */
export function orderPage(sessions: number, seed: number): string {
  const printed = guessability(asWays(ordersKeeping(10, GELLERMANN_RULES), 10)).best;
  const rowSessions = Math.ceil(sessions / 50);
  return `# The order of a session

Printed by \`npx tsx studies/order.ts ${seed}\` (seed ${seed}); do not edit. A dog that can guess the next send works by the order and not by the
whistle. Two things are held to limits (common practice, no source): the chance of a clean send differs by at most ${ORDER_LIMITS.hazard} after none to
three stops, and over ${ORDER_LIMITS.fromSends} sends and more no simple rule guesses the next with a balanced accuracy of ${ORDER_LIMITS.guess}; 0.5 is chance.
The rules: what came last (win-stay), the other (alternate), the best for each pair that came last, the best for each place in
the session, what most of the last three sessions had at that place. "The best" is fitted to all orders that may come, so nothing that
looks at the same does better: the figures are of the way orders are drawn. Any one order of ten is often guessed 0.7 by some rule, by luck.

## Clean sends

Rep 1 and the last are stops and not drawn; the others are drawn alike, with the number that comes accepted within bounds. The
bounds are the narrowest, from a standard deviation either way, that keep the hazard within 0.08 and every rule under 0.57. Exact, from the
chance of each number; a test walks every order of short sessions and finds the same.

| sends | share | clean | hazard after 0, 1, 2, 3 stops | spread | best guess |
|---|---|---|---|---|---|
${cleanRows(seed).join('\n')}

Drawn with seeded dice, ${sessions} sessions each at a share of 0.35, the best rule fitted to these very sessions:

| sends | hazard, exact | hazard, drawn | best guess, exact | best guess, drawn |
|---|---|---|---|---|
${drawnRows(sessions, seed).join('\n')}

## Wrong on purpose

Ways of ordering that look sensible, judged by walking every order that they give.

| way | hazard after 0, 1, 2, 3 stops | spread | best guess | within the limits |
|---|---|---|---|---|
${wrongRows().join('\n')}

So the spacing of Fleshler and Hoffman (1962; our values are those of the printed table) is the yardstick and not the draw: a session
has three to six runs, and a list as short as that gives away what is left in it. Drawing the sends alike has the same run lengths in the
long run (an exponential rounded down) and no list that could be known. No longest run of stops is set.

## Sides

Drawn uniformly among the orders that keep, from ${ORDER_LIMITS.fromSends} sides on, Gellermann's (1933) rules at the length's own measure (as many of each, or one
more; no run over three; floor(n/5) of each in each half; at most n/2 changes, rounded up) and, in place of his fifth, which asks
chance of fixed patterns only, that what came last, the other, what came two before, and the other than that are each under ${ORDER_LIMITS.guess} in
every single order (the thought is of Fellows 1967, whose paper we have not seen). The 44 orders of ten that keep his own rules
are found exactly, but ${printed.by === 'last-two' ? 'the last two sides' : printed.by} guess them ${three(printed.accuracy)}, so they are not what is drawn. Under ${ORDER_LIMITS.fromSends} sides that last rule and that of changes can't be
kept, and few sides are guessed better: two sides that must be even can't be hidden.

Where they can, orders keep apart from the last three sessions: as many places with the same side as with the other. Left and right
may be changed about in every rule, so place and last
sessions say nothing of the next side. "In a row": ${rowSessions} sessions one after another, each told the last three.

| sides | orders | best guess | worst in a row | as last three, in a row | apart from | repeated, in 100 | by counting |
|---|---|---|---|---|---|---|---|
${[4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14].map((count) => sideRow(count, rowSessions, seed)).join('\n')}

The last column is someone who counts and says the side that has come less. Even sides in so few casts give that away, whatever
the order, and no rule can take it back; we hold that a dog does not count, and do not judge by it.

## Where the stop comes

Reach from 0.2 to 0.7 of the way, ${sessions} sessions each: one place in each equal part, shuffled. "Changed": a stop in the other half of
the reach than the one before; 0.5 would be chance, and spreading few stops costs that much.

| stops | smallest span | mean span | changed |
|---|---|---|---|
${[3, 4, 5, 6, 8].map((stops) => placeRow(stops, sessions, seed)).join('\n')}
`;
}

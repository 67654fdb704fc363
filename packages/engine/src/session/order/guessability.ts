import { bestBalancedAccuracy, type Seen, see } from './best-guess.ts';

/** Simple rules by which an order may be guessed. */
export type GuessRule = 'win-stay' | 'alternate' | 'last-two' | 'place' | 'last-sessions';

/** Balanced accuracy of the rule that guesses best; 0.5 is chance, 1 always right. */
export interface BestGuess {
  readonly by: GuessRule;
  readonly accuracy: number;
}

/** One of the orders that may come, with its weight (any scale). */
export interface WeightedOrder {
  readonly order: readonly boolean[];
  readonly weight: number;
}

export interface Guessability {
  readonly best: BestGuess;
  readonly accuracy: Readonly<Record<GuessRule, number>>;
}

/** What the sessions before had at each place: more yes (positive), more no (negative), neither (0). */
type Leaning = (place: number) => number;

function leaningOf(earlier: readonly (readonly boolean[])[]): Leaning {
  const last = earlier.slice(-3);
  return (place) =>
    last.reduce((sum, session) => sum + (session[place] === undefined ? 0 : session[place] ? 1 : -1), 0);
}

/** Hits of a fixed rule by kind, half a hit where it has nothing to say. */
interface FixedScore {
  readonly hits: [number, number];
  readonly all: [number, number];
}

function score(fixed: FixedScore, says: boolean | null, is: boolean, weight: number): void {
  const kind = is ? 1 : 0;
  fixed.all[kind] += weight;
  fixed.hits[kind] += says === null ? weight / 2 : says === is ? weight : 0;
}

const balanced = ({ hits, all }: FixedScore): number =>
  all[0] === 0 || all[1] === 0 ? 0.5 : (hits[0] / all[0] + hits[1] / all[1]) / 2;

/**
 * How well simple rules guess orders that are drawn with these weights, exactly, by walking every order: *win-stay* says what came
 * last; *alternate* the other; *last-two* the best for each pair that came last; *place* the best for each place in the session;
 * *last-sessions* what most of the last three sessions had at that place (half a hit where they say nothing). The best for a
 * situation is fitted to the orders themselves, so nothing that looks at it alone does better (`bestBalancedAccuracy`). A
 * single order is a list of one: then `place` is always right, and `guessInHindsight` is what to ask.
 * @param ways the orders, all of one length
 * @param judged places that are judged, from (counted from 0; not before 1, since place 0 has nothing before it) and up to; the
 *   others are seen, not guessed
 * @param earlier orders of the last sessions, oldest first
 * @throws RangeError for no orders, orders of two lengths, or a weight under 0
 */
export function guessability(
  ways: readonly WeightedOrder[],
  judged: { readonly from?: number; readonly to?: number } = {},
  earlier: readonly (readonly boolean[])[] = [],
): Guessability {
  const length = ways[0]?.order.length;
  if (length === undefined) throw new RangeError('ways: expected at least one order, got none');
  const from = Math.max(1, judged.from ?? 1);
  const to = Math.min(length, judged.to ?? length);
  const leaning = leaningOf(earlier);
  const stay: FixedScore = { hits: [0, 0], all: [0, 0] };
  const sessions: FixedScore = { hits: [0, 0], all: [0, 0] };
  const two: Seen = new Map();
  const place: Seen = new Map();
  for (const { order, weight } of ways) {
    if (order.length !== length)
      throw new RangeError(`ways: expected orders of one length, got ${length} and ${order.length}`);
    if (!(weight >= 0)) throw new RangeError(`weight: expected >= 0, got ${weight}`);
    for (let at = from; at < to; at++) {
      const is = order[at]!;
      const last = order[at - 1]!;
      const leans = leaning(at);
      const no = is ? 0 : weight;
      score(stay, last, is, weight);
      score(sessions, leans === 0 ? null : leans > 0, is, weight);
      see(two, pairBefore(at > 1 ? order[at - 2]! : null, last), no, weight - no);
      see(place, at, no, weight - no);
    }
  }
  const winStay = balanced(stay);
  return bestOf({
    'win-stay': winStay,
    alternate: 1 - winStay,
    'last-two': bestBalancedAccuracy(two),
    place: bestBalancedAccuracy(place),
    'last-sessions': balanced(sessions),
  });
}

/** The number of the situation that these two came last, `null` where only one has come. */
export function pairBefore(beforeLast: boolean | null, last: boolean): number {
  return (beforeLast === null ? 4 : beforeLast ? 2 : 0) + (last ? 1 : 0);
}

/** The rules' accuracies with the best of them; the simpler rule where two are equal. */
export function bestOf(accuracy: Readonly<Record<GuessRule, number>>): Guessability {
  const rules: readonly GuessRule[] = ['win-stay', 'alternate', 'last-two', 'place', 'last-sessions'];
  const by = rules.reduce((best, rule) => (accuracy[rule] > accuracy[best] + 1e-12 ? rule : best));
  return { best: { by, accuracy: accuracy[by] }, accuracy };
}

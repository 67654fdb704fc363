import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../numeric/index.ts';
import {
  guessability,
  hazardSpread,
  numberToDraw,
  ORDER_LIMITS,
  type WeightedOrder,
} from '../order/index.ts';
import { givesItselfAway } from './order-given-away.ts';

/**
 * A plan draws its clean sends by `cleanSends` and draws again where the order could be read as it stands. What is left
 * must be as flat and as hard to guess as what was drawn from: by walking every order, nothing simulated. Limits: 0.1 of hazard after
 * none to three stops, balanced accuracy under 0.60, rep 1 and the last exempt (common practice, no source).
 */
function leftOrders(sends: number, share: number, earlier: readonly (readonly boolean[])[]): WeightedOrder[] {
  const { chances } = numberToDraw(sends, share);
  const ways: WeightedOrder[] = [];
  for (let bits = 0; bits < 2 ** sends; bits++) {
    const order = Array.from({ length: sends }, (_, place) => ((bits >> place) & 1) === 1);
    const clean = order.filter(Boolean).length;
    const weight = (chances[clean] ?? 0) / choose(sends, clean);
    if (weight > 0 && !givesItselfAway(order, share, earlier)) {
      // Rep 1 is a check and no clean send.
      ways.push({ order: [false, ...order], weight });
    }
  }
  return ways;
}

const choose = (n: number, k: number): number => (k === 0 ? 1 : (choose(n, k - 1) * (n - k + 1)) / k);

/** Chance of a clean send after exactly so many stops since the last clean one or rep 1. */
function hazardOf(ways: readonly WeightedOrder[], stops: number): number | null {
  let asked = 0;
  let clean = 0;
  for (const { order, weight } of ways) {
    for (let place = 1; place < order.length; place++) {
      let run = 0;
      while (run < place && !order[place - 1 - run]) run++;
      if (run !== stops) continue;
      asked += weight;
      if (order[place]) clean += weight;
    }
  }
  return asked > 0 ? clean / asked : null;
}

const SHARES = [0.2, 1 / 3, 0.45, 0.6];

describe('orders of clean sends as a plan lets them pass', () => {
  it.each(SHARES)('are flat and hard to guess over 8 to 11 sends, share %f', (share) => {
    for (const sends of [8, 9, 10, 11]) {
      const ways = leftOrders(sends, share, []);
      const hazard = [0, 1, 2, 3].map((stops) => hazardOf(ways, stops));
      expect(hazardSpread(hazard)).toBeLessThanOrEqual(ORDER_LIMITS.hazard);
      expect(guessability(ways).best.accuracy).toBeLessThan(ORDER_LIMITS.guess);
    }
  });

  it('stay so for whoever knows the last three sessions', () => {
    const random = seededRandom(11);
    for (const share of SHARES) {
      for (let round = 0; round < 6; round++) {
        const earlier = [0, 1, 2].map(() => Array.from({ length: 9 }, () => random.uniform() < share));
        const ways = leftOrders(9, share, earlier);
        // Rep 1 stands before the drawn sends in both.
        const seen = earlier.map((order) => [false, ...order]);
        expect(guessability(ways, {}, seen).best.accuracy).toBeLessThan(ORDER_LIMITS.guess);
      }
    }
  });

  it('would be found out if a fixed number were merely shuffled', () => {
    const shuffled = leftOrders(9, 1 / 3, []).filter(({ order }) => order.filter(Boolean).length === 3);
    const hazard = [0, 1, 2, 3].map((stops) => hazardOf(shuffled, stops));
    expect(hazardSpread(hazard)).toBeGreaterThan(ORDER_LIMITS.hazard);
  });
});

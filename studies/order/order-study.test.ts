import { readFileSync } from 'node:fs';
import { seededRandom } from '@sedgeline/engine/numeric';
import { cleanSends, ORDER_LIMITS } from '@sedgeline/engine/session';
import { describe, expect, it } from 'vitest';
import { drawnCleanSends, sidesInARow } from './drawn-sessions.ts';
import { judgeOrders } from './judge-orders.ts';
import { wrongWays } from './order-page.ts';
import { countingAccuracy, walkedHazard } from './walked-order.ts';
import { alternation, fixedNumber, longestRun } from './wrong-orders.ts';

describe('the limits of the study', () => {
  it.each(wrongWays())('are not kept by $name', ({ ways }) => {
    expect(judgeOrders(ways).isWithin).toBe(false);
  });

  it('find alternation by the guess and drawing without replacement by the hazard', () => {
    // By hand: rep 1 is a stop, so of ten clean and ten stopped sends only the first stop of the order that begins with one is missed.
    const turns = judgeOrders(alternation(10).ways);
    expect(turns).toMatchObject({ by: 'alternate', isWithin: false });
    expect(turns.guess).toBeCloseTo((10 / 10 + 9 / 10) / 2, 12);
    const { hazard, spread } = judgeOrders(fixedNumber(8, 3).ways);
    // By hand: after a clean send two of the other seven places.
    expect(hazard[0]).toBeCloseTo(2 / 7, 12);
    expect(spread).toBeGreaterThan(ORDER_LIMITS.hazard);
    // Three stops running and no more: a fourth send is clean for certain.
    expect(walkedHazard(longestRun(10, 0.35, 3).ways).hazard[3]).toBe(1);
  });

  it('are kept by 4,000 sessions as they are drawn, the rule fitted to those very sessions', () => {
    for (const sends of [8, 10, 14]) {
      const judged = judgeOrders(drawnCleanSends(4000, sends, 0.35, 2));
      const { hazard } = cleanSends({ sends, share: 0.35, random: seededRandom(1) });
      expect(judged.isWithin).toBe(true);
      judged.hazard.forEach((chance, stops) => {
        // Four standard errors with 1,000 sends seen after that many stops, fewer than there are.
        expect(Math.abs(chance! - hazard[stops]!)).toBeLessThan(4 * Math.sqrt(0.25 / 1000));
      });
    }
  });

  it('are kept across sessions: the last three say nothing of the next side', () => {
    const { asBefore, worstGuess } = sidesInARow(300, 10, 3);
    expect(worstGuess).toBeLessThan(ORDER_LIMITS.guess);
    // Four standard errors of 3,000 sides; sides of a session lean on one another, so no fewer than half of them count.
    expect(Math.abs(asBefore - 0.5)).toBeLessThan(4 * Math.sqrt(0.25 / 1500));
  });

  it('count as a counter does: an even pair is right three times in four', () => {
    const ways = [
      { order: [true, false], weight: 1 },
      { order: [false, true], weight: 1 },
    ];
    expect(countingAccuracy(ways)).toBe(0.75);
  });
});

describe('docs/order.md', () => {
  it('is of this study, with its seed', () => {
    const page = readFileSync(new URL('../../docs/order.md', import.meta.url), 'utf8');
    expect(page).toContain('Printed by `npx tsx studies/order.ts 1` (seed 1)');
    const { least, most, bestGuess } = cleanSends({ sends: 10, share: 0.35, random: seededRandom(1) });
    const row = page.split('\n').find((line) => line.startsWith('| 10 | 0.35 |'));
    expect(row).toContain(`| ${least} to ${most} |`);
    expect(row).toContain(`| ${bestGuess.accuracy.toFixed(3)} |`);
  });
});

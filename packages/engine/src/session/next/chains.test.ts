import { describe, expect, it } from 'vitest';
import {
  completedChain,
  easyChain,
  focusOf,
  isCleanSend,
  isLineToStop,
  relinked,
  straightThrough,
} from './chains.ts';

const CHAIN = [
  { skill: 'line', ask: { distanceM: 40, temptation: 'placed-dummy' } },
  { skill: 'stop', ask: { distanceM: 20, wayFraction: 0.5 } },
  { skill: 'cast-left', ask: { distanceM: 20, wayFraction: 0.5, castM: 12 } },
  { skill: 'pickup', ask: {} },
  { skill: 'delivery', ask: {} },
] as const;

describe('chains, by hand', () => {
  it('keeps the chain in one piece when its stop moves: the line stays, the cast begins at the stop', () => {
    const moved = relinked(CHAIN, 1, { distanceM: 26, wayFraction: 0.65 });
    expect(moved[0]?.ask.distanceM).toBe(40);
    expect(moved[1]?.ask).toEqual({ distanceM: 26, wayFraction: 0.65 });
    expect(moved[2]?.ask).toEqual({ distanceM: 26, wayFraction: 0.65, castM: 12 });
  });

  it('lengthens the line when a stop farther out keeps its part of the way', () => {
    const moved = relinked(CHAIN, 1, { distanceM: 25, wayFraction: 0.5 });
    expect(moved[0]?.ask.distanceM).toBe(50);
    expect(moved[2]?.ask.distanceM).toBe(25);
  });

  it('leaves the stop where it is when the line grows, and never beyond the line', () => {
    expect(relinked(CHAIN, 0, { distanceM: 50 })[1]?.ask).toMatchObject({ distanceM: 20, wayFraction: 0.4 });
    expect(relinked(CHAIN, 0, { distanceM: 10 })[1]?.ask).toMatchObject({ distanceM: 10, wayFraction: 1 });
  });

  it('asks a line as far as the stop for as long as it was asked so, as at the easy end', () => {
    const easy = easyChain('stop');
    expect(isLineToStop(easy)).toBe(true);
    expect(isLineToStop(CHAIN)).toBe(false);
    expect(isLineToStop(relinked(CHAIN, 0, { distanceM: 20 }))).toBe(false);
    const farther = relinked(easy, 1, { distanceM: 12, wayFraction: 0.25 });
    expect(farther.map(({ ask }) => ask)).toEqual([{ distanceM: 12 }, { distanceM: 12, wayFraction: 0.25 }]);
    const longer = relinked(farther, 0, { distanceM: 15 });
    expect(longer.map(({ ask }) => ask)).toEqual([{ distanceM: 15 }, { distanceM: 15, wayFraction: 0.25 }]);
  });

  it('leaves out the stop and what hangs on it when the dog is let run', () => {
    expect(straightThrough(CHAIN)?.map((leg) => leg.skill)).toEqual(['line', 'pickup', 'delivery']);
    expect(straightThrough([{ skill: 'recall', ask: {} }])).toBeNull();
    expect(isCleanSend(CHAIN)).toBe(false);
    expect(isCleanSend(straightThrough(CHAIN) ?? [])).toBe(true);
    expect(isCleanSend([{ skill: 'heel', ask: {} }])).toBe(false);
  });

  it('completes a chain that ended early from the usual one, and knows what a chain is about', () => {
    expect(
      completedChain([{ skill: 'mark', ask: { distanceM: 30 } }], 'mark').map((leg) => leg.skill),
    ).toEqual(['mark', 'pickup', 'delivery']);
    expect(focusOf(CHAIN, 'delivery')).toBe(4);
    expect(focusOf(CHAIN, null)).toBe(1);
    expect(focusOf([{ skill: 'heel', ask: {} }], 'stop')).toBe(0);
    expect(easyChain('stop').map((leg) => leg.skill)).toEqual(['line', 'stop']);
  });
});

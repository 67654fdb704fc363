import { describe, expect, it } from 'vitest';
import { seededRandom } from '../numeric/index.ts';
import { learnedReaction } from './reaction-belief.ts';
import { usualStopConditions } from './stop-conditions.ts';
import { stopAfterWhistle } from './stop-point.ts';
import { haltInterval90M, overrunInterval90M, usualStopSpread } from './stop-spread.ts';

const NORMAL = { medianS: 0.35, logSd: 0.35, freedom: Infinity, measured: 0 };
const spread = { ...usualStopSpread(0.35), reactionDog: NORMAL };

/** The 5 and 95 % points of stops drawn one by one, in place of the quadrature. */
function drawn(place: (draw: ReturnType<typeof seededRandom>) => number, seed: number): [number, number] {
  const random = seededRandom(seed);
  const all = Array.from({ length: 40_000 }, () => place(random)).sort((a, b) => a - b);
  return [all[2_000]!, all[38_000]!];
}

const oneOf = (draw: ReturnType<typeof seededRandom>) => ({
  ...usualStopConditions,
  runSpeedMPerS: 5 * Math.exp(spread.runSpeedLogSd * draw.normal()),
  brakingMPerS2: 6 * Math.exp(spread.brakingLogSd * draw.normal()),
  reactionDogS: 0.35 * Math.exp(NORMAL.logSd * draw.normal()),
});

describe('how far a stop may differ', () => {
  it.each([0.5, 2, 20, 150])(
    'the overrun’s interval is that of 40,000 stops drawn, whistle at %d m',
    (blowAtM) => {
      const [low, high] = overrunInterval90M(blowAtM, usualStopConditions, spread);
      const [drawnLow, drawnHigh] = drawn((draw) => stopAfterWhistle(blowAtM, oneOf(draw)).overrunM, 5);
      // Four standard errors of a drawn 5 % point: sqrt(0.05 * 0.95 / 40000) / density, with 0.02 m below and 0.05 m above.
      expect(Math.abs(low - drawnLow)).toBeLessThan(0.03);
      expect(Math.abs(high - drawnHigh)).toBeLessThan(0.06);
    },
  );

  it('the halt’s interval adds the handler’s reaction', () => {
    const [low, high] = haltInterval90M(30, usualStopConditions, spread);
    const [drawnLow, drawnHigh] = drawn((draw) => {
      const at = oneOf(draw);
      const handlerS = 0.3 * Math.exp(spread.reactionHandlerLogSd * draw.normal());
      return stopAfterWhistle(30 + at.runSpeedMPerS * handlerS, at).dogHaltsAtM;
    }, 6);
    expect(Math.abs(low - drawnLow)).toBeLessThan(0.04);
    expect(Math.abs(high - drawnHigh)).toBeLessThan(0.07);
  });

  it('holds the median, and narrows when the dog is known', () => {
    const [low, high] = overrunInterval90M(40, usualStopConditions);
    const { overrunM } = stopAfterWhistle(40);
    expect(low).toBeLessThan(overrunM);
    expect(high).toBeGreaterThan(overrunM);
    const steady = Array.from({ length: 30 }, (_, k) => 0.35 * Math.exp(0.05 * Math.sin(k)));
    const known = { ...usualStopSpread(0.35), reactionDog: learnedReaction(steady) };
    const [knownLow, knownHigh] = overrunInterval90M(40, usualStopConditions, known);
    expect(knownHigh - knownLow).toBeLessThan(high - low);
  });

  it('is the same every time, and has an end even for a dog that reacts late', () => {
    const late = { ...usualStopConditions, reactionDogS: 10 };
    expect(overrunInterval90M(40, late)).toEqual(overrunInterval90M(40, late));
    for (const end of overrunInterval90M(40, late)) expect(Number.isFinite(end)).toBe(true);
    expect(() => overrunInterval90M(Number.NaN, usualStopConditions)).toThrow(RangeError);
  });
});

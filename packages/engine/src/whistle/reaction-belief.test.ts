import { describe, expect, it } from 'vitest';
import { chanceReactsBy, learnedReaction, reactionOfLatencyS } from './reaction-belief.ts';
import { usualStopConditions } from './stop-conditions.ts';
import { stopAfterWhistle } from './stop-point.ts';

describe('what is learned of a dog’s reaction', () => {
  it('stands at the prior without a measured one', () => {
    // Scale 0.3 sqrt(1 + 1/2) = 0.367423, six degrees of freedom.
    expect(learnedReaction([])).toMatchObject({ medianS: expect.closeTo(0.35, 12), freedom: 6, measured: 0 });
    expect(learnedReaction([]).logSd).toBeCloseTo(0.367423, 6);
  });

  it('two measured reactions, worked by hand', () => {
    // 0.7 s twice: y = ln 0.7. Middle (2 ln 0.35 + 2 ln 0.7) / 4 = ln(0.35 sqrt 2): median 0.494975.
    // Squares 6 * 0.09 + 0 + (2 * 2 / 4) ln(2)^2 = 0.54 + 0.480453 = 1.020453; / 8 = 0.1275566; * (1 + 1/4) = 0.1594458; root 0.399307.
    const belief = learnedReaction([0.7, 0.7]);
    expect(belief.medianS).toBeCloseTo(0.494975, 6);
    expect(belief.logSd).toBeCloseTo(0.399307, 6);
    expect(belief.freedom).toBe(8);
  });

  it('three that differ, worked by hand', () => {
    // y = ln 0.35 + {-ln 2, 0, ln 2}: mean ln 0.35, so the middle stays. Squares 0.54 + 2 ln(2)^2 = 1.500906; / 9 = 0.1667673; * (1 + 1/5) = 0.2001208; root 0.447349.
    const belief = learnedReaction([0.175, 0.35, 0.7]);
    expect(belief.medianS).toBeCloseTo(0.35, 9);
    expect(belief.logSd).toBeCloseTo(0.447349, 6);
  });

  it('goes to the dog’s own with many', () => {
    const many = learnedReaction(
      Array.from({ length: 400 }, (_, k) => 0.6 * Math.exp(0.1 * Math.sin(k * 2.4))),
    );
    // Prior worth 2 of 402: within ln(0.6/0.35) * 2/402 = 0.27 % of 0.6, and the sines' mean within 0.1 %.
    expect(Math.abs(many.medianS - 0.6)).toBeLessThan(0.003);
  });

  it('has the printed quantiles of Student’s t: 1.943 at 95 % with 6 degrees, 1.860 with 8', () => {
    // Any table of the t distribution, three decimals: half a unit of the last is 0.0005, by the density 0.07 there 4e-5 of chance.
    for (const [freedom, t] of [
      [6, 1.943],
      [8, 1.86],
    ] as const) {
      const belief = { medianS: 1, logSd: 1, freedom, measured: 0 };
      expect(Math.abs(chanceReactsBy(Math.exp(t), belief) - 0.95)).toBeLessThan(5e-5);
      expect(Math.abs(chanceReactsBy(Math.exp(-t), belief) - 0.05)).toBeLessThan(5e-5);
    }
    expect(chanceReactsBy(1, { medianS: 1, logSd: 1, freedom: Infinity, measured: 0 })).toBe(0.5);
    expect(chanceReactsBy(0, learnedReaction([]))).toBe(0);
  });

  it('says no to reactions that are none', () => {
    expect(() => learnedReaction([0])).toThrow(RangeError);
    expect(() => learnedReaction([Number.NaN])).toThrow(RangeError);
  });
});

describe('a reaction within a timed latency', () => {
  it('undoes the stop: whistle to halt less the sound’s way and the braking', () => {
    for (const blowAtM of [0, 0.5, 1.5, 2.3, 30, 150])
      for (const reactionDogS of [0.2, 0.35, 1.4]) {
        const at = { ...usualStopConditions, reactionDogS };
        const stop = stopAfterWhistle(blowAtM, at);
        const speed = Math.min(5, Math.sqrt(2 * 5 * stop.dogBrakesAtM));
        const latencyS = stop.soundDelayS + reactionDogS + speed / at.brakingMPerS2;
        expect(reactionOfLatencyS(latencyS, blowAtM, at)).toBeCloseTo(reactionDogS, 9);
      }
  });

  it('has no answer where the timing leaves nothing: 0.5 s at 30 m can’t hold 0.83 s of braking', () => {
    expect(reactionOfLatencyS(0.5, 30, usualStopConditions)).toBeNull();
  });
});

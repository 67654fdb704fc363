import { SKILLS } from '@sedgeline/engine/ability';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { usualAsk } from '../standing/reference-asks.ts';
import { amountOf, bandAt, proofingBands, proofingDemand, withAmount } from './proofing-bands.ts';

describe('bands of what was worked', () => {
  it('thirds in doublings, worked by hand: 10 to 80 m is three doublings, one a band', () => {
    // Ends at 20 and 40 m; the middle ones of 10 20 | 30 | 60 70 80 are 10 (the lower of two), 30 and 70.
    expect(proofingBands('distance', [10, 30, 80, 20, 60, 70])).toEqual([
      { to: 20, at: 10 },
      { to: 40, at: 30 },
      { to: null, at: 70 },
    ]);
  });

  it('one distance alone is near; the others reach beyond it, half a doubling each', () => {
    // 20 x 2^0.5 = 28, 20 x 2 = 40; stated at 20, in the middle of 28 to 40 (34), and of 40 to 57 (48).
    expect(proofingBands('distance', [20, 20, 20])).toEqual([
      { to: 30, at: 20 },
      { to: 40, at: 35 },
      { to: null, at: 50 },
    ]);
  });

  it('waits begin at none: 0 to 35 s is three steps of the demand (log2(1 + s/5)), ends at 5 and 15 s', () => {
    expect(proofingBands('wait', [0, 35])).toEqual([
      { to: 5, at: 0 },
      { to: 15, at: 9 },
      { to: null, at: 35 },
    ]);
  });

  it('ends rise, every amount has its band, the nearest is in the first; chances are stated within the journal’s range', () => {
    const amounts = fc.array(fc.double({ min: 5, max: 400, noNaN: true }), { maxLength: 30 });
    fc.assert(
      fc.property(amounts, (worked) => {
        const bands = proofingBands('distance', worked);
        expect(bands[0].to!).toBeLessThan(bands[1].to!);
        for (const { at } of bands) {
          expect(at).toBeGreaterThanOrEqual(5);
          expect(at).toBeLessThanOrEqual(400);
        }
        expect(bands[0].at).toBeLessThanOrEqual(bands[1].at);
        expect(bands[1].at).toBeLessThanOrEqual(bands[2].at);
        const columns = worked.map((amount) => bandAt(bands, amount));
        const nearest = Math.min(...worked);
        if (worked.length > 0 && nearest < 140) expect(columns).toContain(0);
      }),
    );
  });

  it('every skill has a demand of which an ask can be given any amount', () => {
    for (const skill of SKILLS) {
      const demand = proofingDemand(skill);
      const amount = demand === 'distraction' ? 2 : 25;
      expect(amountOf(demand, withAmount(demand, usualAsk(skill), amount))).toBe(amount);
    }
  });
});

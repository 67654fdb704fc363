import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isAlternative, likeliestReadings, RIVAL_FEATURES, rivalFeatures } from './alternatives.ts';
import { candidateAt } from './candidate.fixture.ts';

describe('readings of one sound', () => {
  it('exclude one another where they share more than half of the shorter at one pitch', () => {
    const blast = candidateAt(1, 2);
    expect(isAlternative(blast, candidateAt(1.2, 1.6))).toBe(true);
    // Shared: 0.4 s of 1 s.
    expect(isAlternative(blast, candidateAt(1.6, 2.6))).toBe(false);
    expect(isAlternative(blast, candidateAt(2.1, 2.4))).toBe(false);
    // Two chambers lie up to 13 % apart; another whistle further.
    expect(isAlternative(blast, candidateAt(1, 2, { pitchHz: 3300 }))).toBe(true);
    expect(isAlternative(blast, candidateAt(1, 2, { pitchHz: 3500 }))).toBe(false);
  });

  it('leave the likeliest, so that one blast is company once', () => {
    const whole = candidateAt(1, 2, { alone: 2 });
    const pieces = [candidateAt(1, 1.4, { alone: 1 }), candidateAt(1.5, 2, { alone: -1 })];
    const far = candidateAt(4, 4.2, { alone: -3 });
    expect(likeliestReadings([far, ...pieces, whole])).toEqual([whole, far]);
  });

  it('are counted against one another, those that begin together and the rest', () => {
    const whole = candidateAt(1, 2, { alone: 1 });
    const shorter = candidateAt(1.01, 1.51, { alone: -0.5 });
    const longer = candidateAt(1, 4, { alone: -2 });
    const piece = candidateAt(1.5, 2, { alone: -1 });
    const apart = candidateAt(5, 5.2, { alone: 5 });
    const figures = [...rivalFeatures(whole, [whole, shorter, longer, piece, apart])];
    const byHand = [Math.log(3), 1.5, Math.log(3), Math.log(2), Math.log(2), 2];
    expect(figures).toHaveLength(RIVAL_FEATURES.length);
    figures.forEach((figure, i) => {
      expect(figure).toBeCloseTo(byHand[i]!, 12);
    });
  });

  it('are never both left, and one of each sound is', () => {
    const candidate = fc
      .record({
        startS: fc.double({ min: 0, max: 9, noNaN: true }),
        lastsS: fc.double({ min: 0.05, max: 2, noNaN: true }),
        alone: fc.double({ min: -9, max: 9, noNaN: true }),
      })
      .map(({ startS, lastsS, alone }) => candidateAt(startS, startS + lastsS, { alone }));
    fc.assert(
      fc.property(fc.array(candidate, { maxLength: 12 }), (all) => {
        const left = likeliestReadings(all);
        left.forEach((one, i) => {
          for (const other of left.slice(i + 1)) expect(isAlternative(one, other)).toBe(false);
        });
        const best = all.reduce((a, b) => (b.alone > a.alone ? b : a), all[0] ?? candidateAt(0, 1));
        if (all.length > 0) expect(left.some(({ alone }) => alone >= best.alone)).toBe(true);
      }),
    );
  });
});

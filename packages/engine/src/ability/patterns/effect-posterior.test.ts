import { describe, expect, it } from 'vitest';
import { normalCdf } from '../../numeric/index.ts';
import { effectPosterior, logLikelihoodAt, probabilityBeyond } from './effect-posterior.ts';

const SIZE = {
  matters: 0.5,
  ordinary: { mean: 0, sd: 0.2 },
  wide: { mean: 0.5, sd: 1.5 },
  need: 1,
  priorChance: 0.1,
};
const SEEN = { at: 1.2, sd: 0.4 };
/** A normal likelihood at nodes: then all is known in closed form. */
const nodes = {
  from: -1,
  step: 0.5,
  logs: Array.from({ length: 9 }, (_, k) => -0.5 * ((-1 + 0.5 * k - SEEN.at) / SEEN.sd) ** 2),
};
const conjugate = (prior: { mean: number; sd: number }) => {
  const precision = prior.sd ** -2 + SEEN.sd ** -2;
  const mean = (prior.mean / prior.sd ** 2 + SEEN.at / SEEN.sd ** 2) / precision;
  const spread = prior.sd ** 2 + SEEN.sd ** 2;
  const log = Math.log(SEEN.sd / Math.sqrt(spread)) - (0.5 * (SEEN.at - prior.mean) ** 2) / spread;
  return { mean, sd: precision ** -0.5, log };
};

describe('an effect under its two priors', () => {
  const wide = conjugate(SIZE.wide);
  const ordinary = conjugate(SIZE.ordinary);
  const found = effectPosterior(nodes, SIZE);

  it('is the conjugate normal where the likelihood is normal (closed form; midpoints are good to 1e-6)', () => {
    expect(found.mean).toBeCloseTo(wide.mean, 6);
    expect(found.sd).toBeCloseTo(wide.sd, 6);
    expect(found.logWide).toBeCloseTo(wide.log, 6);
    expect(found.logOrdinary).toBeCloseTo(ordinary.log, 6);
  });

  it('gives the tail beyond the size that matters (to 0.005: the midpoints straddle it)', () => {
    expect(Math.abs(found.beyondWide - (1 - normalCdf((0.5 - wide.mean) / wide.sd)))).toBeLessThan(0.005);
    const tail = 1 - normalCdf((0.5 - ordinary.mean) / ordinary.sd);
    expect(Math.abs(found.beyondOrdinary - tail)).toBeLessThan(0.005);
  });

  it('weighs the two 1 to 9 by their Bayes factor', () => {
    const odds = Math.exp(found.logWide - found.logOrdinary) / 9;
    const chance = odds / (1 + odds);
    const hand = chance * found.beyondWide + (1 - chance) * found.beyondOrdinary;
    expect(probabilityBeyond(found, 0.1)).toBeCloseTo(hand, 12);
    expect(probabilityBeyond({ ...found, logWide: 5000 }, 0.1)).toBeCloseTo(found.beyondWide, 12);
    expect(probabilityBeyond({ ...found, logWide: -5000 }, 0.1)).toBeCloseTo(found.beyondOrdinary, 12);
  });

  it('goes on as the parabola beyond its nodes, and never upwards where the nodes curve up', () => {
    expect(logLikelihoodAt(nodes, 6)).toBeCloseTo(-0.5 * ((6 - SEEN.at) / SEEN.sd) ** 2, 8);
    const curvedUp = { from: 0, step: 1, logs: [0, -1, -1.5] };
    expect(logLikelihoodAt(curvedUp, 40)).toBeLessThan(-1.5);
  });
});

import { describe, expect, it } from 'vitest';
import lsat from '../../reference/lsat6.json' with { type: 'json' };
import { type GaussHermiteRule, gaussHermite } from './gauss-hermite.ts';
import { groupEvidence } from './group-evidence.ts';
import { laplaceByDifferences } from './laplace-by-differences.ts';
import { binomialTerm } from './logit-term.ts';
import { maximise } from './maximise.ts';

/** Provenance, status and the reason of each tolerance stand in the reference file. */
function worst(got: ArrayLike<number>, want: readonly number[]): number {
  expect(got.length).toBe(want.length);
  return Math.max(...want.map((w, i) => Math.abs(got[i]! - w)));
}

const PATTERNS = lsat.patterns.map(([digits, count]) => ({
  right: [...(digits as string)].map(Number),
  count: count as number,
}));
const RULE = gaussHermite(21);

function personTerms(right: readonly number[], easiness: ArrayLike<number>, slopes?: ArrayLike<number>) {
  return right.map((y, i) => ({ term: binomialTerm(y, 1), offset: easiness[i]!, loading: slopes?.[i] ?? 1 }));
}

function logLik(
  easiness: ArrayLike<number>,
  sd: number,
  rule: GaussHermiteRule | 'laplace',
  slopes?: ArrayLike<number>,
): number {
  return PATTERNS.reduce((sum, { right, count }) => {
    if (count === 0) return sum;
    return sum + count * groupEvidence(personTerms(right, easiness, slopes), sd, rule).logEvidence;
  }, 0);
}

/** Five easinesses and ln sd. */
const marginal = (rule: GaussHermiteRule | 'laplace') => (x: Float64Array) =>
  logLik(x, Math.exp(x[5]!), rule);
const START = [0, 0, 0, 0, 0, 0];
const OPTIONS = { steps: 2_000, tolerance: 1e-10 };

describe('LSAT 6: abilities of 1000 persons, one grouping integrated out', () => {
  it('reads the whole file', () => {
    expect(PATTERNS.reduce((sum, { count }) => sum + count, 0)).toBe(1000);
  });

  it.each(lsat.statedPoint.cases)('the objective at a stated point, sd $sd', ({ sd, exact, laplace }) => {
    expect(Math.abs(logLik(lsat.statedPoint.easiness, sd, RULE) - exact)).toBeLessThan(1e-6);
    expect(Math.abs(logLik(lsat.statedPoint.easiness, sd, 'laplace') - laplace)).toBeLessThan(1e-6);
  });

  it('by quadrature the sd of ability is 0.755, with its standard errors', () => {
    const fit = maximise(marginal(RULE), START, OPTIONS);
    expect(fit.end).toBe('converged');
    expect(worst(fit.x.slice(0, 5), lsat.exact.easiness)).toBeLessThan(1e-4);
    expect(Math.abs(Math.exp(fit.x[5]!) - lsat.exact.sd)).toBeLessThan(1e-4);
    expect(Math.abs(fit.value - lsat.exact.logLik)).toBeLessThan(1e-4);
    const { sd } = laplaceByDifferences(marginal(RULE), fit.x)!;
    expect(worst(sd, [...lsat.exact.easinessSe, lsat.exact.logSdSe])).toBeLessThan(1e-4);
  });

  it('by Laplace it is 0.709: six percent low with five items, a property of the method', () => {
    const fit = maximise(marginal('laplace'), START, OPTIONS);
    expect(fit.end).toBe('converged');
    expect(worst(fit.x.slice(0, 5), lsat.laplace.easiness)).toBeLessThan(1e-4);
    expect(Math.abs(Math.exp(fit.x[5]!) - lsat.laplace.sd)).toBeLessThan(1e-4);
    expect(Math.abs(fit.value - lsat.laplace.logLik)).toBeLessThan(1e-4);
  });

  it('with the sd held at 1', () => {
    const fit = maximise((x) => logLik(x, 1, RULE), START.slice(1), OPTIONS);
    expect(worst(fit.x, lsat.sdFixedAt1.easiness)).toBeLessThan(1e-4);
    expect(Math.abs(fit.value - lsat.sdFixedAt1.logLik)).toBeLessThan(1e-4);
    const { sd } = laplaceByDifferences((x) => logLik(x, 1, RULE), fit.x)!;
    expect(worst(sd, lsat.sdFixedAt1.se)).toBeLessThan(1e-4);
  });

  it('with a slope for each item', () => {
    const both = (x: Float64Array) => logLik(x, 1, RULE, x.subarray(5));
    const fit = maximise(both, [0, 0, 0, 0, 0, 1, 1, 1, 1, 1], OPTIONS);
    expect(fit.end).toBe('converged');
    expect(worst(fit.x, [...lsat.twoParameter.intercept, ...lsat.twoParameter.slope])).toBeLessThan(2e-3);
    expect(Math.abs(fit.value - lsat.twoParameter.logLik)).toBeLessThan(1e-4);
  });

  it.each(lsat.personByScore)('a person with $score right: mean, mode, sds', (want) => {
    // In this model the score says all: any pattern with that many right will do.
    const right = [0, 1, 2, 3, 4].map((i) => (i < want.score ? 1 : 0));
    const got = groupEvidence(personTerms(right, lsat.exact.easiness), lsat.exact.sd, gaussHermite(41));
    expect(
      worst([got.mean, got.sd, got.mode, got.modeSd], [want.mean, want.meanSd, want.mode, want.modeSd]),
    ).toBeLessThan(1e-6);
  });

  it('names an sd that is none', () => {
    expect(() => groupEvidence([], 0, 'laplace')).toThrow(/^sd: /);
  });
});

import { describe, expect, it } from 'vitest';
import avoidance from '../../reference/avoidance-learning.json' with { type: 'json' };
import { type GaussHermiteRule, gaussHermite } from './gauss-hermite.ts';
import { groupEvidence } from './group-evidence.ts';
import { laplaceByDifferences } from './laplace-by-differences.ts';
import { logistic, logLogistic } from './logistic.ts';
import { type LogisticRow, logisticMap } from './logistic-map.ts';
import { binomialTerm } from './logit-term.ts';
import { maximise } from './maximise.ts';
import { posteriorQuadrature } from './posterior-quadrature.ts';
import { sampleMean, sampleMoments } from './weighted-sample.ts';

/** Provenance, status and the reason of each tolerance stand in the reference file. */
function worst(got: ArrayLike<number>, want: readonly number[]): number {
  expect(got.length).toBe(want.length);
  return Math.max(...want.map((w, i) => Math.abs(got[i]! - w)));
}

interface Trial {
  readonly y: number;
  readonly trial: number;
  /** Before the present trial. */
  readonly avoided: number;
  readonly shocked: number;
}

const DOGS: Trial[][] = avoidance.dogs.map((digits) => {
  let shocked = 0;
  return [...digits].map((digit, index) => {
    const trial = { y: Number(digit), trial: index + 1, avoided: index - shocked, shocked };
    shocked += trial.y;
    return trial;
  });
});
const rowsBy = (x: (trial: Trial) => number[]): LogisticRow[] =>
  DOGS.flat().map((trial) => ({ x: x(trial), y: trial.y, n: 1 }));

/** `ln` likelihood of logistic rows at b, on its own: not through the fit that it checks. */
const logLikOf = (rows: readonly LogisticRow[], b: Float64Array) =>
  rows.reduce((sum, { x, y }) => {
    const eta = x.reduce((total, value, j) => total + value * b[j]!, 0);
    return sum + logLogistic(y === 1 ? eta : -eta);
  }, 0);

describe('avoidance learning of 30 dogs: shock by what came before', () => {
  const rows = rowsBy(({ avoided, shocked }) => [1, avoided, shocked]);
  const { counts } = avoidance;
  it('reads the whole file: 234 shocks in 750 trials, every dog shocked at the first', () => {
    expect(DOGS.flat().length).toBe(750);
    expect(DOGS.flat().filter(({ y }) => y === 1).length).toBe(234);
    expect(DOGS.every(([first]) => first!.y === 1)).toBe(true);
  });
  it('maximum likelihood', () => {
    const fit = logisticMap(rows, [0, 0, 0], [Infinity, Infinity, Infinity])!;
    expect(worst(fit.mode, counts.ml)).toBeLessThan(1e-6);
    expect(worst(fit.sd, counts.mlSe)).toBeLessThan(1e-6);
    expect(Math.abs(fit.logJoint - counts.logLik)).toBeLessThan(1e-6);
  });
  const sds = [0, 1, 2].map(() => counts.priorSd);
  it('wide normal priors, Laplace', () => {
    const fit = logisticMap(rows, [0, 0, 0], sds)!;
    expect(worst(fit.mode, counts.laplace.mode)).toBeLessThan(1e-6);
    expect(worst(fit.sd, counts.laplace.sd)).toBeLessThan(1e-6);
    expect(Math.abs(fit.logJoint - counts.laplace.logJoint)).toBeLessThan(1e-6);
    expect(Math.abs(fit.logEvidence - counts.laplace.logEvidence)).toBeLessThan(1e-4);
  });
  it('wide normal priors, exact: Laplace is a tenth of an sd off', () => {
    const normal = Math.log(counts.priorSd) + 0.5 * Math.log(2 * Math.PI);
    const logJoint = (b: Float64Array) =>
      b.reduce((sum, value) => sum - normal - 0.5 * (value / counts.priorSd) ** 2, logLikOf(rows, b));
    const posterior = posteriorQuadrature(logJoint, logisticMap(rows, [0, 0, 0], sds)!, gaussHermite(11));
    const { mean, sd } = sampleMoments(posterior);
    expect(worst(mean, counts.exact.mean)).toBeLessThan(1e-5);
    expect(worst(sd, counts.exact.sd)).toBeLessThan(1e-5);
    expect(Math.abs(posterior.logEvidence - counts.exact.logEvidence)).toBeLessThan(1e-4);
  });
  it('without an intercept, maximum likelihood', () => {
    const bare = rowsBy(({ avoided, shocked }) => [avoided, shocked]);
    const fit = logisticMap(bare, [0, 0], [Infinity, Infinity])!;
    expect(worst(fit.mode, avoidance.noIntercept.ml)).toBeLessThan(1e-5);
    expect(worst(fit.sd, avoidance.noIntercept.mlSe)).toBeLessThan(1e-5);
    expect(Math.abs(fit.logJoint - avoidance.noIntercept.logLik)).toBeLessThan(1e-5);
  });
  it('by the number of the trial, flat prior, maximum and exact', () => {
    const numbered = rowsBy(({ trial }) => [1, trial]);
    const fit = logisticMap(numbered, [0, 0], [Infinity, Infinity])!;
    expect(worst(fit.mode, avoidance.trialNumber.ml)).toBeLessThan(1e-5);
    expect(worst(fit.sd, avoidance.trialNumber.mlSe)).toBeLessThan(1e-5);
    expect(Math.abs(fit.logJoint - avoidance.trialNumber.logLik)).toBeLessThan(1e-5);
    const { mean, sd } = sampleMoments(
      posteriorQuadrature((b) => logLikOf(numbered, b), fit, gaussHermite(21)),
    );
    expect(worst(mean, avoidance.trialNumber.exact.mean)).toBeLessThan(1e-5);
    expect(worst(sd, avoidance.trialNumber.exact.sd)).toBeLessThan(1e-5);
  });
});

describe('the same dogs, powers of two constants', () => {
  const { powers } = avoidance;
  /** ln P for a, b given by their logits; the first trials have probability 1. */
  const logLik = (logits: Float64Array) => {
    const logA = logLogistic(logits[0]!);
    const logB = logLogistic(logits[1]!);
    return DOGS.flat().reduce((sum, { y, trial, avoided, shocked }) => {
      if (trial === 1) return sum;
      const logP = shocked * logA + avoided * logB;
      return sum + (y === 1 ? logP : Math.log(-Math.expm1(logP)));
    }, 0);
  };
  // 1e-6: the gain left, under 1e-10, is a distance under 1.4e-5 se of the logits; se of a 0.01, of b 0.02.
  it('maximum likelihood', () => {
    const fit = maximise(logLik, [1, 1], { steps: 500, tolerance: 1e-10 });
    expect(fit.end).toBe('converged');
    expect(worst([...fit.x].map(logistic), powers.ml)).toBeLessThan(1e-6);
    expect(Math.abs(fit.value - powers.logLik)).toBeLessThan(1e-6);
  });
  it('exact, uniform priors', () => {
    // Uniform in a is s(x) s(-x) in its logit x.
    const logJoint = (x: Float64Array) =>
      x.reduce((sum, value) => sum + logLogistic(value) + logLogistic(-value), logLik(x));
    const top = maximise(logJoint, [1, 1], { steps: 500, tolerance: 1e-10 });
    const sample = posteriorQuadrature(logJoint, laplaceByDifferences(logJoint, top.x)!, gaussHermite(21));
    const mean = [0, 1].map((j) => sampleMean(sample, (x) => logistic(x[j]!)));
    const sd = mean.map((m, j) => Math.sqrt(sampleMean(sample, (x) => (logistic(x[j]!) - m) ** 2)));
    expect(worst(mean, powers.exact.mean)).toBeLessThan(1e-5);
    expect(worst(sd, powers.exact.sd)).toBeLessThan(1e-5);
    expect(Math.abs(sample.logEvidence - powers.exact.logEvidence)).toBeLessThan(1e-4);
  });
});

describe('the same dogs, each with an effect of its own', () => {
  const { laplace, exact } = avoidance.dogEffects;
  const TERMS = [binomialTerm(0, 1), binomialTerm(1, 1)] as const;
  const marginal = (rule: GaussHermiteRule | 'laplace') => (x: Float64Array) =>
    DOGS.reduce((sum, trials) => {
      const terms = trials.map(({ y, avoided, shocked }) => ({
        term: TERMS[y === 1 ? 1 : 0],
        offset: x[0]! + x[1]! * avoided + x[2]! * shocked,
        loading: 1,
      }));
      return sum + groupEvidence(terms, Math.exp(x[3]!), rule).logEvidence;
    }, 0);
  const OPTIONS = { steps: 1_000, tolerance: 1e-10 };
  it('Laplace, with standard errors', () => {
    const fit = maximise(marginal('laplace'), [1.5, -0.3, -0.2, 0], OPTIONS);
    expect(fit.end).toBe('converged');
    expect(worst([...fit.x.slice(0, 3), Math.exp(fit.x[3]!)], [...laplace.beta, laplace.sd])).toBeLessThan(
      1e-4,
    );
    expect(Math.abs(fit.value - laplace.logLik)).toBeLessThan(1e-4);
    expect(worst(laplaceByDifferences(marginal('laplace'), fit.x)!.sd, laplace.se)).toBeLessThan(1e-4);
  });
  it('quadrature', () => {
    const fit = maximise(marginal(gaussHermite(25)), [1.5, -0.3, -0.2, 0], OPTIONS);
    expect(fit.end).toBe('converged');
    expect(worst([...fit.x.slice(0, 3), Math.exp(fit.x[3]!)], [...exact.beta, exact.sd])).toBeLessThan(1e-3);
    expect(Math.abs(fit.value - exact.logLik)).toBeLessThan(1e-4);
  });
});

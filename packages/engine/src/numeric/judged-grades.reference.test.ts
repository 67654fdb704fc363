import { describe, expect, it } from 'vitest';
import judged from '../../reference/judged-wine.json' with { type: 'json' };
import { type GaussHermiteRule, gaussHermite } from './gauss-hermite.ts';
import { groupEvidence } from './group-evidence.ts';
import { hierarchicalMode } from './hierarchical-mode.ts';
import { laplaceByDifferences } from './laplace-by-differences.ts';
import { ordinalTerm } from './logit-term.ts';
import { maximise } from './maximise.ts';
import { fitOrdinal } from './ordinal-fit.ts';
import { posteriorQuadrature } from './posterior-quadrature.ts';
import { sampleMoments } from './weighted-sample.ts';

/** Provenance, status and the reason of each tolerance stand in the reference file. */
function worst(got: ArrayLike<number>, want: readonly number[]): number {
  expect(got.length).toBe(want.length);
  return Math.max(...want.map((w, i) => Math.abs(got[i]! - w)));
}

/** Wine grades run 1 to 5, ours from 0; so do judges. */
const RATINGS = judged.rows.map(([rating, warm, contact, judge]) => ({
  grade: rating! - 1,
  warm: warm!,
  contact: contact!,
  judge: judge! - 1,
}));
const JUDGES = 9;

describe('wine: five grades by nine judges', () => {
  /** Four cuts, two slopes, ln sd; cuts that cross are no model. */
  const marginal = (rule: GaussHermiteRule | 'laplace') => (x: Float64Array) => {
    const cuts = x.subarray(0, 4);
    if (cuts.some((cut, c) => c > 0 && !(cut > cuts[c - 1]!))) return -Infinity;
    const terms = Array.from({ length: 5 }, (_, grade) => ordinalTerm(grade, cuts));
    let sum = 0;
    for (let judge = 0; judge < JUDGES; judge++) {
      const own = RATINGS.filter((rating) => rating.judge === judge).map(({ grade, warm, contact }) => ({
        term: terms[grade]!,
        offset: x[4]! * warm + x[5]! * contact,
        loading: 1,
      }));
      sum += groupEvidence(own, Math.exp(x[6]!), rule).logEvidence;
    }
    return sum;
  };
  it.each([
    ['Laplace', 'laplace', judged.judges.laplace],
    ['quadrature', gaussHermite(31), judged.judges.exact],
  ] as const)('cuts, slopes and the sd of judges by %s', (_, rule, want) => {
    const fit = maximise(marginal(rule), [-1, 1, 3, 5, 2, 1, 0], { steps: 2_000, tolerance: 1e-10 });
    expect(fit.end).toBe('converged');
    const got = [...fit.x.slice(0, 6), Math.exp(fit.x[6]!)];
    expect(worst(got, [...want.cuts, ...want.slopes, want.sd])).toBeLessThan(2e-4);
    expect(Math.abs(fit.value - want.logLik)).toBeLessThan(2e-5);
    expect(worst(laplaceByDifferences(marginal(rule), fit.x)!.sd, want.se)).toBeLessThan(1e-3);
  });
  it('where each judge stands, at the joint mode', () => {
    const { cuts, slopes, sd, logLik } = judged.judges.laplace;
    const rows = RATINGS.map(({ grade, warm, contact, judge }) => ({
      term: ordinalTerm(grade, cuts),
      offset: slopes[0]! * warm + slopes[1]! * contact,
      group: judge,
      z: [1],
      at: [],
      x: [],
    }));
    const fit = hierarchicalMode({ rows, groups: JUDGES, groupSd: [sd], commonSd: [] })!;
    expect(worst(fit.groupEffects, judged.judgeModes)).toBeLessThan(2e-4);
    expect(Math.abs(fit.logEvidence - logLik)).toBeLessThan(2e-5);
  });
});

describe('wine: shrunk slopes', () => {
  const rows = RATINGS.map(({ grade, warm, contact }) => ({ grade, x: [warm, contact], count: 1 }));
  it.each(judged.penalised)('slopes with a prior sd of $priorSdSlopes', (want) => {
    const fit = fitOrdinal(rows, 5, want.priorSdSlopes)!;
    expect(worst(fit.cuts, want.cuts)).toBeLessThan(1e-5);
    expect(worst(fit.slopes, want.slopes)).toBeLessThan(1e-5);
    expect(worst(fit.se, want.sd)).toBeLessThan(1e-4);
    expect(Math.abs(fit.logLik - want.logLik)).toBeLessThan(1e-6);
  });
  it('names a prior sd that is none', () => {
    expect(() => fitOrdinal(rows, 5, 0)).toThrow(/^slopeSd: /);
  });
});

describe('wine: three grades with a prior, by warmth alone', () => {
  const { counts, priorSd, laplace, exact } = judged.threeGrades;
  it('has the counts of the ratings', () => {
    const got = [0, 1].map((warm) =>
      [[1, 2], [3], [4, 5]].map(
        (grades) =>
          RATINGS.filter((rating) => rating.warm === warm && grades.includes(rating.grade + 1)).length,
      ),
    );
    expect(got).toEqual(counts);
  });
  const logJoint = (p: Float64Array) => {
    const cuts = [p[0]!, p[0]! + Math.exp(p[1]!)];
    const prior = p.reduce(
      (sum, value, j) =>
        sum - 0.5 * (value / priorSd[j]!) ** 2 - Math.log(priorSd[j]!) - 0.5 * Math.log(2 * Math.PI),
      0,
    );
    return counts.reduce(
      (sum, row, warm) =>
        row.reduce((total, n, grade) => total + n * ordinalTerm(grade, cuts).logLik(p[2]! * warm), sum),
      prior,
    );
  };
  const top = maximise(logJoint, [0, 0, 0], { steps: 1_000, tolerance: 1e-12 });
  const fit = laplaceByDifferences(logJoint, top.x)!;
  it('Laplace', () => {
    expect(top.end).toBe('converged');
    expect(worst(fit.mode, laplace.mode)).toBeLessThan(1e-5);
    expect(worst(fit.sd, laplace.sd)).toBeLessThan(1e-5);
    expect(Math.abs(fit.logJoint - laplace.logJoint)).toBeLessThan(1e-5);
    expect(Math.abs(fit.logEvidence - laplace.logEvidence)).toBeLessThan(1e-5);
  });
  it('exact: the mode is 0.05 to 0.07 of an sd off the mean', () => {
    const posterior = posteriorQuadrature(logJoint, fit, gaussHermite(21));
    const { mean, sd } = sampleMoments(posterior);
    expect(worst(mean, exact.mean)).toBeLessThan(1e-5);
    expect(worst(sd, exact.sd)).toBeLessThan(1e-5);
    expect(Math.abs(posterior.logEvidence - exact.logEvidence)).toBeLessThan(1e-5);
  });
});

it('names a grade that is none, and cuts that do not rise', () => {
  expect(() => ordinalTerm(3, [0, 1])).toThrow(/^grade: /);
  expect(() => ordinalTerm(0, [1, 1])).toThrow(/^cuts: /);
});

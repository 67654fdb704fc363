import { describe, expect, it } from 'vitest';
import maps from '../../reference/logistic-map.json' with { type: 'json' };
import ordinal from '../../reference/ordinal.json' with { type: 'json' };
import { type LogisticRow, logisticMap } from './logistic-map.ts';
import { fitOrdinal, type OrdinalRow } from './ordinal-fit.ts';

/** Provenance, status and the reason of each tolerance stand in the reference files. */
function expectEach(got: ArrayLike<number>, want: readonly number[], tolerance: number): void {
  expect(got.length).toBe(want.length);
  want.forEach((value, i) => {
    expect(Math.abs(got[i]! - value), `entry ${i}: ${got[i]} for ${value}`).toBeLessThan(tolerance);
  });
}

const rowsOf = (rows: readonly number[][], covariates: number): OrdinalRow[] =>
  rows.map((row) => ({ grade: row[0]!, x: row.slice(1, 1 + covariates), count: row.at(-1)! }));

describe('cumulative logit by maximum likelihood', () => {
  // Wine grades run 1 to 5, ours from 0.
  const wine = rowsOf(ordinal.wine.rows, 2).map((row) => ({ ...row, grade: row.grade - 1 }));
  it.each([
    ['wine, two factors', wine, 5, ordinal.wine],
    ['wine, temperature', wine.map((r) => ({ ...r, x: r.x.slice(0, 1) })), 5, ordinal.wineTempOnly],
    ['housing', rowsOf(ordinal.housing.rows, 6), 3, ordinal.housing],
  ] as const)('%s', (_, rows, grades, want) => {
    const fit = fitOrdinal(rows, grades)!;
    expectEach(fit.cuts, want.cuts, 1e-5);
    expectEach(fit.slopes, want.slopes, 1e-5);
    expectEach(fit.se, want.se, 1e-4);
    expect(Math.abs(fit.logLik - want.logLik)).toBeLessThan(1e-6);
  });
  it('says no when a grade never came, and when the data are separated', () => {
    expect(fitOrdinal([{ grade: 0, x: [], count: 3 }], 2)).toBeNull();
    const separated = [0, 1].flatMap((grade) => [{ grade, x: [grade], count: 5 }]);
    expect(fitOrdinal(separated, 2)).toBeNull();
  });
});

describe('logistic regression with a normal prior, Laplace', () => {
  /** ln C(n, y), which our evidence leaves out and the file's has. */
  const logChoose = (n: number, y: number) => {
    let sum = 0;
    for (let k = 1; k <= y; k++) sum += Math.log((n - y + k) / k);
    return sum;
  };
  it.each(maps.interceptOnly)('$name', ({ y, n, priorMean, priorSd, laplace }) => {
    const fit = logisticMap([{ x: [1], y, n }], [priorMean], [priorSd])!;
    expectEach(fit.mode, [laplace.mode], 1e-6);
    expectEach(fit.sd, [laplace.sd], 1e-6);
    expect(Math.abs(fit.logEvidence + logChoose(n, y) - laplace.logEvidence)).toBeLessThan(1e-6);
  });
  const { bioassay, birthWeight } = maps;
  const doses: LogisticRow[] = bioassay.dose.map((dose, i) => ({
    x: [1, dose],
    y: bioassay.y[i]!,
    n: bioassay.n[i]!,
  }));
  it.each(bioassay.cases)('$name', ({ priorMean, priorSd, laplace }) => {
    const fit = logisticMap(doses, priorMean, priorSd)!;
    const constant = bioassay.y.reduce((sum, y, i) => sum + logChoose(bioassay.n[i]!, y), 0);
    expectEach(fit.mode, laplace.mode, 1e-6);
    expectEach(fit.sd, laplace.sd, 1e-6);
    expect(Math.abs(fit.logEvidence + constant - laplace.logEvidence)).toBeLessThan(1e-6);
  });
  it('flat priors give maximum likelihood (bioassay, birth weights)', () => {
    const flat = logisticMap(doses, [0, 0], [Infinity, Infinity])!;
    // 1e-5: glm stops at a relative deviance change of 1e-8.
    expectEach(flat.mode, bioassay.ml, 1e-5);
    const ten = logisticMap(babies(10), Array(10).fill(0), Array(10).fill(Infinity))!;
    expectEach(ten.mode, birthWeight.tenMl.mode, 1e-5);
    expect(Math.abs(ten.logJoint - birthWeight.tenMl.logLik)).toBeLessThan(1e-6);
  });
  function babies(columns: 3 | 10): LogisticRow[] {
    return birthWeight.rows.map(([low, ...x]) => ({
      x: columns === 10 ? [1, ...x] : [1, x[1]!, x[4]!],
      y: low!,
      n: 1,
    }));
  }
  it('birth weights, three coefficients', () => {
    const { priorMean, priorSd, mode, sd, logEvidence, logBinomialCoefficients } = birthWeight.three;
    const fit = logisticMap(babies(3), priorMean, priorSd)!;
    expectEach(fit.mode, mode, 1e-6);
    expectEach(fit.sd, sd, 1e-6);
    expect(Math.abs(fit.logEvidence + logBinomialCoefficients - logEvidence)).toBeLessThan(1e-6);
  });
  it('birth weights, ten coefficients, also with a flat intercept', () => {
    const { priorSd, mode, sd, logJoint, logEvidence } = birthWeight.ten;
    const zero = Array(10).fill(0);
    const fit = logisticMap(babies(10), zero, priorSd)!;
    expectEach(fit.mode, mode, 1e-6);
    expectEach(fit.sd, sd, 1e-6);
    expect(Math.abs(fit.logJoint - logJoint)).toBeLessThan(1e-6);
    expect(Math.abs(fit.logEvidence - logEvidence)).toBeLessThan(1e-6);
    const flat = logisticMap(babies(10), zero, [Infinity, ...priorSd.slice(1)])!;
    expectEach(flat.mode, birthWeight.tenFlat.mode, 1e-5);
  });
  it('says no when the maximum runs away', () => {
    expect(logisticMap([{ x: [1], y: 10, n: 10 }], [0], [Infinity])).toBeNull();
  });
});

import { describe, expect, it } from 'vitest';
import aggression from '../../reference/verbal-aggression.json' with { type: 'json' };
import { type GaussHermiteRule, gaussHermite } from './gauss-hermite.ts';
import { groupEvidence } from './group-evidence.ts';
import { type HierarchicalRow, hierarchicalMode } from './hierarchical-mode.ts';
import { binomialTerm } from './logit-term.ts';
import { maximise } from './maximise.ts';

/** Provenance, status and the reason of each tolerance stand in the reference file. */
function worst(got: ArrayLike<number>, want: readonly number[]): number {
  expect(got.length).toBe(want.length);
  return Math.max(...want.map((w, i) => Math.abs(got[i]! - w)));
}

const TERMS = [binomialTerm(0, 1), binomialTerm(1, 1)] as const;
const ANSWERS = aggression.answers.map((digits) => [...digits].map((digit) => TERMS[digit === '1' ? 1 : 0]));
const PERSONS = ANSWERS.length;
/** Intercept, scold, shout, self, do. */
const DESIGN = aggression.items.map(([blame, situation, mode]) => [
  1,
  Number(blame === 'scold'),
  Number(blame === 'shout'),
  Number(situation === 'self'),
  Number(mode === 'do'),
]);
const COLUMNS = [0, 1, 2, 3, 4];

const easinessOf = (beta: ArrayLike<number>) =>
  DESIGN.map((x) => x.reduce((sum, value, j) => sum + value * beta[j]!, 0));

/** Coefficients given: only persons and items are effects. */
function crossedLogLik(beta: ArrayLike<number>, sdPerson: number, sdItem: number, start?: Float64Array) {
  const easiness = easinessOf(beta);
  const rows = ANSWERS.flatMap((terms, group) =>
    terms.map(
      (term, item): HierarchicalRow => ({ term, offset: easiness[item]!, group, z: [1], at: [item], x: [1] }),
    ),
  );
  const commonSd = DESIGN.map(() => sdItem);
  return hierarchicalMode({ rows, groups: PERSONS, groupSd: [sdPerson], commonSd }, start)!;
}

describe('verbal aggression: 316 persons crossed with 24 items', () => {
  it('reads the whole file', () => {
    expect(PERSONS).toBe(316);
    expect(ANSWERS.every((terms) => terms.length === 24)).toBe(true);
    // 3,611 of 7,584 said yes or perhaps: the items' totals printed with the data.
    expect(ANSWERS.flat().filter((term) => term === TERMS[1]).length).toBe(3611);
  });

  it('Laplace with both groupings integrated, at a stated point', () => {
    const { beta, sdPerson, sdItem, logLik } = aggression.statedPoint;
    expect(Math.abs(crossedLogLik(beta, sdPerson, sdItem).logEvidence - logLik)).toBeLessThan(1e-5);
  });

  // The third has an item sd of 0.001: a curvature of a million beside one of ten.
  it.each(aggression.joint)('all 345 effects at their joint mode, item sd $sdItem', (want) => {
    const rows = ANSWERS.flatMap((terms, group) =>
      terms.map(
        (term, item): HierarchicalRow => ({
          term,
          offset: 0,
          group,
          z: [1],
          at: [...COLUMNS, 5 + item],
          x: [...DESIGN[item]!, 1],
        }),
      ),
    );
    const commonSd = [...COLUMNS.map(() => want.priorSdFixed), ...DESIGN.map(() => want.sdItem)];
    const fit = hierarchicalMode({ rows, groups: PERSONS, groupSd: [want.sdPerson], commonSd })!;
    expect(worst(fit.common, [...want.mode, ...want.itemMode])).toBeLessThan(1e-6);
    expect(worst(fit.groupEffects.slice(0, 10), want.personMode)).toBeLessThan(1e-6);
    expect(worst(fit.groupEffectSd.slice(0, 10), want.personSd)).toBeLessThan(1e-6);
    const n = commonSd.length;
    const cov = COLUMNS.flatMap((i) => COLUMNS.map((j) => fit.commonCov[i * n + j]!));
    expect(worst(cov, want.cov)).toBeLessThan(1e-6);
    const itemSd = DESIGN.map((_, item) => Math.sqrt(fit.commonCov[(5 + item) * (n + 1)]!));
    expect(worst(itemSd, want.itemSd)).toBeLessThan(1e-6);
    // 1e-4 as the file says, for the evidence; the log-likelihood and joint are plain sums at the mode.
    expect(Math.abs(fit.logLik - want.logLik)).toBeLessThan(1e-4);
    expect(Math.abs(fit.logJoint - want.logJoint)).toBeLessThan(1e-4);
    expect(Math.abs(fit.logEvidence - want.logEvidence)).toBeLessThan(1e-4);
  });

  it('coefficients and both sds at the highest Laplace evidence', () => {
    const want = aggression.crossedOptimum;
    let near: Float64Array | undefined;
    const objective = (x: Float64Array) => {
      const fit = crossedLogLik(x, Math.exp(x[5]!), Math.exp(x[6]!), near);
      near = fit.effects;
      return fit.logEvidence;
    };
    const start = [1.5, -1, -2, -1, -0.5, Math.log(1.2), Math.log(0.5)];
    const fit = maximise(objective, start, { steps: 600, tolerance: 1e-8 });
    expect(fit.end).toBe('converged');
    expect(worst(fit.x.slice(0, 5), want.beta)).toBeLessThan(1e-3);
    expect(Math.abs(Math.exp(fit.x[5]!) - want.sdPerson)).toBeLessThan(1e-3);
    expect(Math.abs(Math.exp(fit.x[6]!) - want.sdItem)).toBeLessThan(1e-3);
    expect(Math.abs(fit.value - want.logLik)).toBeLessThan(1e-4);
  });
});

describe('verbal aggression: persons alone, by quadrature', () => {
  const personsLogLik = (easiness: readonly number[], sd: number, rule: GaussHermiteRule | 'laplace') =>
    ANSWERS.reduce((sum, terms) => {
      const own = terms.map((term, item) => ({ term, offset: easiness[item]!, loading: 1 }));
      return sum + groupEvidence(own, sd, rule).logEvidence;
    }, 0);
  const { factors, laplaceFactors, items } = aggression.singleGrouping;
  it('three factors', () => {
    const got = personsLogLik(easinessOf(factors.beta), factors.sd, gaussHermite(25));
    expect(Math.abs(got - factors.logLik)).toBeLessThan(1e-4);
  });
  it('three factors, Laplace: 2.3 lower', () => {
    const got = personsLogLik(easinessOf(laplaceFactors.beta), laplaceFactors.sd, 'laplace');
    expect(Math.abs(got - laplaceFactors.logLik)).toBeLessThan(1e-4);
  });
  it('an easiness for each item', () => {
    const got = personsLogLik(items.easiness, items.sd, gaussHermite(25));
    expect(Math.abs(got - items.logLik)).toBeLessThan(1e-4);
  });
});

describe('a hierarchical model that is none', () => {
  const row: HierarchicalRow = { term: TERMS[1], offset: 0, group: 0, z: [1], at: [0], x: [1] };
  const model = { rows: [row], groups: 1, groupSd: [1], commonSd: [1] };
  it('names what is wrong', () => {
    expect(() => hierarchicalMode({ ...model, groupSd: [0] })).toThrow(/^sd: /);
    expect(() => hierarchicalMode({ ...model, groups: 0 })).toThrow(/^group: /);
    expect(() => hierarchicalMode({ ...model, rows: [{ ...row, at: [1] }] })).toThrow(/^at: /);
    expect(() => hierarchicalMode({ ...model, rows: [{ ...row, x: [] }] })).toThrow(/^x: /);
    expect(() => hierarchicalMode({ ...model, rows: [{ ...row, z: [] }] })).toThrow(/^z: /);
    expect(() => hierarchicalMode(model, new Float64Array(3))).toThrow(/^start: /);
  });
  it('says no when a flat effect runs away, and stands without rows', () => {
    expect(hierarchicalMode({ ...model, commonSd: [Infinity] })).toBeNull();
    // No data: the prior itself, whose density integrates to 1.
    const { logEvidence, groupEffectSd } = hierarchicalMode({ ...model, rows: [], groupSd: [2] })!;
    expect(Math.abs(logEvidence)).toBeLessThan(1e-14);
    expect(Math.abs(groupEffectSd[0]! - 2)).toBeLessThan(1e-14);
  });
});

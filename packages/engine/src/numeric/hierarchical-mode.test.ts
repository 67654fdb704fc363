import { describe, expect, it } from 'vitest';
import { groupEvidence } from './group-evidence.ts';
import { type HierarchicalRow, hierarchicalMode } from './hierarchical-mode.ts';
import { type LogisticRow, logisticMap } from './logistic-map.ts';
import { binomialTerm, type LogitTerm, ordinalTerm } from './logit-term.ts';
import { seededRandom } from './random.ts';

describe('what an observation says of its log-odds', () => {
  const terms: [string, LogitTerm][] = [
    ['3 of 5', binomialTerm(3, 5)],
    ['0 of 2', binomialTerm(0, 2)],
    ['lowest grade', ordinalTerm(0, [-1, 0.5, 2])],
    ['a middle grade', ordinalTerm(2, [-1, 0.5, 2])],
    ['top grade', ordinalTerm(3, [-1, 0.5, 2])],
  ];
  it.each(terms)('%s: the derivatives are those of the log-likelihood', (_, term) => {
    const h = 1e-4;
    for (const eta of [-7, -1.3, 0, 0.4, 5]) {
      const { logLik, slope, curvature } = term.turn(eta);
      expect(Math.abs(logLik - term.logLik(eta))).toBeLessThan(1e-12);
      const [below, above] = [term.logLik(eta - h), term.logLik(eta + h)];
      // Central differences: h^2/6 of a third derivative under 5; second: rounding of 1e-15 of 35 over h^2.
      expect(Math.abs((above - below) / (2 * h) - slope)).toBeLessThan(1e-8);
      expect(Math.abs((2 * logLik - above - below) / (h * h) - curvature)).toBeLessThan(1e-5);
    }
  });
  it.each(terms)('%s: a billion logits away is still a number, and concave', (_, term) => {
    for (const eta of [-1e9, 1e9]) {
      const { logLik, slope, curvature } = term.turn(eta);
      expect(Number.isFinite(logLik) && Number.isFinite(slope)).toBe(true);
      expect(curvature).toBe(0);
    }
  });
  it('the chances of all grades add up to 1', () => {
    for (const eta of [-3, 0, 1.7]) {
      const sum = [0, 1, 2, 3].reduce((s, g) => s + Math.exp(ordinalTerm(g, [-1, 0.5, 2]).logLik(eta)), 0);
      expect(Math.abs(sum - 1)).toBeLessThan(1e-14);
    }
  });
});

describe('joint mode by blocks', () => {
  const random = seededRandom(20);
  const GROUPS = 7;
  const GROUP_SD = [0.8, 0.4, 1.5];
  const COMMON_SD = [2, 0.6];
  const OWN = GROUPS * GROUP_SD.length;
  const rows: HierarchicalRow[] = Array.from({ length: 90 }, () => {
    const n = 1 + random.below(3);
    return {
      term: binomialTerm(random.below(n + 1), n),
      offset: 0,
      group: random.below(GROUPS),
      z: [1, random.normal(), random.uniform()],
      at: random.uniform() < 0.5 ? [1] : [0, 1],
      x: [random.normal(), random.normal()],
    };
  }).map((row) => ({ ...row, x: row.x.slice(0, row.at.length) }));

  it('is that of a plain regression on all the effects at once', () => {
    // The same model, each effect a column; logisticMap has reference tests of its own.
    const wide = rows.map(({ term, group, z, at, x }): LogisticRow => {
      const columns: number[] = Array(OWN + COMMON_SD.length).fill(0);
      z.forEach((value, i) => {
        columns[group * z.length + i] = value;
      });
      at.forEach((j, k) => {
        columns[OWN + j] = x[k]!;
      });
      // At eta 0: slope y/2 - (n - y)/2, curvature n/4.
      const { slope, curvature } = term.turn(0);
      return { x: columns, y: Math.round(2 * curvature + slope), n: Math.round(4 * curvature) };
    });
    const sds = [...Array.from({ length: OWN }, (_, i) => GROUP_SD[i % GROUP_SD.length]!), ...COMMON_SD];
    const want = logisticMap(
      wide,
      sds.map(() => 0),
      sds,
    )!;
    const got = hierarchicalMode({ rows, groups: GROUPS, groupSd: GROUP_SD, commonSd: COMMON_SD })!;
    // 1e-9: both stop at a last step under 1e-11.
    const near = (a: ArrayLike<number>, b: Float64Array) => {
      expect(a.length).toBe(b.length);
      b.forEach((value, i) => {
        expect(Math.abs(a[i]! - value)).toBeLessThan(1e-9);
      });
    };
    near(got.effects, want.mode);
    near(got.groupEffectSd, want.sd.slice(0, OWN));
    const d = sds.length;
    near(
      got.commonCov,
      Float64Array.from([0, 1, d, d + 1], (k) => want.cov[OWN * (d + 1) + k]!),
    );
    near([got.logJoint, got.logEvidence], Float64Array.of(want.logJoint, want.logEvidence));
  });

  it('from a start nearby is the same mode', () => {
    const model = { rows, groups: GROUPS, groupSd: GROUP_SD, commonSd: COMMON_SD };
    const first = hierarchicalMode(model)!;
    const again = hierarchicalMode(
      model,
      first.effects.map((value) => value + 0.3),
    )!;
    again.effects.forEach((value, i) => {
      expect(Math.abs(value - first.effects[i]!)).toBeLessThan(1e-9);
    });
  });

  it('stays a number when an offset is a billion logits', () => {
    for (const offset of [-1e9, 1e9]) {
      const far = { term: binomialTerm(1, 1), offset };
      const fit = hierarchicalMode({
        rows: [{ ...far, group: 0, z: [1], at: [], x: [] }],
        groups: 1,
        groupSd: [1],
        commonSd: [],
      })!;
      expect(Number.isFinite(fit.logEvidence)).toBe(true);
      const { logEvidence, mean, sd } = groupEvidence([{ ...far, loading: 1 }], 1, 'laplace');
      expect([logEvidence, mean, sd].every(Number.isFinite)).toBe(true);
      expect(Math.abs(logEvidence - fit.logEvidence)).toBeLessThan(1e-6);
    }
  });
});

import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../numeric/index.ts';
import type { Grade } from '../ask.ts';
import { logGradeChance } from '../ordinal-update.ts';
import type { DogDesign } from './dog-design.ts';
import { effectLikelihood, parabolaOf } from './effect-likelihood.ts';
import { effectPosterior } from './effect-posterior.ts';
import { FlatRows, type GroupedRow } from './flat-rows.ts';
import { fitGroupedOrdinal } from './grouped-ordinal.ts';

const GAP = 1.1;
const LEVEL = { mean: 1.5, sd: 1 };
const EFFECT = { mean: 0.3, sd: 1.2 };
const GROUP_SD = 0.5;

/** Legs of two sessions with an effect in every other; grades drawn from the model itself, by hand. */
function rowsOf(count: number, effect: number): GroupedRow[] {
  const random = seededRandom(41);
  return Array.from({ length: count }, (_, i) => {
    const has = i % 2;
    const eta = 1.2 - effect * has + (i % 3 === 0 ? 0.3 : -0.2);
    const u = random.uniform();
    const missed = 1 / (1 + Math.exp(eta));
    const good = 1 / (1 + Math.exp(GAP - eta));
    const grade: Grade = u < missed ? 'missed' : u < 1 - good ? 'fair' : 'good';
    const columns = has === 0 ? [0] : [0, 1];
    const values = has === 0 ? [1] : [1, -1];
    return { columns, values, group: i % 3 === 0 ? 0 : 1, grade, weight: i % 7 === 0 ? 0.5 : 1 };
  });
}

const normal = (x: number, { mean, sd }: { mean: number; sd: number }) =>
  Math.exp(-0.5 * ((x - mean) / sd) ** 2) / (sd * Math.sqrt(2 * Math.PI));

/** Evidence and moments of the effect by brute force: sums over level, effect and both sessions' forms. */
function bruteForce(rows: readonly GroupedRow[]) {
  const steps = 60;
  const nodes = (prior: { mean: number; sd: number }, reach: number) =>
    Array.from({ length: steps }, (_, k) => prior.mean + prior.sd * reach * ((2 * (k + 0.5)) / steps - 1));
  const forms = nodes({ mean: 0, sd: GROUP_SD }, 4);
  const formStep = (8 * GROUP_SD) / steps;
  let total = 0;
  let first = 0;
  let second = 0;
  for (const level of nodes(LEVEL, 4)) {
    for (const effect of nodes(EFFECT, 4)) {
      let density = normal(level, LEVEL) * normal(effect, EFFECT);
      for (const group of [0, 1]) {
        let inGroup = 0;
        for (const form of forms) {
          let log = 0;
          for (const row of rows) {
            if (row.group !== group) continue;
            const eta = level - (row.columns.length === 2 ? effect : 0) + form;
            log += row.weight * logGradeChance(row.grade, eta, GAP);
          }
          inGroup += normal(form, { mean: 0, sd: GROUP_SD }) * Math.exp(log) * formStep;
        }
        density *= inGroup;
      }
      total += density;
      first += density * effect;
      second += density * effect * effect;
    }
  }
  const cell = ((8 * LEVEL.sd) / steps) * ((8 * EFFECT.sd) / steps);
  const mean = first / total;
  return { log: Math.log(total * cell), mean, sd: Math.sqrt(second / total - mean * mean) };
}

describe('the regression of one dog, levels of sessions taken out', () => {
  const rows = rowsOf(36, 1.4);
  const design: DogDesign = {
    rows: new FlatRows(rows),
    prior: {
      mean: Float64Array.of(LEVEL.mean, EFFECT.mean),
      sd: Float64Array.of(LEVEL.sd, EFFECT.sd),
      groups: 2,
      groupSd: GROUP_SD,
    },
    column: () => 1,
  };
  const exact = bruteForce(rows);
  const fit = fitGroupedOrdinal(design.rows, design.prior, GAP);

  it('has the evidence that brute-force quadrature has (to 0.05: Laplace with 36 legs errs by about one over the legs)', () => {
    expect(Math.abs(fit.logEvidence - exact.log)).toBeLessThan(0.05);
  });

  it('has the posterior of an effect that brute-force quadrature has (to 0.03 logits)', () => {
    const size = { matters: 0.5, ordinary: { mean: 0, sd: 0.2 }, wide: EFFECT, need: 1, priorChance: 0.1 };
    const found = effectPosterior(effectLikelihood(design, { fit, gap: GAP }, 'effect'), size);
    expect(Math.abs(found.mean - exact.mean)).toBeLessThan(0.03);
    expect(Math.abs(found.sd - exact.sd)).toBeLessThan(0.03);
    expect(Math.abs(found.logWide - exact.log)).toBeLessThan(0.05);
    // The parabola of one fit alone is a little coarser: it knows no skew.
    const rough = effectPosterior(parabolaOf(design, fit, 'effect'), size);
    expect(Math.abs(rough.mean - exact.mean)).toBeLessThan(0.1);
    expect(Math.abs(rough.sd - exact.sd)).toBeLessThan(0.06);
    expect(Math.abs(rough.logWide - exact.log)).toBeLessThan(0.05);
  });

  it('without rows is its prior', () => {
    const none = fitGroupedOrdinal(new FlatRows([]), design.prior, GAP);
    expect([...none.weights]).toEqual([LEVEL.mean, EFFECT.mean]);
    expect(none.sd(1)).toBeCloseTo(EFFECT.sd, 12);
    expect(none.logEvidence).toBeCloseTo(0, 12);
  });

  it('stays finite at a demand of a million logits, and refuses a gap that is none', () => {
    const wild = rows.map((row) => ({ ...row, values: row.values.map((x) => 1e6 * x) }));
    const found = fitGroupedOrdinal(new FlatRows(wild), design.prior, GAP);
    expect(Number.isFinite(found.logEvidence)).toBe(true);
    expect([...found.weights].every(Number.isFinite)).toBe(true);
    expect(() => fitGroupedOrdinal(design.rows, design.prior, 0)).toThrow(RangeError);
  });
});

import { choleskyFactor, choleskyLogDet, choleskySolve } from '../../numeric/index.ts';
import type { Grade } from '../ask.ts';
import { gradeCurvature, gradeSlope, logGradeChance } from '../ordinal-update.ts';

/** One leg as the regression sees it: the columns that are not 0, and the group whose own level it shares. */
export interface GroupedRow {
  readonly columns: readonly number[];
  readonly values: readonly number[];
  readonly group: number;
  readonly grade: Grade;
  /** 0..1; tempers the likelihood. */
  readonly weight: number;
}

/** Independent normal priors of the columns' weights and of the groups' levels (mean 0). Logits. */
export interface GroupedPrior {
  readonly mean: Float64Array;
  readonly sd: Float64Array;
  readonly groups: number;
  readonly groupSd: number;
}

export interface GroupedFit {
  readonly weights: Float64Array;
  readonly levels: Float64Array;
  /** Sd of each column's weight, all else unknown. */
  readonly sd: (column: number) => number;
  /** ln P(grades) with weights and levels integrated out by Laplace (MacKay1992). */
  readonly logEvidence: number;
}

const MOST_STEPS = 60;
/** Newton's error squares at each step: after a step this small what is left is under 1e-7. */
const REST = 3e-4;

/** Value, gradient and curvature (lower half) of the log joint, the levels' part kept as a diagonal and its border. */
class Point {
  readonly #rows: readonly GroupedRow[];
  readonly #prior: GroupedPrior;
  readonly #gap: number;
  readonly gradient: Float64Array;
  readonly curvature: Float64Array;
  readonly border: Float64Array;
  readonly levelGradient: Float64Array;
  readonly levelCurvature: Float64Array;

  constructor(rows: readonly GroupedRow[], prior: GroupedPrior, gap: number) {
    const p = prior.mean.length;
    this.#rows = rows;
    this.#prior = prior;
    this.#gap = gap;
    this.gradient = new Float64Array(p);
    this.curvature = new Float64Array(p * p);
    this.border = new Float64Array(prior.groups * p);
    this.levelGradient = new Float64Array(prior.groups);
    this.levelCurvature = new Float64Array(prior.groups);
  }

  valueAt(weights: Float64Array, levels: Float64Array): number {
    const { mean, sd, groupSd } = this.#prior;
    let value = 0;
    for (let j = 0; j < mean.length; j++) {
      const away = (weights[j]! - mean[j]!) / sd[j]!;
      value -= 0.5 * away * away + Math.log(sd[j]!);
    }
    for (const level of levels) value -= (0.5 * level * level) / groupSd ** 2 + Math.log(groupSd);
    for (const row of this.#rows)
      value += row.weight * logGradeChance(row.grade, etaOf(row, weights, levels), this.#gap);
    return value;
  }

  /** Fills gradient and curvature. */
  fill(weights: Float64Array, levels: Float64Array): void {
    const { mean, sd, groupSd } = this.#prior;
    const p = mean.length;
    this.curvature.fill(0);
    this.border.fill(0);
    for (let j = 0; j < p; j++) {
      this.gradient[j] = (mean[j]! - weights[j]!) / sd[j]! ** 2;
      this.curvature[j * (p + 1)] = 1 / sd[j]! ** 2;
    }
    levels.forEach((level, g) => {
      this.levelGradient[g] = -level / groupSd ** 2;
      this.levelCurvature[g] = 1 / groupSd ** 2;
    });
    for (const row of this.#rows) {
      const { columns, values, group, weight } = row;
      const eta = etaOf(row, weights, levels);
      const push = weight * gradeSlope(row.grade, eta, this.#gap);
      const bend = weight * gradeCurvature(row.grade, eta, this.#gap);
      this.levelGradient[group]! += push;
      this.levelCurvature[group]! += bend;
      for (let a = 0; a < columns.length; a++) {
        const j = columns[a]!;
        const x = values[a]!;
        this.gradient[j]! += push * x;
        this.border[group * p + j]! += bend * x;
        for (let b = 0; b < columns.length; b++)
          this.curvature[j * p + columns[b]!]! += bend * x * values[b]!;
      }
    }
  }

  /** Takes the levels out (Schur complement): what is left of gradient and curvature for the weights alone. */
  withoutLevels(): { readonly gradient: Float64Array; readonly curvature: Float64Array } {
    const p = this.gradient.length;
    const gradient = this.gradient.slice();
    const curvature = this.curvature.slice();
    const touched: number[] = [];
    for (let g = 0; g < this.levelGradient.length; g++) {
      const at = g * p;
      touched.length = 0;
      for (let j = 0; j < p; j++) if (this.border[at + j] !== 0) touched.push(j);
      for (const j of touched) {
        const share = this.border[at + j]! / this.levelCurvature[g]!;
        gradient[j]! -= share * this.levelGradient[g]!;
        for (const k of touched) {
          if (k > j) break;
          curvature[j * p + k]! -= share * this.border[at + k]!;
        }
      }
    }
    return { gradient, curvature };
  }
}

function etaOf({ columns, values, group }: GroupedRow, weights: Float64Array, levels: Float64Array): number {
  let eta = levels[group]!;
  for (let a = 0; a < columns.length; a++) eta += values[a]! * weights[columns[a]!]!;
  return eta;
}

/**
 * Cumulative-logit regression (McCullagh1980) with normal priors and one random level for each group (a session), at
 * its mode by Newton (Nocedal2006, 3.3), the levels taken out by their Schur complement: `O(legs x columns^2)`, so that
 * a long record stays cheap. `eta = x'w + level[group]`, `P(not missed) = s(eta)`, `P(good) = s(eta - gap)`. The
 * evidence is Laplace's; `grouped-ordinal.test.ts` holds it against fine quadrature. `start` is a fit to begin from.
 * @throws RangeError if gap or a prior's sd is not positive, or a row names a group that is not there
 */
export function fitGroupedOrdinal(
  rows: readonly GroupedRow[],
  prior: GroupedPrior,
  gap: number,
  start?: Pick<GroupedFit, 'weights' | 'levels'>,
): GroupedFit {
  if (!(gap > 0)) throw new RangeError(`gap: expected > 0, got ${gap}`);
  if (!prior.sd.every((sd) => sd > 0) || !(prior.groupSd > 0)) throw new RangeError('sd: expected > 0');
  if (rows.some(({ group }) => !(group >= 0 && group < prior.groups))) {
    throw new RangeError(`group: expected 0..${prior.groups - 1}`);
  }
  const p = prior.mean.length;
  const point = new Point(rows, prior, gap);
  let weights = start?.weights.slice() ?? prior.mean.slice();
  let levels = start?.levels.slice() ?? new Float64Array(prior.groups);
  let value = point.valueAt(weights, levels);
  let factor: Float64Array = new Float64Array(0);
  for (let step = 0; step < MOST_STEPS; step++) {
    point.fill(weights, levels);
    const { gradient, curvature } = point.withoutLevels();
    // Positive definite by the priors; rounding alone can spoil it, and then the point in hand is as good as it gets.
    const found = choleskyFactor(curvature, p);
    if (found === null) break;
    factor = found;
    const move = choleskySolve(factor, p, gradient);
    const levelMove = levels.map((_, g) => {
      let left = point.levelGradient[g]!;
      for (let j = 0; j < p; j++) left -= point.border[g * p + j]! * move[j]!;
      return left / point.levelCurvature[g]!;
    });
    let size = 0;
    for (const d of move) size = Math.max(size, Math.abs(d));
    for (const d of levelMove) size = Math.max(size, Math.abs(d));
    let length = 1;
    for (;;) {
      const nextWeights = weights.map((w, j) => w + length * move[j]!);
      const nextLevels = levels.map((u, g) => u + length * levelMove[g]!);
      const next = point.valueAt(nextWeights, nextLevels);
      if (next >= value || length < 1e-6 || size < REST) {
        if (Number.isFinite(next)) {
          weights = nextWeights;
          levels = nextLevels;
          value = next;
        }
        break;
      }
      length /= 2;
    }
    if (size < REST) break;
  }
  let logDet = choleskyLogDet(factor, p);
  for (const bend of point.levelCurvature) logDet += Math.log(bend);
  return {
    weights,
    levels,
    sd: (column) => {
      const unit = new Float64Array(p);
      unit[column] = 1;
      return Math.sqrt(choleskySolve(factor, p, unit)[column]!);
    },
    logEvidence: value - 0.5 * logDet,
  };
}

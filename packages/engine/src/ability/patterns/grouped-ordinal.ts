import { choleskyFactor, choleskyLogDet, choleskySolve } from '../../numeric/index.ts';
import { gradeCurvature, gradeSlope, logGradeChance } from '../ordinal-update.ts';
import type { FlatRows } from './flat-rows.ts';

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
  readonly #rows: FlatRows;
  readonly #prior: GroupedPrior;
  readonly #gap: number;
  /** Of the last point valued. */
  readonly #etas: Float64Array;
  readonly gradient: Float64Array;
  readonly curvature: Float64Array;
  readonly border: Float64Array;
  readonly levelGradient: Float64Array;
  readonly levelCurvature: Float64Array;

  constructor(rows: FlatRows, prior: GroupedPrior, gap: number) {
    const p = prior.mean.length;
    this.#rows = rows;
    this.#prior = prior;
    this.#gap = gap;
    this.#etas = new Float64Array(rows.count);
    this.gradient = new Float64Array(p);
    this.curvature = new Float64Array(p * p);
    this.border = new Float64Array(prior.groups * p);
    this.levelGradient = new Float64Array(prior.groups);
    this.levelCurvature = new Float64Array(prior.groups);
  }

  /** The log joint, without the constants 2 pi. */
  valueAt(weights: Float64Array, levels: Float64Array): number {
    const { mean, sd, groupSd } = this.#prior;
    const { count, weights: counts, grades } = this.#rows;
    let value = -levels.length * Math.log(groupSd);
    for (let j = 0; j < mean.length; j++) {
      const away = (weights[j]! - mean[j]!) / sd[j]!;
      value -= 0.5 * away * away + Math.log(sd[j]!);
    }
    for (const level of levels) value -= (0.5 * level * level) / groupSd ** 2;
    for (let i = 0; i < count; i++) {
      const eta = this.#rows.etaOf(i, weights, levels);
      this.#etas[i] = eta;
      value += counts[i]! * logGradeChance(grades[i]!, eta, this.#gap);
    }
    return value;
  }

  /** Fills gradient and curvature at the last point valued. */
  fill(weights: Float64Array, levels: Float64Array): void {
    const { mean, sd, groupSd } = this.#prior;
    const { count, begins, columns, values, groups, weights: counts, grades } = this.#rows;
    const { gradient, curvature, border } = this;
    const p = mean.length;
    curvature.fill(0);
    border.fill(0);
    for (let j = 0; j < p; j++) {
      gradient[j] = (mean[j]! - weights[j]!) / sd[j]! ** 2;
      curvature[j * (p + 1)] = 1 / sd[j]! ** 2;
    }
    levels.forEach((level, g) => {
      this.levelGradient[g] = -level / groupSd ** 2;
      this.levelCurvature[g] = 1 / groupSd ** 2;
    });
    for (let i = 0; i < count; i++) {
      const group = groups[i]!;
      const push = counts[i]! * gradeSlope(grades[i]!, this.#etas[i]!, this.#gap);
      const bend = counts[i]! * gradeCurvature(grades[i]!, this.#etas[i]!, this.#gap);
      this.levelGradient[group]! += push;
      this.levelCurvature[group]! += bend;
      const begin = begins[i]!;
      const end = begins[i + 1]!;
      for (let a = begin; a < end; a++) {
        const j = columns[a]!;
        const bent = bend * values[a]!;
        gradient[j]! += push * values[a]!;
        border[group * p + j]! += bent;
        for (let b = begin; b <= a; b++) {
          const k = columns[b]!;
          curvature[j > k ? j * p + k : k * p + j]! += bent * values[b]!;
        }
      }
    }
  }

  /** Takes the levels out (Schur complement): what is left of gradient and curvature for the weights alone. */
  withoutLevels(): { readonly gradient: Float64Array; readonly curvature: Float64Array } {
    const p = this.gradient.length;
    const gradient = this.gradient.slice();
    const curvature = this.curvature.slice();
    const touched = new Int32Array(p);
    for (let g = 0; g < this.levelGradient.length; g++) {
      const at = g * p;
      let count = 0;
      for (let j = 0; j < p; j++) if (this.border[at + j] !== 0) touched[count++] = j;
      for (let a = 0; a < count; a++) {
        const j = touched[a]!;
        const share = this.border[at + j]! / this.levelCurvature[g]!;
        gradient[j]! -= share * this.levelGradient[g]!;
        for (let b = 0; b <= a; b++) {
          const k = touched[b]!;
          curvature[j * p + k]! -= share * this.border[at + k]!;
        }
      }
    }
    return { gradient, curvature };
  }
}

/**
 * Cumulative-logit regression (McCullagh1980) with normal priors and one random level for each group (a session), at
 * its mode by Newton (Nocedal2006, 3.3), the levels taken out by their Schur complement: `O(legs x columns^2)`, so that
 * a long record stays cheap. `eta = x'w + level[group]`, `P(not missed) = s(eta)`, `P(good) = s(eta - gap)`. The
 * evidence is Laplace's; `grouped-ordinal.test.ts` holds it against fine quadrature. `start` is a fit to begin from.
 * @throws RangeError if gap or a prior's sd is not positive, a row names a group that is not there, or a value is not finite
 */
export function fitGroupedOrdinal(
  rows: FlatRows,
  prior: GroupedPrior,
  gap: number,
  start?: Pick<GroupedFit, 'weights' | 'levels'>,
): GroupedFit {
  if (!(gap > 0)) throw new RangeError(`gap: expected > 0, got ${gap}`);
  if (!prior.sd.every((sd) => sd > 0) || !(prior.groupSd > 0)) throw new RangeError('sd: expected > 0');
  if (rows.groups.some((group) => !(group < prior.groups))) {
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
    const found = choleskyFactor(curvature, p);
    if (found === null) throw new RangeError('rows: expected finite values and priors');
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
      if (next >= value || size < REST || length < 1e-6) {
        weights = nextWeights;
        levels = nextLevels;
        value = next;
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

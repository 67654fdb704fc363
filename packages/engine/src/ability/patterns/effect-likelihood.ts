import { logGradeChance } from '../ordinal-update.ts';
import { shippedPriors } from '../priors.ts';
import type { DogDesign } from './dog-design.ts';
import type { EffectLikelihood } from './effect-posterior.ts';
import { fitGroupedOrdinal, type GroupedFit } from './grouped-ordinal.ts';

/** Half of the nodes on each side, an sd apart: the parabola between them errs by under 0.02 (tested). */
const NODES_EACH_SIDE = 3;
const NODE_SDS = 1;
/** A prior this narrow fixes an effect; its evidence is then the likelihood there. */
const FIXED_SD = 1e-3;

/** The gap between fair and good at which a fit's legs are likeliest, under the filter's own prior for a dog. */
export function fittedGap({ rows }: DogDesign, fit: GroupedFit): number {
  const sd = Math.hypot(shippedPriors.gapDogSd, shippedPriors.gapCentreSd);
  const etas = Array.from({ length: rows.count }, (_, i) => rows.etaOf(i, fit.weights, fit.levels));
  let best = shippedPriors.gapCentre;
  let most = -Infinity;
  for (let gap = 0.3; gap <= 3.001; gap += 0.1) {
    let log = -0.5 * ((gap - shippedPriors.gapCentre) / sd) ** 2;
    for (let i = 0; i < rows.count; i++)
      log += rows.weights[i]! * logGradeChance(rows.grades[i]!, etas[i]!, gap);
    if (log > most) {
      most = log;
      best = gap;
    }
  }
  return best;
}

/** A dog's fit with its gap found: two rounds, since each moves the other little. */
export function fitDog(design: DogDesign): { readonly fit: GroupedFit; readonly gap: number } {
  const first = fitGroupedOrdinal(design.rows, design.prior, shippedPriors.gapCentre);
  const gap = fittedGap(design, first);
  return { fit: fitGroupedOrdinal(design.rows, design.prior, gap, first), gap };
}

/**
 * What the record says of one effect with everything else integrated out (Laplace at each node): ln likelihood at
 * nodes about its mode. The offsets are not the filter's stated ones: the filter has learnt part of the effect by
 * then, so that level, growth and the other weights are fitted anew at each node.
 */
export function effectLikelihood(
  design: DogDesign,
  { fit, gap }: { readonly fit: GroupedFit; readonly gap: number },
  effect: string,
): EffectLikelihood {
  const column = design.column(effect);
  const sd = fit.sd(column);
  const step = NODE_SDS * sd;
  const from = fit.weights[column]! - NODES_EACH_SIDE * step;
  const prior = { ...design.prior, mean: design.prior.mean.slice(), sd: design.prior.sd.slice() };
  prior.sd[column] = FIXED_SD;
  let start: Pick<GroupedFit, 'weights' | 'levels'> = fit;
  const logs: number[] = [];
  for (let k = 0; k <= 2 * NODES_EACH_SIDE; k++) {
    const at = from + k * step;
    prior.mean[column] = at;
    const weights = start.weights.slice();
    weights[column] = at;
    const node = fitGroupedOrdinal(design.rows, prior, gap, { weights, levels: start.levels });
    logs.push(node.logEvidence);
    start = node;
  }
  return { from, step, logs };
}

/**
 * The same from one fit alone, as the parabola that its mode and sd imply: what the fit says of the effect, its prior taken
 * out. For effects with legs enough that the likelihood is near normal.
 */
export function parabolaOf(design: DogDesign, fit: GroupedFit, effect: string): EffectLikelihood {
  const column = design.column(effect);
  const { mean, sd } = { mean: design.prior.mean[column]!, sd: design.prior.sd[column]! };
  const at = fit.weights[column]!;
  const posteriorPrecision = fit.sd(column) ** -2;
  const precision = Math.max(0, posteriorPrecision - sd ** -2);
  // ln of the marginal at the mode: evidence times posterior density there, over the prior's.
  const log = fit.logEvidence + 0.5 * Math.log(posteriorPrecision * sd * sd) + 0.5 * ((at - mean) / sd) ** 2;
  const slope = (at - mean) / (sd * sd);
  const step = 1 / Math.sqrt(posteriorPrecision);
  const logs = [-step, 0, step].map((d) => log + slope * d - 0.5 * precision * d * d);
  return { from: at - step, step, logs };
}

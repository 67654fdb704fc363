import type { EffectSize, NormalPrior } from './sizes.ts';

/** ln of what the record says of an effect, everything else integrated out, at nodes of equal distance. */
export interface EffectLikelihood {
  readonly from: number;
  readonly step: number;
  readonly logs: readonly number[];
}

/** What becomes of the two priors of an effect. */
export interface EffectPosterior {
  /** Under the wide prior. */
  readonly mean: number;
  readonly sd: number;
  /** ln P(record | wide prior) and ln P(record | ordinary prior), on the likelihood's own scale. */
  readonly logWide: number;
  readonly logOrdinary: number;
  /** That the effect is beyond the size that matters, under each. */
  readonly beyondWide: number;
  readonly beyondOrdinary: number;
}

const FINE = 2000;
const REACH_SDS = 6;

/** ln likelihood between and beyond the nodes: the parabola through the three nearest. */
export function logLikelihoodAt({ from, step, logs }: EffectLikelihood, effect: number): number {
  const at = Math.min(logs.length - 2, Math.max(1, Math.round((effect - from) / step)));
  const t = (effect - from) / step - at;
  const left = logs[at - 1]!;
  const mid = logs[at]!;
  const right = logs[at + 1]!;
  // Beyond the nodes a parabola that opens upwards would run away: then its slope alone goes on.
  const bend = Math.min(0, right - 2 * mid + left);
  return mid + 0.5 * t * (right - left) + 0.5 * t * t * bend;
}

interface Integral {
  readonly log: number;
  readonly mean: number;
  readonly sd: number;
  readonly beyond: number;
}

function integrate(
  likelihood: EffectLikelihood,
  prior: NormalPrior,
  isBeyond: (effect: number) => boolean,
): Integral {
  const least = prior.mean - REACH_SDS * prior.sd;
  const step = (2 * REACH_SDS * prior.sd) / FINE;
  const logs = Array.from({ length: FINE }, (_, k) => {
    const effect = least + (k + 0.5) * step;
    return logLikelihoodAt(likelihood, effect) - 0.5 * ((effect - prior.mean) / prior.sd) ** 2;
  });
  const top = Math.max(...logs);
  let total = 0;
  let first = 0;
  let second = 0;
  let beyond = 0;
  logs.forEach((log, k) => {
    const effect = least + (k + 0.5) * step;
    const p = Math.exp(log - top);
    total += p;
    first += p * effect;
    second += p * effect * effect;
    if (isBeyond(effect)) beyond += p;
  });
  const mean = first / total;
  return {
    log: top + Math.log((total * step) / (prior.sd * Math.sqrt(2 * Math.PI))),
    mean,
    sd: Math.sqrt(Math.max(0, second / total - mean * mean)),
    beyond: beyond / total,
  };
}

/** An effect under both of its priors, by midpoint sums over 12 prior sds. */
export function effectPosterior(
  likelihood: EffectLikelihood,
  size: EffectSize,
  isBeyond: (effect: number) => boolean = (effect) => effect > size.matters,
): EffectPosterior {
  const wide = integrate(likelihood, size.wide, isBeyond);
  const ordinary = integrate(likelihood, size.ordinary, isBeyond);
  return {
    mean: wide.mean,
    sd: wide.sd,
    logWide: wide.log,
    logOrdinary: ordinary.log,
    beyondWide: wide.beyond,
    beyondOrdinary: ordinary.beyond,
  };
}

/**
 * Probability that the effect is beyond the size that matters: the two priors weighed by the prior chance of a pattern and by their
 * Bayes factor, `P = c P_wide(beyond) + (1 - c) P_ordinary(beyond)`, `c/(1 - c) = prior odds exp(logWide - logOrdinary)`.
 */
export function probabilityBeyond(effect: EffectPosterior, priorChance: number): number {
  const odds =
    (priorChance / (1 - priorChance)) * Math.exp(Math.min(700, effect.logWide - effect.logOrdinary));
  const chance = odds / (1 + odds);
  return chance * effect.beyondWide + (1 - chance) * effect.beyondOrdinary;
}

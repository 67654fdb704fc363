import { logistic, logit, logLogistic } from '../../numeric/index.ts';

/** A send without a stop, and what the dog showed. */
export interface CleanSend {
  /** Exponentially discounted share of stopped sends before it, 0..1. */
  readonly stoppedShare: number;
  readonly expecting: boolean;
}

/** Our judgement, 2026: prior of the expectation model and the half-life of its memory. */
const INTERCEPT = { mean: -3.5, sd: 1 };
const SLOPE = { mean: 2, sd: 1 };
const HALF_LIFE_SENDS = 4;

/** Discounted share of stopped sends after one more send; 0 before the first. */
export function nextStoppedShare(share: number, stopped: boolean): number {
  const kept = 0.5 ** (1 / HALF_LIFE_SENDS);
  return kept * share + (1 - kept) * (stopped ? 1 : 0);
}

/** A pair of the model's numbers with its posterior weight; the weights add up to 1. */
export interface ExpectationNode {
  readonly intercept: number;
  readonly slope: number;
  readonly weight: number;
}

/** A chance with its uncertainty. */
export interface ExpectedShare {
  readonly mean: number;
  readonly sd: number;
}

/** Normal priors of intercept and slope. */
export interface ExpectationPrior {
  readonly intercept: { readonly mean: number; readonly sd: number };
  readonly slope: { readonly mean: number; readonly sd: number };
}

/** Before any record of a dog. */
export const EXPECTATION_PRIOR: ExpectationPrior = { intercept: INTERCEPT, slope: SLOPE };

export interface ExpectationPosterior {
  readonly nodes: readonly ExpectationNode[];
  /** ln P(what the clean sends showed). */
  readonly logEvidence: number;
}

/**
 * `logit P(hangs back or stops unasked) = a + b u` on a clean send, u the discounted share of stopped sends before it:
 * posterior of (a, b) on a grid of 3 prior sds each way, a quarter sd apart. The one model of expectation: both the
 * pattern and the share of clean sends are read from it.
 */
export function expectationPosterior(
  sends: readonly CleanSend[],
  prior: ExpectationPrior = EXPECTATION_PRIOR,
): ExpectationPosterior {
  const found: { intercept: number; slope: number; weight: number }[] = [];
  let top = -Infinity;
  let priorTotal = 0;
  for (let i = -12; i <= 12; i++) {
    for (let j = -12; j <= 12; j++) {
      const intercept = prior.intercept.mean + (i / 4) * prior.intercept.sd;
      const slope = prior.slope.mean + (j / 4) * prior.slope.sd;
      const logPrior = -((i / 4) ** 2 + (j / 4) ** 2) / 2;
      priorTotal += Math.exp(logPrior);
      let log = logPrior;
      for (const send of sends) {
        const eta = intercept + slope * send.stoppedShare;
        log += logLogistic(send.expecting ? eta : -eta);
      }
      top = Math.max(top, log);
      found.push({ intercept, slope, weight: log });
    }
  }
  let total = 0;
  for (const node of found) {
    node.weight = Math.exp(node.weight - top);
    total += node.weight;
  }
  for (const node of found) node.weight /= total;
  return { nodes: found, logEvidence: top + Math.log(total / priorTotal) };
}

/**
 * Chance that the dog expects the whistle on a clean send when this share of its sends, 0..1, is run clean.
 * @throws RangeError outside 0..1
 */
export function expectationAt({ nodes }: ExpectationPosterior, cleanShare: number): ExpectedShare {
  if (!(cleanShare >= 0 && cleanShare <= 1))
    throw new RangeError(`cleanShare: expected 0..1, got ${cleanShare}`);
  let mean = 0;
  let square = 0;
  for (const { intercept, slope, weight } of nodes) {
    const chance = logistic(intercept + slope * (1 - cleanShare));
    mean += weight * chance;
    square += weight * chance * chance;
  }
  return { mean, sd: Math.sqrt(Math.max(0, square - mean * mean)) };
}

/** Probability that this chance is under a limit, both 0..1, when so many of the sends are run clean. */
export function expectationUnder({ nodes }: ExpectationPosterior, cleanShare: number, limit: number): number {
  const limitLogit = logit(limit);
  return nodes.reduce(
    (sum, { intercept, slope, weight }) =>
      intercept + slope * (1 - cleanShare) < limitLogit ? sum + weight : sum,
    0,
  );
}

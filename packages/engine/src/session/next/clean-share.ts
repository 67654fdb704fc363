import { logit, logLogistic } from '../../numeric/index.ts';

/** A send without a stop, and what the dog showed. */
export interface CleanSend {
  /** Exponentially discounted share of stopped sends before it, 0..1. */
  readonly stoppedShare: number;
  readonly expecting: boolean;
}

/** Our judgement, 2026: prior of the expectation model, half-life of its memory, the bounds and the wanted chance. */
const INTERCEPT = { mean: -3.5, sd: 1 };
const SLOPE = { mean: 2, sd: 1 };
const HALF_LIFE_SENDS = 4;
const WANTED_LOGIT = logit(0.12);
const LEAST_PERCENT = 20;
const MOST_PERCENT = 60;

/** Discounted share of stopped sends after one more send; 0 before the first. */
export function nextStoppedShare(share: number, stopped: boolean): number {
  const kept = 0.5 ** (1 / HALF_LIFE_SENDS);
  return kept * share + (1 - kept) * (stopped ? 1 : 0);
}

/**
 * The smallest share of clean sends, between 1 in 5 and 3 in 5, at which this dog's chance of expecting the whistle is as
 * likely as not under 12 %: `logit P(expects) = a + b u`, u the share of stopped sends, posterior of (a, b) on a grid
 * from its own clean sends. The posterior median is held under the limit, not the mean: the mean of the wide prior
 * alone would run more than half of a new dog's sends clean, where common practice is near 1 in 3.
 */
export function wantedCleanShare(sends: readonly CleanSend[]): number {
  const nodes = posterior(sends);
  const total = nodes.reduce((so, node) => so + node.weight, 0);
  for (let percent = LEAST_PERCENT; percent < MOST_PERCENT; percent++) {
    const stopped = 1 - percent / 100;
    const under = nodes.reduce(
      (so, { a, b, weight }) => so + (a + b * stopped < WANTED_LOGIT ? weight : 0),
      0,
    );
    if (under >= total / 2) return percent / 100;
  }
  return MOST_PERCENT / 100;
}

/** Posterior weights of the expectation model on a grid of 3 prior sds each way, a quarter sd apart. */
function posterior(sends: readonly CleanSend[]): readonly { a: number; b: number; weight: number }[] {
  const nodes: { a: number; b: number; weight: number }[] = [];
  let top = -Infinity;
  for (let i = -12; i <= 12; i++) {
    for (let j = -12; j <= 12; j++) {
      const a = INTERCEPT.mean + (i / 4) * INTERCEPT.sd;
      const b = SLOPE.mean + (j / 4) * SLOPE.sd;
      let logWeight = -((i / 4) ** 2 + (j / 4) ** 2) / 2;
      for (const send of sends) {
        const eta = a + b * send.stoppedShare;
        logWeight += logLogistic(send.expecting ? eta : -eta);
      }
      top = Math.max(top, logWeight);
      nodes.push({ a, b, weight: logWeight });
    }
  }
  for (const node of nodes) node.weight = Math.exp(node.weight - top);
  return nodes;
}

import { logistic } from '../../numeric/index.ts';

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
const WANTED_CHANCE = 0.12;
const LEAST_SHARE = 0.2;
const MOST_SHARE = 0.6;

/** Discounted share of stopped sends after one more send; 0 before the first. */
export function nextStoppedShare(share: number, stopped: boolean): number {
  const kept = 0.5 ** (1 / HALF_LIFE_SENDS);
  return kept * share + (1 - kept) * (stopped ? 1 : 0);
}

/**
 * The smallest share of clean sends, between 1 in 5 and 3 in 5, that keeps the mean chance of expectation under
 * 12 %: `logit P(expects) = a + b u`, u the share of stopped sends, posterior of (a, b) on a grid from this dog's own
 * clean sends. A new dog's share is what the prior gives.
 */
export function wantedCleanShare(sends: readonly CleanSend[]): number {
  const nodes: { a: number; b: number; logWeight: number }[] = [];
  for (let i = -12; i <= 12; i++) {
    for (let j = -12; j <= 12; j++) {
      const a = INTERCEPT.mean + (i / 4) * INTERCEPT.sd;
      const b = SLOPE.mean + (j / 4) * SLOPE.sd;
      let logWeight = -((i / 4) ** 2 + (j / 4) ** 2) / 2;
      for (const send of sends) {
        const chance = logistic(a + b * send.stoppedShare);
        logWeight += Math.log(send.expecting ? chance : 1 - chance);
      }
      nodes.push({ a, b, logWeight });
    }
  }
  const top = nodes.reduce((so, node) => Math.max(so, node.logWeight), -Infinity);
  for (let share = LEAST_SHARE; share < MOST_SHARE; share += 0.01) {
    let weighted = 0;
    let total = 0;
    for (const node of nodes) {
      const weight = Math.exp(node.logWeight - top);
      weighted += weight * logistic(node.a + node.b * (1 - share));
      total += weight;
    }
    if (weighted / total < WANTED_CHANCE) return Math.round(share * 100) / 100;
  }
  return MOST_SHARE;
}

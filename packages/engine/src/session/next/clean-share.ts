import { type CleanSend, expectationPosterior, expectationUnder } from '../../ability/index.ts';

/** The chance of expecting the whistle that the share keeps to, and its bounds (our judgement, 2026). */
const WANTED_UNDER = 0.1;
const LEAST_PERCENT = 20;
const MOST_PERCENT = 60;

/**
 * The smallest share of clean sends, between 1 in 5 and 3 in 5, at which this dog's chance of expecting the whistle is as
 * likely as not under 10 %, by the one model of expectation (`expectationPosterior`) and the dog's own clean sends. The
 * limit was 12 % at first; 10 % starts a new dog at 35 in 100, nearer to common practice (near 1 in 3) than the 25 that 12 %
 * gives, and every law of the share holds as it did. The posterior median is held under the limit, not the mean: the mean of the
 * wide prior alone would run more than half of a new dog's sends clean. With a record the two come together.
 */
export function wantedCleanShare(sends: readonly CleanSend[]): number {
  const posterior = expectationPosterior(sends);
  for (let percent = LEAST_PERCENT; percent < MOST_PERCENT; percent++) {
    if (expectationUnder(posterior, percent / 100, WANTED_UNDER) >= 0.5) return percent / 100;
  }
  return MOST_PERCENT / 100;
}

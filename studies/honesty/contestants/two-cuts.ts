import type { Chances } from '../../careers/mind.ts';

const LEAST = 0.001;

/** Chances of three grades from two logits, of not missed and of good; no grade is ever ruled out. */
export function fromTwoCuts(notMissedLogit: number, goodLogit: number): Chances {
  const held = (logit: number) => Math.min(1 - 2 * LEAST, Math.max(2 * LEAST, 1 / (1 + Math.exp(-logit))));
  const notMissed = held(notMissedLogit);
  const good = Math.min(held(goodLogit), notMissed - LEAST);
  return { missed: 1 - notMissed, fair: notMissed - good, good };
}

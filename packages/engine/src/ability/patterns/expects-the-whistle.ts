import {
  type CleanSend,
  type ExpectationPosterior,
  expectationAt,
  expectationPosterior,
  expectationUnder,
} from './expectation-model.ts';
import { evidenceOf, type PatternFinding, stateOf } from './pattern.ts';
import { EXPECTATION, PRIOR_CHANCE } from './sizes.ts';

const over = (posterior: ExpectationPosterior): number =>
  1 - expectationUnder(posterior, EXPECTATION.usualClean, EXPECTATION.matters);

/**
 * Does the dog expect the whistle? Strength: the chance that it hangs back or stops unasked on a clean send where one send in three is
 * run clean, as is common practice. The pattern: that chance is over the size that matters.
 */
export function expectsTheWhistle(sends: readonly CleanSend[]): PatternFinding {
  const isThin = sends.length < EXPECTATION.need;
  const seen = isThin ? [] : sends;
  const wide = expectationPosterior(seen, EXPECTATION.wide);
  const ordinary = expectationPosterior(seen, EXPECTATION.ordinary);
  const odds =
    (PRIOR_CHANCE / (1 - PRIOR_CHANCE)) * Math.exp(Math.min(700, wide.logEvidence - ordinary.logEvidence));
  const chance = odds / (1 + odds);
  const probability = chance * over(wide) + (1 - chance) * over(ordinary);
  const { mean, sd } = expectationAt(wide, EXPECTATION.usualClean);
  const afterStops = (send: CleanSend) => send.stoppedShare >= 0.5;
  const expecting = (send: CleanSend) => send.expecting;
  return {
    pattern: 'expects-the-whistle',
    state: isThin ? 'cant-say' : stateOf(probability),
    strength: { mean, sd },
    probability,
    evidence: [
      evidenceOf('after-stops', sends.filter(afterStops), expecting),
      evidenceOf(
        'after-clean',
        sends.filter((send) => !afterStops(send)),
        expecting,
      ),
    ],
    ...(isThin
      ? { tooLittle: { code: 'too-few', of: 'clean-sends', have: sends.length, need: EXPECTATION.need } }
      : {}),
  };
}

import { normalCdf } from '../../numeric/normal.ts';
import type { Grade } from '../ask.ts';
import type { LogitEstimate } from '../forecaster.ts';
import type { Cause } from '../leg-weight.ts';

/** What a leg came to, derived and never free text; the order is that in which they are tried. */
export const VERDICTS = [
  'handler',
  'setup',
  'too-big-a-step',
  'form',
  'bad-luck',
  'not-yet',
  'better-than-hoped',
  'as-hoped',
] as const;
export type Verdict = (typeof VERDICTS)[number];

/** Thresholds of the verdicts: our judgement, 2026 (common practice, no source). Chances are of good. */
export const VERDICT_LIMITS = {
  /** A step is too big above so many logits, where the chance before was under `chanceUnder`. */
  stretchAbove: 1.2,
  chanceUnder: 0.6,
  /** A poor day: form below so many logits, with so much probability or more. */
  formBelow: -0.5,
  formProbability: 0.8,
  /** Bad luck: the chance before was above this. */
  luckAbove: 0.85,
  /** Better than hoped: the chance before was under this. */
  hopedUnder: 0.5,
} as const;

/** Probability that the form of the day is a poor one, below -0.5 logits, by its posterior (a normal). */
export function poorFormProbability(form: LogitEstimate): number {
  const { formBelow } = VERDICT_LIMITS;
  if (!(form.sd > 0)) return form.mean < formBelow ? 1 : 0;
  return normalCdf((formBelow - form.mean) / form.sd);
}

/** All that a verdict is derived from. */
export interface VerdictFigures {
  readonly grade: Grade;
  /** `null` on a good leg. */
  readonly cause: Cause | null;
  /** Against the base, in logits; `null` with no success before: there is nothing a step could be too big from. */
  readonly stretch: number | null;
  /** Chance of good, stated before the leg. */
  readonly chanceBefore: number;
  /** Probability that the day was a poor one, as of the end of the session. */
  readonly poorForm: number;
}

/**
 * The verdict on a leg: the first that holds. Not good: `handler`, `setup` (as the handler said), `too-big-a-step`
 * (stretch > 1.2 and chance < 0.6), `form` (P(form < -0.5) >= 0.8), `bad-luck` (chance > 0.85), `not-yet`. Good:
 * `better-than-hoped` (chance < 0.5), else `as-hoped`.
 *
 * Our reading of a fair leg: not good. The chances are of good, so a fair leg fell short of what was stated, and what
 * made it fall short is asked in the same order. `unsure` and `dog` decide nothing by themselves.
 */
export function verdictOf({ grade, cause, stretch, chanceBefore, poorForm }: VerdictFigures): Verdict {
  const limits = VERDICT_LIMITS;
  if (grade === 'good') return chanceBefore < limits.hopedUnder ? 'better-than-hoped' : 'as-hoped';
  if (cause === 'handler' || cause === 'setup') return cause;
  if (stretch !== null && stretch > limits.stretchAbove && chanceBefore < limits.chanceUnder)
    return 'too-big-a-step';
  if (poorForm >= limits.formProbability) return 'form';
  return chanceBefore > limits.luckAbove ? 'bad-luck' : 'not-yet';
}

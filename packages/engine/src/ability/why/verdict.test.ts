import { describe, expect, it } from 'vitest';
import { poorFormProbability, type Verdict, type VerdictFigures, verdictOf } from './verdict.ts';

const MISSED: VerdictFigures = {
  grade: 'missed',
  cause: 'dog',
  stretch: 0.4,
  chanceBefore: 0.7,
  poorForm: 0.1,
};

// Worked by hand from the definition: order handler, setup, too-big-a-step (stretch > 1.2 and chance before < 0.6), form
// (form < -0.5 with probability 0.8), bad-luck (chance before > 0.85), not-yet; good: better-than-hoped under 0.5.
describe('the verdict', () => {
  it.each<[string, Partial<VerdictFigures>, Verdict]>([
    ['an ordinary miss', {}, 'not-yet'],
    ['an ordinary fair leg: not good either', { grade: 'fair' }, 'not-yet'],
    ["the handler's, whatever else", { cause: 'handler', stretch: 3, chanceBefore: 0.1 }, 'handler'],
    ["a fair leg that was the handler's", { grade: 'fair', cause: 'handler' }, 'handler'],
    ["the set-up's, whatever else", { cause: 'setup', poorForm: 0.99, chanceBefore: 0.95 }, 'setup'],
    ['not sure decides nothing by itself', { cause: 'unsure' }, 'not-yet'],
    ['a step of 1.2 is not yet too big', { stretch: 1.2, chanceBefore: 0.5 }, 'not-yet'],
    ['a step over 1.2 is', { stretch: 1.2001, chanceBefore: 0.5 }, 'too-big-a-step'],
    ['but not where the chance was 0.6', { stretch: 2, chanceBefore: 0.6 }, 'not-yet'],
    ['just under 0.6 it is', { stretch: 2, chanceBefore: 0.5999 }, 'too-big-a-step'],
    ['with no success before no step can be too big', { stretch: null, chanceBefore: 0.2 }, 'not-yet'],
    ['too big a step goes before the form', { stretch: 2, chanceBefore: 0.5, poorForm: 1 }, 'too-big-a-step'],
    ['form at 0.8', { poorForm: 0.8 }, 'form'],
    ['form under 0.8', { poorForm: 0.7999 }, 'not-yet'],
    ['form goes before bad luck', { poorForm: 0.9, chanceBefore: 0.9 }, 'form'],
    ['a chance of 0.85 is not yet bad luck', { chanceBefore: 0.85 }, 'not-yet'],
    ['above it is', { chanceBefore: 0.8501 }, 'bad-luck'],
    ['a fair leg may be bad luck', { grade: 'fair', chanceBefore: 0.9 }, 'bad-luck'],
    ['good at 0.5 is as hoped', { grade: 'good', cause: null, chanceBefore: 0.5 }, 'as-hoped'],
    [
      'good under 0.5 is better',
      { grade: 'good', cause: null, chanceBefore: 0.4999, poorForm: 1 },
      'better-than-hoped',
    ],
  ])('%s', (_, figures, want) => {
    expect(verdictOf({ ...MISSED, ...figures })).toBe(want);
  });
});

describe('the probability of a poor day', () => {
  it('is the normal tail below -0.5 (z of 0.8 is 0.841621, any table of the normal)', () => {
    expect(poorFormProbability({ mean: -0.5, sd: 0.3 })).toBeCloseTo(0.5, 12);
    expect(poorFormProbability({ mean: -0.5 - 0.3 * 0.8416212336, sd: 0.3 })).toBeCloseTo(0.8, 9);
    // Before any leg of the day: P(N(0, 0.4) < -0.5) = P(Z < -1.25) = 0.10565 (table).
    expect(poorFormProbability({ mean: 0, sd: 0.4 })).toBeCloseTo(0.10565, 5);
  });

  it('is an answer where the form is known to the point', () => {
    expect(poorFormProbability({ mean: -0.6, sd: 0 })).toBe(1);
    expect(poorFormProbability({ mean: -0.4, sd: 0 })).toBe(0);
  });
});

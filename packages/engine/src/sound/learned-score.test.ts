import { expect, it } from 'vitest';
import { RIVAL_FEATURES } from './alternatives.ts';
import { BLAST_ALONE_NUMBERS } from './blast-alone-numbers.ts';
import { CONTEXT_FEATURES } from './blast-context.ts';
import { BLAST_FEATURES } from './blast-features.ts';
import { MEMORY_FEATURES } from './blast-memory.ts';
import { BLAST_NUMBERS } from './blast-numbers.ts';
import { BLAST_WHOLE_NUMBERS } from './blast-whole-numbers.ts';
import { CLICK_FEATURES } from './click-hearing.ts';
import { CLICK_NUMBERS } from './click-numbers.ts';
import { createScore } from './learned-score.ts';
import { OWN_FEATURES } from './own-whistle.ts';

it('is the sum that it says, by hand', () => {
  // x = (3 - 1) / 2 = 1; tanh(0.5 + 0.25) = 0.635149; z = 0.1 + 0.4 * 1 + 2 * 0.635149.
  const score = createScore({ mean: [1], sd: [2], hidden: 1, weights: [0.5, 0.25, 2, 0.4, 0.1] });
  expect(score(Float64Array.of(3))).toBeCloseTo(1.770298, 6);
  // Held at five spreads: x = 5.
  expect(score(Float64Array.of(1e9))).toBe(score(Float64Array.of(11)));
});

it('refuses numbers that do not fit together', () => {
  expect(() => createScore({ mean: [1], sd: [2], hidden: 1, weights: [1] })).toThrow(RangeError);
});

it('has a number for each figure that is measured', () => {
  expect(BLAST_ALONE_NUMBERS.mean).toHaveLength(BLAST_FEATURES.length);
  const together = [BLAST_FEATURES, CONTEXT_FEATURES, MEMORY_FEATURES, RIVAL_FEATURES, OWN_FEATURES].flat();
  expect(BLAST_NUMBERS.mean).toHaveLength(together.length);
  expect(BLAST_WHOLE_NUMBERS.mean).toHaveLength(together.length);
  expect(CLICK_NUMBERS.mean).toHaveLength(CLICK_FEATURES.length);
});

import { textWidth } from '@sedgeline/drawing';
import { DEMANDS, GRADES, HANDLER_PLACES, SKILLS, TEMPTATIONS, VERDICTS } from '@sedgeline/engine/ability';
import { FEATURE_CODES, STARTING_LAYOUT_CODES } from '@sedgeline/engine/ground';
import {
  RULE_MEND_CODES as ENGINE_MENDS,
  REASON_CODES as ENGINE_REASONS,
  RULE_WHY_CODES as ENGINE_WHYS,
  RULES,
} from '@sedgeline/engine/session';
import type { StoreFailureCode } from '@sedgeline/journal';
import {
  FACTOR_CODES,
  REASON_CODES,
  RULE_MEND_CODES,
  RULE_NAMES,
  RULE_WHY_CODES,
  STORE_FAILURE_CODES,
  VERDICT_CODES,
  words,
} from '@sedgeline/words';
import { expect, it } from 'vitest';

/** The catalogue depends on nobody, so its codes are written out a second time there; this is where the two must meet. */
it('has a sentence for every reason the engine gives, and for no other', () => {
  expect([...REASON_CODES].sort()).toEqual([...ENGINE_REASONS].sort());
});

it('has a name for every rule of a plan, and a sentence for why it is not kept and what would mend it', () => {
  expect([...RULE_NAMES]).toEqual([...RULES]);
  expect([...RULE_WHY_CODES].sort()).toEqual([...ENGINE_WHYS].sort());
  expect([...RULE_MEND_CODES].sort()).toEqual([...ENGINE_MENDS].sort());
});

it('has a name, a terrain, a purpose and a caution for every layout to begin from, and names what they mark', () => {
  const { ground } = words();
  const names = STARTING_LAYOUT_CODES.map((code) => ground.starting(code).name);
  expect(new Set(names).size).toBe(names.length);
  for (const code of STARTING_LAYOUT_CODES) {
    const { terrain, purpose, caution } = ground.starting(code);
    for (const text of [purpose, caution]) expect(text).toMatch(/^[A-Z].*\.$/);
    expect(ground.fits(terrain)).toMatch(/^For [a-z].*[^.]\.$/);
  }
  const features = FEATURE_CODES.map((code) => ground.feature(code));
  expect(new Set(features).size).toBe(features.length);
});

it('has a sentence for every failure of a store, and for no other', () => {
  const everyCode: Record<StoreFailureCode, true> = {
    STORE_FULL: true,
    STORE_REFUSED: true,
    STORE_BROKEN: true,
    STORE_CLOSED: true,
    FACT_CONFLICT: true,
  };
  expect([...STORE_FAILURE_CODES].sort()).toEqual(Object.keys(everyCode).sort());
});

it('has words for every verdict and for everything that makes a leg harder, and for no other', () => {
  expect([...VERDICT_CODES]).toEqual([...VERDICTS]);
  expect([...FACTOR_CODES].sort()).toEqual([...DEMANDS].sort());
});

it('names every skill, temptation and handler place of the engine, no two alike', () => {
  const { trade } = words();
  expect(new Set(SKILLS.map(trade.skill)).size).toBe(SKILLS.length);
  expect(new Set(SKILLS.map(trade.skillInWords)).size).toBe(SKILLS.length);
  expect(new Set(TEMPTATIONS.map(trade.temptation)).size).toBe(TEMPTATIONS.length);
  expect(new Set(HANDLER_PLACES.map(trade.handlerPlace)).size).toBe(HANDLER_PLACES.length);
});

/** Three keys on a card of 360: (360 - 24 at the sides - 16 between) / 3, less 4 of edge; 14 is the key's small type. */
it('has words for the keys that stand on one line of the narrowest phone', () => {
  const { trade } = words();
  const key = (360 - 24 - 16) / 3 - 4;
  for (const skill of SKILLS) {
    for (const grade of GRADES)
      expect(textWidth(trade.gradeOnKey(skill, grade), 14)).toBeLessThanOrEqual(key);
  }
});

import { describe, expect, it } from 'vitest';
import { openSnapshot } from '../ability/filter-snapshot.ts';
import { restoreAbilityFilter, shippedPriors } from '../ability/index.ts';
import { dogBelief } from './dog-belief.ts';
import { madeSeason } from './made-season.fixture.ts';

describe('what is believed of a dog', () => {
  it('has in it what is left of what was told, as the filter states it', () => {
    const { question } = madeSeason(6, shippedPriors);
    const { asks, atMs, dog } = question;
    const filter = restoreAbilityFilter(question.snapshot);
    const { skill } = asks[0]!;
    const level = () => {
      const belief = dogBelief(
        openSnapshot(filter.snapshot(), shippedPriors),
        shippedPriors,
        dog,
        asks,
        atMs,
      );
      return belief.skills.find((one) => one.skill === skill)!.mean[0]!;
    };
    const before = { level: level(), ability: filter.ability(dog, skill, atMs).mean };
    filter.tell(dog, skill, atMs, { farthestM: 400, ground: 'new', ageMonths: null });
    const moved = filter.ability(dog, skill, atMs).mean - before.ability;
    expect(moved).not.toBe(0);
    expect(level() - before.level).toBeCloseTo(moved, 12);
  });
});

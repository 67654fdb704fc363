import { describe, expect, it } from 'vitest';
import { SKILL_CODES } from '../vocabulary.ts';
import { words } from '../words.ts';

describe('what is told of a dog, in words worked by hand', () => {
  const { told } = words().dog;

  it('asks how far of every skill that has a distance, and of no other', () => {
    const asked = SKILL_CODES.filter((skill) => told.farthest(skill, 'Wren') !== null);
    // The contract's own list: line, stop, mark, hunt, recall, delivery, casts.
    expect(asked.sort()).toEqual(
      ['line', 'stop', 'mark', 'hunt', 'recall', 'delivery', 'cast-left', 'cast-right', 'cast-back'].sort(),
    );
    expect(told.farthest('stop', 'Wren')).toBe('How far out has Wren lately stopped well?');
  });

  it('says back what was told, in the unit that is shown', () => {
    expect(told.said('Wren', { farthestM: 40, ground: 'known' })).toBe(
      'You told: up to 40 m, on ground Wren knows.',
    );
    expect(told.said('Wren', { farthestM: 0, ground: null })).toBe('You told: not yet.');
    expect(told.said('Wren', { farthestM: null, ground: 'new' })).toBe('You told: on ground new to Wren.');
    expect(told.said('Wren', { farthestM: null, ground: null })).toBe('You told: it goes well.');
    const yards = words('en-US', 'yards').dog.told;
    expect(yards.said('Wren', { farthestM: 91.44, ground: 'home' })).toBe('You told: up to 100 yd, at home.');
    expect(yards.farthestHint).toBe('In yards. Empty: not said.');
    expect(words('en-US', 'metres').dog.told.farthestHint).toBe('In meters. Empty: not said.');
    expect(told.ground('new', 'Wren')).toBe('On ground new to Wren');
  });

  it('says what a standing rests on', () => {
    expect(told.standing(0, 1)).toBe('Told, not yet seen.');
    expect(told.standing(1, 0.8)).toBe('Rests more on what you told than on 1 leg seen.');
    expect(told.standing(9, 0.3)).toBe('Rests more on 9 legs seen than on what you told.');
  });
});

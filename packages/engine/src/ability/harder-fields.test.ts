import { describe, expect, it } from 'vitest';
import type { Ask, Skill } from './ask.ts';
import { harderFields } from './harder-fields.ts';

// Cases worked by hand from the journal's contract: easy ends, and what counts as one thing raised.
describe('fields that are harder', () => {
  it.each<[string, Skill, Ask, Ask, string[][]]>([
    ['nothing against itself', 'stop', { distanceM: 30 }, { distanceM: 30 }, []],
    ['absent stands at the easy end', 'line', { distanceM: 30 }, {}, [['distanceM']]],
    ['below the easy end is not easier', 'line', { distanceM: 5 }, { distanceM: 3 }, []],
    ['a smaller gap is harder', 'mark', { gapDeg: 30 }, { gapDeg: 90 }, [['gapDeg']]],
    ['a larger gap is not', 'mark', { gapDeg: 90 }, { gapDeg: 30 }, []],
    ['temptation by rank', 'stop', { temptation: 'game' }, { temptation: 'post' }, [['temptation']]],
    ['handler by rank', 'stop', { handlerPlace: 'apart' }, { handlerPlace: 'beside' }, [['handlerPlace']]],
    [
      'a later stop on the same line is one thing',
      'stop',
      { distanceM: 40, wayFraction: 0.5 },
      { distanceM: 24, wayFraction: 0.3 },
      [['distanceM', 'wayFraction']],
    ],
    [
      'a later stop on a longer line is two',
      'stop',
      { distanceM: 60, wayFraction: 0.5 },
      { distanceM: 24, wayFraction: 0.3 },
      [['distanceM'], ['wayFraction']],
    ],
    [
      'a line is not a stop',
      'line',
      { distanceM: 40, wayFraction: 0.5 },
      { distanceM: 24, wayFraction: 0.3 },
      [['distanceM'], ['wayFraction']],
    ],
    ['left: away from square', 'cast-left', { turnDeg: 120 }, { turnDeg: 80 }, [['turnDeg']]],
    ['back: away from straight on', 'cast-back', { turnDeg: 150 }, {}, [['turnDeg']]],
    ['no cast, no turn', 'line', { turnDeg: 10 }, {}, []],
    ['two things', 'line', { blind: true, cover: 1 }, { cover: 0 }, [['cover'], ['blind']]],
  ])('%s', (_, skill, now, then, want) => {
    expect(harderFields(now, then, skill)).toEqual(want);
  });
});

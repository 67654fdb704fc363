import { describe, expect, it } from 'vitest';
import { readTold } from './read-told.ts';

const METRE = 1;
/** The international yard. */
const YARD = 0.9144;

describe('what was typed of a dog', () => {
  it('is read in the shown unit, with a comma or a point', () => {
    expect(readTold({ farthest: ' 40 ', ground: 'known' }, METRE)).toEqual({
      ok: true,
      farthestM: 40,
      ground: 'known',
    });
    expect(readTold({ farthest: '100', ground: 'unsaid' }, YARD)).toEqual({
      ok: true,
      farthestM: 91.44,
      ground: null,
    });
    expect(readTold({ farthest: '7,5', ground: 'home' }, METRE)).toMatchObject({ farthestM: 7.5 });
  });

  it('may leave out either question, not both', () => {
    expect(readTold({ farthest: '', ground: 'new' }, METRE)).toMatchObject({
      farthestM: null,
      ground: 'new',
    });
    expect(readTold({ farthest: ' ', ground: 'unsaid' }, METRE)).toEqual({
      ok: false,
      fault: 'nothing-told',
    });
  });

  it('says what is wrong with a number', () => {
    for (const farthest of ['far', '-3', '1e999'])
      expect(readTold({ farthest, ground: 'home' }, METRE)).toEqual({
        ok: false,
        fault: 'distance-unreadable',
      });
    expect(readTold({ farthest: '401', ground: 'home' }, METRE)).toEqual({
      ok: false,
      fault: 'distance-far',
    });
    expect(readTold({ farthest: '437', ground: 'home' }, YARD)).toMatchObject({ ok: true });
    expect(readTold({ farthest: '438', ground: 'home' }, YARD)).toEqual({ ok: false, fault: 'distance-far' });
  });
});

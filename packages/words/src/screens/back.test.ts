import { describe, expect, it } from 'vitest';
import { words } from '../words.ts';

describe('how a session went, in words worked by hand', () => {
  const { went } = words().back;
  it('counts legs by grade and leaves out what there was none of', () => {
    expect(went({ good: 12, fair: 2, missed: 1 })).toBe('of 15 legs: 12 good, 2 fair and 1 missed');
    expect(went({ good: 3, fair: 0, missed: 1 })).toBe('of 4 legs: 3 good and 1 missed');
    expect(went({ good: 0, fair: 0, missed: 1 })).toBe('of 1 leg: 1 missed');
    expect(went({ good: 9, fair: 0, missed: 0 })).toBe('all 9 legs good');
    expect(went({ good: 1, fair: 0, missed: 0 })).toBe('its one leg good');
    expect(went({ good: 0, fair: 0, missed: 0 })).toBe('nothing recorded');
  });
});

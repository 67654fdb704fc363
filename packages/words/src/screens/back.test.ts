import { describe, expect, it } from 'vitest';
import { words } from '../words.ts';

describe('how a session went, in words worked by hand', () => {
  const { went, wentSaid } = words().back;
  it('counts legs by grade and leaves out what there was none of', () => {
    expect(went({ good: 12, fair: 2, missed: 1 })).toBe('of 15 legs: 12 good, 2 fair and 1 missed');
    expect(went({ good: 3, fair: 0, missed: 1 })).toBe('of 4 legs: 3 good and 1 missed');
    expect(went({ good: 0, fair: 0, missed: 1 })).toBe('of 1 leg: 1 missed');
    expect(went({ good: 9, fair: 0, missed: 0 })).toBe('all 9 legs good');
    expect(went({ good: 1, fair: 0, missed: 0 })).toBe('its one leg good');
    expect(went({ good: 0, fair: 0, missed: 0 })).toBe('nothing recorded');
    expect(wentSaid({ good: 3, fair: 0, missed: 1 })).toBe('Of 4 legs: 3 good and 1 missed.');
  });
});

describe('what a session asked, in words worked by hand', () => {
  const at = (skill: 'line' | 'stop' | 'cast-left' | 'mark' | 'steady', times: number, ...m: number[]) => ({
    skill,
    times,
    overM: m.length === 0 ? null : { nearest: Math.min(...m), farthest: Math.max(...m) },
  });

  it('names each skill, how often, and from where to where', () => {
    const { asked } = words().back;
    expect(asked([at('stop', 7, 8, 24), at('line', 2, 40), at('steady', 1)])).toBe(
      'Stop 7 times, 8 to 24 m; line twice, 40 m; steady once.',
    );
    expect(asked([])).toBe('');
    expect(words('en-GB', 'yards').back.asked([at('line', 1, 18.288)])).toBe('Line once, 20 yd.');
  });

  it('names the first of many and counts the rest, and never counts one alone', () => {
    const { asked } = words().back;
    const many = [at('stop', 5), at('line', 4), at('cast-left', 3), at('mark', 2), at('steady', 1)];
    expect(asked(many)).toBe('Stop 5 times; line 4 times; left 3 times; 2 more skills.');
    expect(asked(many.slice(0, 4))).toBe('Stop 5 times; line 4 times; left 3 times; mark twice.');
  });

  it('says of a leg what came of it, and whose it was where it was not the dog’s', () => {
    const { outcome } = words().back;
    expect(outcome('stop', 'good', null)).toBe('Stop: prompt');
    expect(outcome('stop', 'fair', 'dog')).toBe('Stop: slow, or a second whistle');
    expect(outcome('stop', 'missed', 'handler')).toBe('Stop: ran on (yours, not the dog’s)');
  });
});

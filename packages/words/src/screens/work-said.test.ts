import { describe, expect, it } from 'vitest';
import { words } from '../words.ts';

const british = words();
const yards = words('en-US', 'yards');

describe('what became of a rep', () => {
  const { history } = british.work;

  it('is told with what it was before', () => {
    expect(history.step('changed', [{ of: 'grade', skill: 'stop', from: 'good', to: 'fair' }])).toBe(
      'changed: stop fair, was good',
    );
    expect(history.step('struck', [])).toBe('taken out');
    expect(history.step('changed', [{ of: 'note', from: '', to: 'wind' }])).toBe('changed: note “wind”');
  });

  it('tells lengths in the handler’s unit: 22 m is 24 yd by the international yard', () => {
    const blown = [{ of: 'ask', skill: 'stop', fromM: 20, toM: 22 }] as const;
    expect(history.step('changed', blown)).toBe('changed: stop at 22 m, was 20 m');
    expect(yards.work.history.step('changed', blown)).toBe('changed: stop at 24 yd, was 22 yd');
  });

  it('says who, else on which device, else that nobody knows', () => {
    expect(history.by('Ada', 'phone')).toBe('Ada');
    expect(history.by(null, 'phone')).toBe('device phone');
    expect(history.by(null, null)).toBe('who is not known');
  });
});

describe('the plan that a session follows', () => {
  const { planLine } = british.work;

  it('says which rep of it, whether it is kept, and how it ended', () => {
    expect(planLine({ do: 'keep', done: 3, of: 9 }, 4)).toBe('Plan: rep 4 of 9, as planned');
    expect(planLine({ do: 'adapt', done: 3, of: 9 }, null)).toBe('Plan: 3 of 9 done, changed for today');
    expect(planLine({ do: 'end', done: 8, of: 9 }, null)).toBe('Plan: 8 of 9 done');
  });
});

describe('how long the session and the break have gone on', () => {
  const { clock, breakIn, break: pause } = british.work;

  it('is never written as a time of day', () => {
    expect([0, 59.9, 60, 460, 3900].map(clock)).toEqual(['0 s', '59 s', '1 min', '7 min', '1 h 5 min']);
    expect([180, 160.2, 59, 0, -4].map(pause.left)).toEqual(['3 min', '2 min 41 s', '59 s', '0 s', '0 s']);
    expect(breakIn(4)).toBe('break in 4 min');
  });
});

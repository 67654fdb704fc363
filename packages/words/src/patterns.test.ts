import { describe, expect, it } from 'vitest';
import { type FoundPattern, PATTERN_CODES } from './patterns.ts';
import { words } from './words.ts';

const { patterns } = words();
const found = (pattern: FoundPattern['pattern'], more: Partial<FoundPattern>): FoundPattern => ({
  pattern,
  state: 'looks-like',
  evidence: [],
  ...more,
});
const SIDES = [
  { of: 'left', legs: 41, share: 0.29 },
  { of: 'right', legs: 38, share: 0.11 },
];

describe('patterns in sentences', () => {
  it('give the figures in plain words, the weaker side first', () => {
    expect(patterns.sentence(found('one-sided', { evidence: SIDES, weaker: 'left' }))).toBe(
      'Looks as if casts to the left are the harder ones at like asks: missed 3 in 10 to the left (41 casts) and 1 in 10 to the right (38 casts). Ask that side easier, and as often as the other.',
    );
    expect(patterns.sentence(found('one-sided', { evidence: SIDES, weaker: 'right' }))).toContain(
      'missed 1 in 10 to the right (38 casts) and 3 in 10 to the left (41 casts)',
    );
  });

  it('say "may be" and "nothing" for what they are', () => {
    const evidence = [{ of: 'stops', legs: 50, share: 0.2 }];
    expect(patterns.sentence(found('late-whistle', { state: 'may-be', evidence }))).toMatch(
      /^It may be that the whistle often comes late: 2 in 10 of 50 stops you blew late or put down to yourself\./,
    );
    expect(patterns.sentence(found('late-whistle', { state: 'nothing', evidence }))).toBe(
      'Nothing stands out: 2 in 10 of 50 stops you blew late or put down to yourself.',
    );
  });

  it('say what is lacking, one leg in the singular', () => {
    const tooLittle = { of: 'left', have: 1, need: 10 };
    expect(patterns.sentence(found('one-sided', { state: 'cant-say', tooLittle }))).toBe(
      'Can’t say yet: 1 cast to the left, 10 are needed.',
    );
    const wall = { of: 'far-legs', have: 3, need: 15 };
    expect(patterns.sentence(found('distance-wall', { state: 'cant-say', tooLittle: wall }))).toBe(
      'Can’t say yet: a wall met by fewer than 15 legs can’t be found.',
    );
  });

  it('never call a few none, or nearly all all', () => {
    const at = (share: number) =>
      patterns.sentence(
        found('late-whistle', { state: 'nothing', evidence: [{ of: 'stops', legs: 200, share }] }),
      );
    expect(at(0)).toContain('none of');
    expect(at(0.005)).toContain('fewer than 1 in 20 of');
    expect(at(0.05)).toContain('1 in 20 of');
    expect(at(0.96)).toContain('nearly all of');
    expect(at(1)).toContain(' all of');
  });

  it('put the wall in the handler’s own unit', () => {
    const wall = found('distance-wall', { at: { distanceM: 40 } });
    expect(patterns.sentence(wall)).toContain('beyond 40 m');
    // 40 m / 0.9144 = 43.7 yards.
    expect(words('en-GB', 'yards').patterns.sentence(wall)).toContain('beyond 44 yd');
  });

  it('judge the work, never the dog', () => {
    for (const pattern of PATTERN_CODES) {
      const said = patterns.sentence(found(pattern, { at: { distanceM: 30 } }));
      expect(said).not.toMatch(/stubborn|lazy|stupid|soft|hard-headed|disobedient|afraid|bad dog|weak dog/i);
      expect(said).toMatch(/\.$/);
      expect(said).not.toMatch(/undefined|NaN/);
    }
  });
});

import { describe, expect, it } from 'vitest';
import { words } from '../words.ts';

describe('Listen, in words worked by hand', () => {
  const { at, call, repLeg, file, live, result, fault } = words().listenScreen;

  it('tells moments with their units, as no clock does', () => {
    expect([0, 6.9, 192, 3599, 3792.4].map(at)).toEqual([
      '0 s',
      '6 s',
      '3 min 12 s',
      '59 min 59 s',
      '1 h 3 min 12 s',
    ]);
    expect(result.heard(9, 1, 160)).toBe('9 blasts and 1 click in 2 min 40 s.');
  });

  it('asks of one blast whether it is one rep’s', () => {
    expect(result.ask(192, 'long', 1, repLeg(4, 'stop', null))).toBe(
      'This long blast at 3 min 12 s: rep 4’s stop?',
    );
    expect(result.ask(192, 'pips', 3, repLeg(2, 'recall', 'Wren'))).toBe(
      'These 3 pips at 3 min 12 s: Wren, rep 2’s recall?',
    );
    expect(call('long', 2)).toBe('long blast, blown again');
    expect(repLeg(1, null, null)).toBe('rep 1’s click');
  });

  it('says what is left and what is kept with its unit', () => {
    expect(file.left(3.2)).toBe('about 4 s left');
    expect(file.left(61)).toBe('about 2 min left');
    expect(live.kept(2_345_000)).toBe('sound kept: 2.3 MB');
    expect(live.kept(12_001)).toBe('sound kept: 13 kB');
  });

  it('counts what is kept and what is asked, one or more', () => {
    expect([0, 1, 7].map(result.keep)).toEqual(['Keep what was heard', 'Keep this one', 'Keep these 7']);
    expect(result.kept(1, 0)).toBe('Kept: 1 whistle or click with its rep.');
    expect(result.kept(7, 1)).toBe(
      'Kept: 7 whistles and clicks with their reps, and 1 rep timed by the film’s marks.',
    );
    expect(result.keepAfter(1)).toBe('Answer the last question first.');
    expect(result.keepAfter(4)).toBe('Answer the 4 questions first, or leave the rest unjoined.');
    expect(live.waiting(0.5)).toBe('1 minute from the microphone waits here to be joined.');
    expect(live.waiting(12)).toBe('12 minutes from the microphone wait here to be joined.');
  });

  it('says of each fault what happened, that nothing was changed, and what to do', () => {
    const faults = [
      { code: 'unreadable' },
      { code: 'no-sound' },
      { code: 'cant-decode', coding: null },
      { code: 'cant-decode', coding: 'alac' },
      { code: 'bad-rate', rateHz: 4000 },
    ] as const;
    for (const one of faults) {
      const sentences = fault(one).split('. ');
      expect(sentences.length).toBeGreaterThanOrEqual(3);
      expect(fault(one)).toContain('Nothing was changed.');
      expect(fault(one)).not.toMatch(/undefined|null|NaN/);
    }
  });
});

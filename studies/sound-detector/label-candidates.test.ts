import { describe, expect, it } from 'vitest';
import type { TrueWhistle } from '../sound/recording.ts';
import { type FoundClick, labelClicks, labelTones } from './label-candidates.ts';

const tone = (startS: number, endS: number, pitchHz = 3000) => ({
  startS,
  endS,
  pitchHz,
  levelDb: 0,
  alone: 0,
  own: new Float64Array(0),
});
const blast = (startS: number, endS: number, more: Partial<TrueWhistle> = {}): TrueWhistle => ({
  startS,
  endS,
  kind: 'long',
  pitchHz: 3000,
  distanceM: 1,
  whose: 'own',
  inBandSnrDb: 30,
  ...more,
});
const labels = (tones: readonly ReturnType<typeof tone>[], whistles: TrueWhistle[]) =>
  labelTones(tones, { truth: { whistles, clicks: [] }, disturbed: [] }, 9).map(({ label }) => label);

describe('labels by the truth', () => {
  it('tell the reading of a blast that is right, those as good, those that begin with it, and the rest', () => {
    const readings = [
      tone(1.001, 1.998), // within 2 ms at both ends
      tone(1, 1.95), // within 50 ms, but further off
      tone(1, 1.4), // its first part
      tone(1.01, 2.6), // and what came after
      tone(0.8, 2), // what sang before it
      tone(1.2, 2), // without its beginning
      tone(1, 2, 4000), // another pitch: a third off
      tone(5, 5.2),
    ];
    expect(labels(readings, [blast(1, 2)])).toEqual([
      'real',
      'double',
      'begun',
      'begun',
      'none',
      'none',
      'none',
      'none',
    ]);
  });

  it('take for right what begins with a blast where nothing ends with it: it was found', () => {
    expect(labels([tone(1, 1.4), tone(1, 1.6)], [blast(1, 2)])).toEqual(['begun', 'real']);
  });

  it('leave out what lies below the judged ratio, pieces and all', () => {
    const weak = blast(1, 2, { inBandSnrDb: 5 });
    expect(labels([tone(1, 2), tone(1.5, 2), tone(3, 3.2)], [weak])).toEqual(['unasked', 'unasked', 'none']);
  });

  it('let a second pip keep its own reading beside one of both', () => {
    const [first, second, both] = [tone(1, 1.2), tone(1.4, 1.6), tone(1, 1.6)];
    expect(labels([first, second, both], [blast(1, 1.2), blast(1.4, 1.6)])).toEqual([
      'real',
      'real',
      'begun',
    ]);
  });

  it('of clicks take the nearest to a press', () => {
    const clicks = [0.97, 1.01, 1.2].map(
      (startS): FoundClick => ({ startS, label: null, figures: new Float64Array(0) }),
    );
    labelClicks(clicks, { whistles: [], clicks: [{ timeS: 1, snrDb: 20 }] }, 9);
    expect(clicks.map(({ label }) => label)).toEqual([null, 'real', null]);
    labelClicks(clicks, { whistles: [], clicks: [{ timeS: 1.19, snrDb: 2 }] }, 9);
    expect(clicks.map(({ label }) => label)).toEqual([null, 'real', 'unasked']);
  });
});

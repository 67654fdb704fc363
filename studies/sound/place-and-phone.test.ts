import { describe, expect, it } from 'vitest';
import { diceNamed } from '../careers/dice.ts';
import { banded } from './filters.ts';
import { gustCascade } from './gust-cascade.ts';
import { recorded } from './microphone.ts';
import { addAt, rootMeanSquare, toneAlong, whiteNoise } from './noise.ts';
import { suppressed } from './noise-suppressor.ts';
import { reverberated } from './reverberation.ts';
import { sceneOf } from './sets.ts';

const RATE_HZ = 48_000;
const levelDb = (sound: ArrayLike<number>, fromS: number, toS: number) =>
  20 * Math.log10(rootMeanSquare(Array.from(sound).slice(fromS * RATE_HZ, toS * RATE_HZ)) + 1e-12);
const tone = (hz: number, lastsS: number, height: number) =>
  toneAlong(() => hz, lastsS * RATE_HZ, RATE_HZ).map((x) => height * x);

it('gusts that come of a cascade have the mean that is asked for', () => {
  const strength = gustCascade(200_000, 10, diceNamed('gusts'));
  // A spread of 0.6 over some thousand independent gusts: four standard errors are 0.08.
  expect(Math.abs(strength.reduce((sum, x) => sum + x, 0) / strength.length - 1)).toBeLessThan(0.08);
  expect(Math.min(...strength.slice(0, 10_000))).toBeGreaterThan(0);
});

describe('a place that rings', () => {
  const knock = new Float64Array(200);
  knock[0] = 1;

  it.each([0.4, 1])('dies by sixty decibels in %d s', (lastsS) => {
    const tail = reverberated(knock, 1, { lastsS, loudDb: 0 }, RATE_HZ, diceNamed(`rings ${lastsS}`));
    const fallDb = levelDb(tail, 0.1, 0.2) - levelDb(tail, 0.1 + lastsS / 2, 0.2 + lastsS / 2);
    // Thirty in half of the time, and some more as the treble dies sooner.
    expect(fallDb).toBeGreaterThan(27);
    expect(fallDb).toBeLessThan(40);
  });

  it('is still until the shortest way is gone', () => {
    const tail = reverberated(knock, 0.5, { lastsS: 1, loudDb: 0 }, RATE_HZ, diceNamed('still'));
    // 0.433 of 35 ms, less three hundredths.
    expect(Math.max(...tail.slice(0, 0.0146 * RATE_HZ).map(Math.abs))).toBe(0);
  });
});

describe('a noise suppressor', () => {
  const noise = whiteNoise(5 * RATE_HZ, diceNamed('hiss')).map((x) => 0.01 * x);

  it('takes steady noise down to its floor and lets a tone pass', () => {
    const sound = noise.slice();
    addAt(sound, tone(3000, 1, 0.1), 3 * RATE_HZ);
    const passed = suppressed(sound, RATE_HZ);
    expect(levelDb(noise, 2, 3) - levelDb(passed, 2, 3)).toBeGreaterThan(12);
    expect(Math.abs(levelDb(sound, 3.2, 3.9) - levelDb(passed, 3.2, 3.9))).toBeLessThan(1);
  });

  it('eats the end of a tail', () => {
    const sound = noise.slice();
    addAt(
      sound,
      tone(3000, 1, 0.1).map((x, i) => x * Math.exp(-i / (0.1 * RATE_HZ))),
      3 * RATE_HZ,
    );
    const passed = suppressed(sound, RATE_HZ);
    const eatenDb = (fromS: number) =>
      levelDb(sound, fromS, fromS + 0.05) - levelDb(passed, fromS, fromS + 0.05);
    expect(eatenDb(3.02)).toBeLessThan(1);
    expect(eatenDb(3.3)).toBeGreaterThan(5);
  });

  it('delays nothing, and leaves silence silent', () => {
    const knock = new Float64Array(RATE_HZ);
    knock[20_000] = 1;
    const passed = suppressed(knock, RATE_HZ);
    expect(passed.reduce((best, x, i) => (Math.abs(x) > Math.abs(passed[best]!) ? i : best), 0)).toBe(20_000);
    expect(suppressed(new Float64Array(5000), RATE_HZ).every((x) => x === 0)).toBe(true);
  });
});

it('a compressor that pumps lets a buffet press a whistle down, and then swells back', () => {
  const scene = {
    ...sceneOf('unmet', 'field', 0),
    sampleRateHz: RATE_HZ,
    gainControl: 'pump' as const,
    backgroundDbFs: 0,
  };
  const sound = tone(3000, 3, 0.01);
  addAt(sound, tone(100, 0.5, 0.3), RATE_HZ);
  const samples = recorded(sound, scene);
  // The whistle alone: two corners about it leave of the buffet a five-hundredth.
  const whistle = banded(Float64Array.from(samples), 2500, 3600, RATE_HZ);
  // The buffet stands 20 dB over where the compressor begins and three quarters of that are taken: 15 dB, less what is not yet turned.
  const pressedDb = levelDb(whistle, 0.5, 0.9) - levelDb(whistle, 1.2, 1.45);
  expect(pressedDb).toBeGreaterThan(10);
  expect(Math.abs(levelDb(whistle, 2.7, 2.9) - levelDb(whistle, 0.5, 0.9))).toBeLessThan(1);
});

it('a phone hears a band of its own louder or softer, and what lies far from it as before', () => {
  const scene = {
    ...sceneOf('tune', 'fair', 0),
    sampleRateHz: RATE_HZ,
    gainControl: 'none' as const,
    backgroundDbFs: 0,
  };
  for (const db of [-8, 8]) {
    const heard = (hz: number, tint: (typeof scene)['tint']) =>
      levelDb(Float64Array.from(recorded(tone(hz, 1, 0.1), { ...scene, tint })), 0.2, 0.8);
    const changeDb = (hz: number) => heard(hz, [{ hz: 3000, db, q: 3 }]) - heard(hz, []);
    expect(changeDb(3000)).toBeCloseTo(db, 1);
    // Three octaves off a band-pass of quality 3 passes a twenty-fourth: it adds up to 0.5 dB at most.
    expect(Math.abs(changeDb(375))).toBeLessThan(0.5);
  }
});

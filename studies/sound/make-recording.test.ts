import { describe, expect, it } from 'vitest';
import { diceNamed } from '../careers/dice.ts';
import { whistleSnrDb } from './band-ratio.ts';
import { spectrumOf } from './fourier.ts';
import { makeRecording } from './make-recording.ts';
import { fromDb, toneAlong, whiteNoise } from './noise.ts';
import { sceneOf } from './sets.ts';
import { travelled } from './travel.ts';
import { blowBlast, drawWhistle } from './whistle-voice.ts';

const RATE_HZ = 48000;

/** Root mean square of the 3 ms about each sample: a whistle's period is a tenth of that. */
function heightAt(sound: Float64Array, timeS: number): number {
  const at = Math.round((timeS - 0.0015) * RATE_HZ);
  let sum = 0;
  for (let i = 0; i < 144; i++) sum += (sound[at + i] ?? 0) ** 2;
  return Math.sqrt(sum / 144);
}

describe('a blast', () => {
  it('stands at half height where the truth says that it begins and ends', () => {
    for (let seed = 0; seed < 8; seed++) {
      const dice = diceNamed(`blast ${seed}`);
      const voice = { ...drawWhistle('plain', 3000, dice), breathDb: -60 };
      const { sound, leadS } = blowBlast(voice, 0.5, RATE_HZ, dice);
      const full = heightAt(sound, leadS + 0.25);
      // The pressure wavers by 8 % of its spread, three of which are a quarter of the height.
      expect(Math.abs(heightAt(sound, leadS) / full - 0.5)).toBeLessThan(0.15);
      expect(Math.abs(heightAt(sound, leadS + 0.5) / full - 0.5)).toBeLessThan(0.15);
    }
  });

  it('is heard at its pitch', () => {
    const dice = diceNamed('pitch');
    const { sound } = blowBlast({ ...drawWhistle('plain', 4000, dice), driftShare: 0 }, 1, RATE_HZ, dice);
    const { re, im } = spectrumOf(sound);
    const power = Array.from({ length: re.length / 2 }, (_, k) => re[k]! ** 2 + im[k]! ** 2);
    const peakHz = (power.indexOf(Math.max(...power)) * RATE_HZ) / re.length;
    // The scoop lasts some hundredths of a second of one: what it leaves is under a bin or two of 0.7 Hz.
    expect(Math.abs(peakHz - 4000)).toBeLessThan(5);
  });
});

describe('a path', () => {
  const path = {
    distanceM: 30,
    air: { temperatureC: 15, relativeHumidityPct: 70 },
    trees: null,
    wallS: null,
    rings: null,
  };

  it('keeps the time of what comes straight', () => {
    const knock = new Float64Array(2000);
    knock[700] = 1;
    const { direct } = travelled(knock, RATE_HZ, path, diceNamed('path'));
    const peak = direct.reduce((best, x, i) => (Math.abs(x) > Math.abs(direct[best]!) ? i : best), 0);
    // Two samples are 0.04 ms; the mirror at 30 m is 0.35 ms late and could take the peak only if it were the louder.
    expect(Math.abs(peak - 700)).toBeLessThanOrEqual(2);
  });

  it('brings echoes only after the first tree', () => {
    const knock = new Float64Array(200);
    knock[0] = 1;
    const trees = { firstS: 0.1, overS: 0.2, loudestDb: -12 };
    const { echoes } = travelled(knock, RATE_HZ, { ...path, trees }, diceNamed('trees'));
    const early = echoes.subarray(0, Math.round(0.0999 * RATE_HZ));
    expect(Math.max(...early.map(Math.abs))).toBe(0);
    expect(Math.max(...echoes.map(Math.abs))).toBeGreaterThan(0);
  });
});

it('the in-band ratio of a tone in white noise is what theory says', () => {
  const samples = 2 * RATE_HZ;
  const tone = toneAlong(() => 3000, samples, RATE_HZ);
  const noise = whiteNoise(samples, diceNamed('white'));
  const found = whistleSnrDb(tone, 0, { startS: 0, endS: 2, pitchHz: 3000 }, noise, RATE_HZ);
  const bandHz = 3000 * (2 ** (1 / 6) - 2 ** (-1 / 6));
  const expected = 10 * Math.log10(0.5 / ((2 * bandHz) / RATE_HZ));
  // Some 900 independent cells of noise: 4 standard errors are 4 · 4.34 / √900 dB.
  expect(Math.abs(found - expected)).toBeLessThan(0.6);
  expect(fromDb(20)).toBeCloseTo(10, 12);
});

describe('a recording', () => {
  const scene = { ...sceneOf('held-out', 'field', 0), sampleRateHz: 16000, lastsS: 12 };

  it('is the same from the same scene and another from another', () => {
    const one = makeRecording(scene);
    const again = makeRecording(scene);
    const other = makeRecording({ ...scene, name: 'another' });
    expect(again.truth).toEqual(one.truth);
    expect(again.samples.every((x, i) => x === one.samples[i])).toBe(true);
    expect(other.samples.every((x, i) => x === one.samples[i])).toBe(false);
  });

  it('holds its truth in order of time, pips apart from long blasts, all finite and within full scale', () => {
    const { samples, truth } = makeRecording(scene);
    expect(samples.length).toBe(12 * 16000);
    expect(samples.every((x) => Number.isFinite(x) && Math.abs(x) <= 1)).toBe(true);
    expect(truth.whistles.length + truth.clicks.length).toBeGreaterThan(0);
    truth.whistles.forEach(({ startS, endS, kind }, k) => {
      expect(endS - startS >= 0.35).toBe(kind === 'long');
      expect(startS).toBeGreaterThan(truth.whistles[k - 1]?.endS ?? 0);
    });
  });

  it('leaves out a pattern whose whistle never spoke, and is finite then too', () => {
    const { samples, truth } = makeRecording({ ...sceneOf('rhythms', 'field', 137), sampleRateHz: 16000 });
    expect(samples.every((x) => Number.isFinite(x))).toBe(true);
    expect(truth.whistles.every(({ startS, endS }) => endS > startS)).toBe(true);
  });

  it('of nothing holds no blast and no click', () => {
    const nothing = { ...sceneOf('tune', 'nothing', 0), sampleRateHz: 16000, lastsS: 5 };
    expect(makeRecording(nothing).truth).toEqual({ whistles: [], clicks: [] });
  });
});

it('what is held out has whistles and birds that the set to tune on has not', () => {
  const tune = sceneOf('tune', 'field', 0);
  const heldOut = sceneOf('held-out', 'field', 0);
  expect(heldOut.whistles.filter((kind) => !tune.whistles.includes(kind))).toEqual(['twoTone', 'slide']);
  const kinds = new Set(tune.disturbances.map(({ kind }) => kind));
  expect(heldOut.disturbances.filter(({ kind }) => !kinds.has(kind)).map(({ kind }) => kind)).toEqual(
    expect.arrayContaining(['piping', 'crickets', 'squeal', 'whine']),
  );
});

it('whistles of the set apart come far from one another, and many a place is still', () => {
  const scenes = Array.from({ length: 40 }, (_, i) => sceneOf('apart', 'fair', i));
  const still = scenes.filter(({ disturbances }) => disturbances.every(({ perMinute }) => perMinute === 0));
  expect(still.length).toBeGreaterThan(4);
  expect(still.length).toBeLessThan(36);
  let gaps = 0;
  for (const scene of scenes.slice(0, 6)) {
    const { whistles } = makeRecording({ ...scene, sampleRateHz: 16000 }).truth;
    whistles.slice(1).forEach(({ startS }, k) => {
      const gapS = startS - whistles[k]!.endS;
      // Within a pattern no silence is above 0.7 s; between two there are two seconds or more.
      expect(gapS < 0.8 || gapS >= scene.betweenS[0] - 0.1).toBe(true);
      if (gapS > 1) gaps++;
    });
  }
  expect(gaps).toBeGreaterThan(1);
});

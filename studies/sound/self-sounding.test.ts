import { describe, expect, it } from 'vitest';
import { diceNamed } from '../careers/dice.ts';
import { spectrumOf } from './fourier.ts';
import { blowJet, drawJet } from './jet-whistle.ts';
import { selfSounding } from './self-sounding.ts';
import { sceneOf } from './sets.ts';
import { syrinxPhrase } from './syrinx.ts';

const RATE_HZ = 48_000;

describe('a tone that sounds by itself', () => {
  const drive = { samples: 24_000, pitchHz: () => 3000, quickness: 400, kicks: 0 };

  it('settles at the root of the pressure', () => {
    const { re, im } = selfSounding({ ...drive, over: () => 0.49 }, RATE_HZ, diceNamed('settled'));
    // z' = q (p - |z|^2) z rests where |z|^2 = p.
    expect(Math.hypot(re.at(-1)!, im.at(-1)!)).toBeCloseTo(0.7, 3);
  });

  it('grows from small at the rate that the pressure sets', () => {
    const { re, im } = selfSounding({ ...drive, over: () => 0.5 }, RATE_HZ, diceNamed('grown'));
    const at = (i: number) => Math.hypot(re[i]!, im[i]!);
    // While small, ln|z| rises by q p = 200 a second: 0.96 of an e-fold in 230 samples.
    expect(Math.log(at(459) / at(229))).toBeCloseTo((200 * 230) / RATE_HZ, 1);
  });

  it('dies below the threshold', () => {
    const { re } = selfSounding({ ...drive, over: () => -0.2 }, RATE_HZ, diceNamed('dead'));
    expect(Math.abs(re.at(-1)!)).toBeLessThan(1e-9);
  });
});

describe('a whistle whose tone sets in by itself', () => {
  it.each(['jet', 'cork', 'fingers', 'overblown'] as const)(
    '%s sounds at its pitch and about as long as it is blown',
    (kind) => {
      const dice = diceNamed(`jet ${kind}`);
      const voice = { ...drawJet(kind, 3000, dice), swells: 0, trembles: 0 };
      const { sound, leadS, lastsS } = blowJet(voice, 0.8, RATE_HZ, dice);
      // Half heights lie within the rise and the fall, some hundredths of a second each.
      expect(leadS).toBeLessThan(0.1);
      expect(Math.abs(lastsS - 0.8)).toBeLessThan(0.1);
      const from = Math.round((leadS + 0.2) * RATE_HZ);
      const { re, im } = spectrumOf(sound.slice(from, from + 16_384));
      const power = Array.from({ length: re.length / 2 }, (_, k) => re[k]! ** 2 + im[k]! ** 2);
      const peakHz = (power.indexOf(Math.max(...power)) * RATE_HZ) / re.length;
      // The pressure holds the pitch within the tenth power of a quarter of it: 3 %.
      expect(Math.abs(peakHz - 3000)).toBeLessThan(90);
    },
  );
});

it('a syrinx of two voices sounds two pitches that are no partials of one another', () => {
  const sound = syrinxPhrase('twoVoiced', RATE_HZ, diceNamed('two voices'));
  expect(sound.every(Number.isFinite)).toBe(true);
  expect(Math.max(...sound.map(Math.abs))).toBeGreaterThan(0.3);
});

it('what is unheard has birds, whistles, walls and gains that teach in no other set', () => {
  const scenes = (set: 'tune' | 'held-out' | 'unheard') =>
    Array.from({ length: 20 }, (_, k) => sceneOf(set, 'field', k));
  const known = [...scenes('tune'), ...scenes('held-out')];
  const birds = new Set(known.flatMap(({ disturbances }) => disturbances.map(({ kind }) => kind)));
  const gains = new Set(known.map(({ gainControl }) => gainControl));
  const unheard = scenes('unheard');
  const strange = unheard[0]!.disturbances.map(({ kind }) => kind).filter((kind) => !birds.has(kind));
  expect(strange).toEqual(
    expect.arrayContaining(['twoVoiced', 'jumper', 'flutter', 'pipes', 'bouncing', 'cry']),
  );
  expect(unheard.some(({ gainControl }) => !gains.has(gainControl))).toBe(true);
  expect(unheard.some(({ wallS }) => wallS !== null)).toBe(true);
  expect(known.every(({ wallS }) => wallS === null)).toBe(true);
});

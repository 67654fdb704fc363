import { describe, expect, it } from 'vitest';
import { diceNamed } from '../careers/dice.ts';
import { ABOUT_KINDS, aboutTheHandler } from './about-the-handler.ts';
import { drawPattern } from './pattern.ts';
import { type Condition, type SetName, sceneOf } from './sets.ts';
import { rubbed } from './stick-slip.ts';
import { YARD_KINDS, yardSound } from './yard-sounds.ts';

const RATE_HZ = 48_000;
const mostOf = (sound: Float64Array) => sound.reduce((most, x) => Math.max(most, Math.abs(x)), 0);

it.each([...YARD_KINDS, ...ABOUT_KINDS])('%s is a finite sound of about unit height', (kind) => {
  const made = (rateHz: number, seed: number) => {
    const dice = diceNamed(`${kind} ${seed}`);
    const yard = YARD_KINDS.find((one) => one === kind);
    return yard === undefined
      ? aboutTheHandler(kind as (typeof ABOUT_KINDS)[number], rateHz, dice)
      : yardSound(yard, rateHz, dice);
  };
  for (const rateHz of [16_000, RATE_HZ]) {
    for (let seed = 0; seed < 3; seed++) {
      const sound = made(rateHz, seed);
      expect(sound.every(Number.isFinite)).toBe(true);
      const most = mostOf(sound);
      expect(most).toBeGreaterThan(0.3);
      expect(most).toBeLessThan(3.5);
    }
  }
  const [one, again] = [made(16_000, 0), made(16_000, 0)];
  expect(again.length).toBe(one.length);
  expect(again.every((x, i) => x === one[i])).toBe(true);
});

it('what rubs squeals on only where friction falls with speed', () => {
  const part = { modes: [{ hz: 2000, q: 30, share: 1 }], losesWithin: 0.5, rough: 0 };
  const lateOverEarly = (grips: number) => {
    const sound = rubbed(
      { ...part, grips },
      1,
      () => 1,
      () => 1,
      RATE_HZ,
      diceNamed('rub'),
    );
    const most = (fromS: number, toS: number) => mostOf(sound.slice(fromS * RATE_HZ, toS * RATE_HZ));
    return most(0.6, 1) / most(0, 0.1);
  };
  // The first jerk rings for Q / (π f) = 5 ms and is gone; a squeal stands.
  expect(lateOverEarly(0)).toBeLessThan(1e-3);
  expect(lateOverEarly(1.5)).toBeGreaterThan(0.5);
});

describe('patterns of the work', () => {
  const scene = sceneOf('unmet', 'field', 0);
  const all = Array.from({ length: 2000 }, (_, k) => drawPattern(scene, diceNamed(`pattern ${k}`)));
  const share = (is: (pattern: (typeof all)[number]) => boolean) => all.filter(is).length / all.length;

  it('are a long blast alone most often, pips, trills, and a long blast with pips after', () => {
    // Four standard errors of a share of 2000 are less than 0.045.
    expect(Math.abs(share((one) => one.length === 1 && one[0]!.lastsS >= 0.4) - 0.42)).toBeLessThan(0.045);
    expect(Math.abs(share((one) => one.length > 1 && one[0]!.lastsS >= 0.4) - 0.08)).toBeLessThan(0.045);
    // Six to nine pips a second, give or take what strays.
    const isTrill = (one: (typeof all)[number]) =>
      one.length >= 4 && one.every(({ lastsS, gapS }) => lastsS + gapS < 0.2 && lastsS < 0.11);
    expect(Math.abs(share(isTrill) - 0.12)).toBeLessThan(0.045);
  });

  it('never have a long blast after pips', () => {
    expect(share((one) => one.slice(1).some(({ lastsS }) => lastsS >= 0.35))).toBe(0);
  });
});

describe('what is unmet', () => {
  const scenes = (set: SetName, condition: Condition = 'field') =>
    Array.from({ length: 30 }, (_, k) => sceneOf(set, condition, k));
  const others: SetName[] = ['tune', 'held-out', 'wide', 'unheard'];
  const known = others.flatMap((set) => scenes(set));
  const unmet = scenes('unmet');

  it('has no whistle, gust or place of another set, and gains that no other has', () => {
    const whistles = new Set(known.flatMap((scene) => scene.whistles));
    expect(unmet[0]!.whistles.filter((kind) => whistles.has(kind))).toEqual([]);
    expect(known.filter(({ gusts }) => gusts === 'cascade')).toEqual([]);
    expect(known.every(({ rings }) => rings === null)).toBe(true);
    expect(unmet.some(({ rings }) => rings !== null)).toBe(true);
    const gains = new Set(known.map(({ gainControl }) => gainControl));
    expect(new Set(unmet.map(({ gainControl }) => gainControl).filter((gain) => !gains.has(gain)))).toEqual(
      new Set(['pump', 'suppressor']),
    );
  });

  it('has no bird of another set, and else only what is common to all', () => {
    const kinds = new Set(known.flatMap(({ disturbances }) => disturbances.map(({ kind }) => kind)));
    const met = unmet.flatMap(({ disturbances }) => disturbances.map(({ kind }) => kind));
    expect(new Set(met.filter((kind) => kinds.has(kind)))).toEqual(
      new Set(['speech', 'barks', 'whine', 'shot', 'clank', 'shutter', 'zip', 'footsteps', 'rustle', 'car']),
    );
  });

  it('is as full as the set before it', () => {
    const [unheard] = scenes('unheard');
    const perRecording = (from: typeof unmet) =>
      from.reduce(
        (sum, { disturbances }) => sum + disturbances.reduce((all, one) => all + one.perMinute, 0),
        0,
      ) / from.length;
    // Sixteen kinds of other things in place of fifteen.
    expect(unmet.every(({ disturbances }) => disturbances.length <= unheard!.disturbances.length + 1)).toBe(
      true,
    );
    expect(perRecording(unmet) / perRecording(scenes('unheard'))).toBeLessThan(1.25);
    expect(perRecording(unmet) / perRecording(scenes('unheard'))).toBeGreaterThan(0.8);
  });
});

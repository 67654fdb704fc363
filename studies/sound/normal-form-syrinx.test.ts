import { describe, expect, it } from 'vitest';
import { diceNamed } from '../careers/dice.ts';
import { fieldBird } from './field-birds.ts';
import { FIELD_BIRDS, songOf } from './field-songs.ts';
import { spectrumOf } from './fourier.ts';
import { normalFormSong, type SongGesture, type Throat } from './normal-form-syrinx.ts';

const RATE_HZ = 48_000;
const mostOf = (sound: Float64Array) => sound.reduce((most, x) => Math.max(most, Math.abs(x)), 0);
const NOTE: SongGesture = {
  atS: 0.05,
  lastsS: 0.5,
  pitchHz: () => 2500,
  breath: (u) => Math.min(1, 12 * Math.min(u, 1 - u) - 0.3),
};

const throat = (tightness: number, push: number): Throat => ({
  quickness: (2 * Math.PI * 2500) / Math.sqrt(tightness),
  push,
  tracheaM: 0.02,
  returned: 0,
  beakHz: 5000,
  beakQ: 0.5,
  straight: 0.2,
  hoarse: 0.01,
});

/** Pitch of the middle of the note, and its second partial over the first, dB. */
function middleOf(sound: Float64Array) {
  const { re, im } = spectrumOf(
    sound.slice(9600, 9600 + 8192).map((x, i) => x * Math.sin((Math.PI * i) / 8192) ** 2),
  );
  const power = Array.from({ length: 4096 }, (_, k) => re[k]! ** 2 + im[k]! ** 2);
  const first = power.indexOf(Math.max(...power));
  const second = Math.max(...power.slice(Math.round(1.95 * first), Math.round(2.05 * first)));
  return { pitchHz: (first * RATE_HZ) / 8192, secondDb: 10 * Math.log10(second / power[first]!) };
}

describe('a syrinx', () => {
  const sing = (one: Throat, gesture = NOTE) =>
    normalFormSong([gesture], one, 0.7 * RATE_HZ, RATE_HZ, diceNamed('sung'));

  it('swings at the root of its tension where the breath just suffices', () => {
    // At a tenth of the way the swing is small, and the model's own pitch is the linear one; a bin is 6 Hz.
    expect(Math.abs(middleOf(sing(throat(1.5, 0.1))).pitchHz / 2500 - 1)).toBeLessThan(0.01);
  });

  it('is flatter and richer in partials the harder it is blown', () => {
    // Towards the end of what sounds the swing lingers at one side: it is slower and less like a sine.
    const [soft, hard] = [middleOf(sing(throat(0.3, 0.1))), middleOf(sing(throat(0.3, 0.35)))];
    expect(hard.secondDb).toBeGreaterThan(soft.secondDb + 4);
    expect(hard.pitchHz).toBeLessThan(0.95 * soft.pitchHz);
  });

  it('sounds while there is breath, and not before or after', () => {
    const sound = sing(throat(0.8, 0.3));
    const loudest = (fromS: number, toS: number) => mostOf(sound.slice(fromS * RATE_HZ, toS * RATE_HZ));
    expect(loudest(0.2, 0.4)).toBeGreaterThan(0.5);
    expect(loudest(0.01, 0.05)).toBeLessThan(0.1);
    expect(loudest(0.6, 0.7)).toBeLessThan(0.05);
  });
});

it.each(FIELD_BIRDS)('%s sings a finite song of unit height, the same from the same name', (kind) => {
  for (const rateHz of [16_000, 48_000]) {
    const song = fieldBird(kind, rateHz, diceNamed(kind));
    expect(song.every(Number.isFinite)).toBe(true);
    expect(mostOf(song)).toBeCloseTo(1, 6);
    const again = fieldBird(kind, rateHz, diceNamed(kind));
    expect(again.length).toBe(song.length);
    expect(again.every((x, i) => x === song[i])).toBe(true);
  }
});

it('some few in a hundred notes are level and near the pitch of whistles', () => {
  const isLevel = ({ lastsS, pitchHz }: SongGesture) => {
    const pitches = Array.from({ length: 9 }, (_, k) => pitchHz((k + 1) / 10));
    const [low, high] = [Math.min(...pitches), Math.max(...pitches)];
    return lastsS >= 0.07 && low > 2000 && high < 5600 && high / low < 1.03;
  };
  const notes = ['thrushlike' as const, ...FIELD_BIRDS].flatMap((kind, k) =>
    Array.from({ length: 100 }, (_, seed) => songOf(kind, diceNamed(`level ${k} ${seed}`))).flat(),
  );
  const share = notes.filter(isLevel).length / notes.length;
  // What a field has is our judgement: one in fifty to one in ten.
  expect(share).toBeGreaterThan(0.02);
  expect(share).toBeLessThan(0.1);
});

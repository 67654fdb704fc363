import { describe, expect, it } from 'vitest';
import {
  MADE_BLASTS,
  MADE_CLICKS_S,
  madeSound,
} from '../../../../packages/engine/src/sound/made-sound.fixture.ts';
import { createEar } from './ear.ts';

const RATE = 16_000;

function heardIn(sound: Float32Array, piece: number, rateHz = RATE) {
  const ear = createEar(rateHz, null);
  for (let at = 0; at < sound.length; at += piece) ear.push(sound.subarray(at, at + piece));
  return ear.finish(false);
}

describe('an ear', () => {
  const sound = madeSound(RATE);

  it('hears what was made, however the sound is cut', () => {
    const heard = heardIn(sound, 4096);
    expect(heard.whistles.map(({ kind }) => kind)).toEqual(MADE_BLASTS.map(({ kind }) => kind));
    for (const [n, { startS }] of heard.whistles.entries())
      expect(Math.abs(startS - MADE_BLASTS[n]!.startS)).toBeLessThan(0.05);
    expect(heard.clicks.map(({ timeS }) => Math.round(10 * timeS) / 10)).toEqual([...MADE_CLICKS_S]);
    expect(heard).toMatchObject({ lengthS: 12, notes: [] });
    expect(heardIn(sound, 1000)).toEqual(heard);
  });

  it('tells of silence, of what is cut off, of a low rate, and of a file that breaks off', () => {
    expect(heardIn(new Float32Array(RATE), 4096).notes).toEqual(['silent']);
    expect(heardIn(new Float32Array(RATE).fill(1), 4096).notes).toEqual(['cut-off']);
    expect(heardIn(sound.subarray(0, 8000), 4096, 8000).notes).toEqual(['low-rate']);
    const ear = createEar(RATE, null);
    ear.push(sound.subarray(0, RATE));
    expect(ear.isSilent).toBe(false);
    expect(ear.finish(true).notes).toEqual(['breaks-off']);
  });
});

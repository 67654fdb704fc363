import { biquad, filtered } from './filters.ts';
import { fromDb, scaled } from './noise.ts';
import type { Scene } from './scene.ts';

/** How a phone's automatic gain follows: up with the sound in `attackS`, down in `releaseS`, and by which power of the level it turns down. */
const GAIN_CONTROLS = {
  slow: { attackS: 0.4, releaseS: 3, power: 0.75 },
  fast: { attackS: 0.012, releaseS: 0.3, power: 0.6 },
} as const;

/** The level, dB full scale, that gain control aims at, and the most that it turns up. */
const AIM_DB_FS = -18;
const MOST_GAIN_DB = 30;

/** The pressure at the microphone as a phone writes it: a high-pass, gain control, clipping at full scale, 16 bits. */
export function recorded(pressure: Float64Array, scene: Scene): Float32Array {
  const { sampleRateHz, gainControl } = scene;
  const sound = scaled(pressure, fromDb(scene.backgroundDbFs));
  filtered(sound, biquad('highpass', 70, Math.SQRT1_2, sampleRateHz));
  if (gainControl !== 'none') {
    const { attackS, releaseS, power } = GAIN_CONTROLS[gainControl];
    const up = 1 - Math.exp(-1 / (attackS * sampleRateHz));
    const down = 1 - Math.exp(-1 / (releaseS * sampleRateHz));
    let level = fromDb(AIM_DB_FS);
    const most = fromDb(MOST_GAIN_DB);
    let turn = 1;
    for (let i = 0; i < sound.length; i++) {
      const now = Math.abs(sound[i]!);
      level += (now > level ? up : down) * (now - level);
      // Sixteen samples are a thousandth of a second or less: the level hardly moves.
      if (i % 16 === 0) turn = Math.min(most, (fromDb(AIM_DB_FS) / Math.max(level, 1e-9)) ** power);
      sound[i] = sound[i]! * turn;
    }
  }
  return Float32Array.from(sound, (x) => Math.round(Math.max(-32768, Math.min(32767, 32768 * x))) / 32768);
}

import { biquad, filtered } from './filters.ts';
import { fromDb, rootMeanSquare, scaled } from './noise.ts';
import { suppressed } from './noise-suppressor.ts';
import type { Scene } from './scene.ts';

/** How a phone's automatic gain follows: up with the sound in `attackS`, down in `releaseS`, and by which power of the level it turns down. */
const GAIN_CONTROLS = {
  slow: { attackS: 0.4, releaseS: 3, power: 0.75 },
  fast: { attackS: 0.012, releaseS: 0.3, power: 0.6 },
  limiter: { attackS: 0.001, releaseS: 0.12, power: 0.8 },
} as const;

/** A gate is shut to this share; it opens in some milliseconds when the sound passes its usual height twofold, and shuts again slowly. */
const SHUT = 0.1;

function gated(sound: Float64Array, sampleRateHz: number): void {
  const usual = rootMeanSquare(sound);
  let level = 0;
  let open = 1;
  for (let i = 0; i < sound.length; i++) {
    level = Math.max(Math.abs(sound[i]!), level * Math.exp(-1 / (0.05 * sampleRateHz)));
    const wanted = level > 0.8 * usual ? 1 : SHUT;
    open += (wanted - open) / ((wanted > open ? 0.004 : 0.25) * sampleRateHz);
    sound[i] = sound[i]! * open;
  }
}

/** A compressor as films and voice memos have it: above `overDb` full scale a quarter of each decibel stays, and all is made up by a fixed gain. */
const PUMP = { overDb: -34, stays: 0.25, makeUpDb: 14, meanS: 0.008, turnsDownS: 0.006, turnsUpS: 0.25 };

/** The loudest sets the gain of everything: a buffet below 100 Hz presses whistles down, and the background swells back after it. */
function pumped(sound: Float64Array, sampleRateHz: number): void {
  const { overDb, stays, makeUpDb, meanS, turnsDownS, turnsUpS } = PUMP;
  let power = 1e-9;
  let downDb = 0;
  for (let i = 0; i < sound.length; i++) {
    power += (sound[i]! ** 2 - power) / (meanS * sampleRateHz);
    const wantedDb = (1 - stays) * Math.max(0, 10 * Math.log10(power + 1e-12) - overDb);
    downDb += (wantedDb - downDb) / ((wantedDb > downDb ? turnsDownS : turnsUpS) * sampleRateHz);
    sound[i] = sound[i]! * fromDb(makeUpDb - downDb);
  }
}

/** The level, dB full scale, that gain control aims at, and the most that it turns up. */
const AIM_DB_FS = -18;
const MOST_GAIN_DB = 30;

/** The pressure at the microphone as a phone writes it: a high-pass, gain control, clipping at full scale, 16 bits. */
export function recorded(pressure: Float64Array, scene: Scene): Float32Array {
  const { sampleRateHz, gainControl } = scene;
  let sound = scaled(pressure, fromDb(scene.backgroundDbFs));
  filtered(sound, biquad('highpass', 70, Math.SQRT1_2, sampleRateHz));
  for (const { hz, db, q } of scene.tint) {
    const band = filtered(sound.slice(), biquad('bandpass', hz, q, sampleRateHz));
    for (let i = 0; i < sound.length; i++) sound[i] = sound[i]! + (fromDb(db) - 1) * band[i]!;
  }
  if (gainControl === 'gate') gated(sound, sampleRateHz);
  else if (gainControl === 'pump') pumped(sound, sampleRateHz);
  else if (gainControl === 'suppressor') sound = suppressed(sound, sampleRateHz);
  else if (gainControl !== 'none') {
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

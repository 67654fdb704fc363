import type { Dice } from '../careers/dice.ts';
import { biquad, filtered } from './filters.ts';
import { addAt, bandNoise, fromDb, shaped, swell, wander } from './noise.ts';

/** First three formants of some vowels, Hz, rounded from the averages of Peterson and Barney 1952. */
const VOWELS = [
  [270, 2290, 3010],
  [530, 1840, 2480],
  [730, 1090, 2440],
  [570, 840, 2410],
  [300, 870, 2240],
  [660, 1720, 2410],
] as const;

/** The glottis: a saw whose corners are rounded, at a pitch that falls through the phrase, with a little jitter. */
function voiced(
  samples: number,
  pitchHz: number,
  formants: readonly number[],
  sampleRateHz: number,
  dice: Dice,
) {
  const jitter = wander(samples, 0.05, sampleRateHz, dice);
  let turn = 0;
  const glottis = Float64Array.from({ length: samples }, (_, i) => {
    turn += (pitchHz * (1 - (0.1 * i) / samples) * (1 + 0.015 * jitter[i]!)) / sampleRateHz;
    const u = turn % 1;
    return u < 0.6 ? u / 0.6 : 1 - (u - 0.6) / 0.4;
  });
  filtered(glottis, biquad('highpass', 70, 0.7, sampleRateHz));
  const mouth = new Float64Array(samples);
  formants.forEach((hz, k) => {
    addAt(
      mouth,
      filtered(glottis.slice(), biquad('bandpass', hz, hz / (60 + 40 * k), sampleRateHz)).map(
        (x) => x * (1.5 + 2 * k),
      ),
      0,
    );
  });
  const shape = swell(samples, 0.02, 0.04, sampleRateHz);
  return shaped(mouth, shape);
}

/** A phrase of some syllables as a handler speaks to a dog: vowels, hisses (s, sh, f) and stops; about unit amplitude at its loudest. */
export function speechPhrase(sampleRateHz: number, dice: Dice): Float64Array {
  const syllables = 2 + dice.below(9);
  const pitchHz = dice.between(90, 260);
  const tract = dice.between(0.92, 1.2);
  const sound = new Float64Array(Math.round(syllables * 0.5 * sampleRateHz));
  let atS = 0.02;
  for (let k = 0; k < syllables; k++) {
    const at = () => Math.round(atS * sampleRateHz);
    if (dice.chance(0.45)) {
      const lastsS = dice.between(0.05, 0.18);
      const low = dice.pick([1500, 2500, 3800]);
      const hiss = bandNoise(Math.round(lastsS * sampleRateHz), low, 2.2 * low, sampleRateHz, dice);
      const shape = swell(hiss.length, 0.02, 0.03, sampleRateHz);
      const gain = fromDb(dice.between(-20, -8));
      addAt(sound, shaped(hiss, shape, gain), at());
      atS += 0.9 * lastsS;
    } else if (dice.chance(0.5)) {
      const burst = bandNoise(Math.round(0.012 * sampleRateHz), 800, 5000, sampleRateHz, dice);
      const gain = fromDb(dice.between(-18, -8));
      addAt(
        sound,
        burst.map((x, i) => gain * x * Math.exp(-i / (0.004 * sampleRateHz))),
        at(),
      );
      atS += dice.between(0.01, 0.05);
    }
    const vowelS = dice.between(0.07, 0.25);
    const formants = dice.pick(VOWELS).map((hz) => hz * tract);
    addAt(
      sound,
      voiced(
        Math.round(vowelS * sampleRateHz),
        pitchHz * dice.between(0.85, 1.2),
        formants,
        sampleRateHz,
        dice,
      ),
      at(),
    );
    atS += vowelS + (dice.chance(0.2) ? 0.1 : 0);
  }
  return sound;
}

import { bandHz } from './background.ts';
import { spectrumOf } from './fourier.ts';

/** Mean power between two frequencies of the samples from `from` to `to`, seen through a Hann window or as they are. */
function bandPower(
  sound: Float64Array,
  [from, to]: readonly [number, number],
  [lowHz, highHz]: readonly [number, number],
  sampleRateHz: number,
  window: 'hann' | 'none',
): number {
  const first = Math.max(0, Math.round(from));
  const part = sound.slice(first, Math.max(first + 2, Math.min(sound.length, Math.round(to))));
  let weight = part.length;
  if (window === 'hann') {
    weight = 0;
    for (let i = 0; i < part.length; i++) {
      const w = Math.sin((Math.PI * (i + 0.5)) / part.length) ** 2;
      weight += w * w;
      part[i] = part[i]! * w;
    }
  }
  const { re, im } = spectrumOf(part);
  let sum = 0;
  for (let k = Math.ceil((lowHz * re.length) / sampleRateHz); k <= (highHz * re.length) / sampleRateHz; k++) {
    sum += re[k]! ** 2 + im[k]! ** 2;
  }
  return (2 * sum) / (re.length * weight);
}

const db = (ratio: number) => 10 * Math.log10(Math.max(ratio, 1e-30));

/**
 * In-band signal to noise ratio of a blast, dB: the power of its direct sound (with the ground's mirror, without the trees' echoes) over the
 * power of all else that is heard meanwhile, both within a third of an octave about the blast's pitch and over the blast's own time, each
 * through a Hann window of that length. `direct` begins at the sample `at` of `rest`. A third of an octave is 0.23 of the pitch: about 700 Hz
 * at 3 kHz, so 9 dB here is about 20 dB in a bin of 50 Hz.
 */
export function whistleSnrDb(
  direct: Float64Array,
  at: number,
  { startS, endS, pitchHz }: { startS: number; endS: number; pitchHz: number },
  rest: Float64Array,
  sampleRateHz: number,
): number {
  const [from, to] = [startS * sampleRateHz, endS * sampleRateHz];
  const band = [pitchHz * 2 ** (-1 / 6), pitchHz * 2 ** (1 / 6)] as const;
  const signal = bandPower(direct, [from - at, to - at], band, sampleRateHz, 'hann');
  return db(signal / bandPower(rest, [from, to], band, sampleRateHz, 'hann'));
}

/**
 * In-band signal to noise ratio of a click, dB: the mean power of the press in the 8 ms from it over the mean power of all else from 20 ms
 * before to 30 ms after it, both within 1.5 to 8 kHz (or to 0.45 of the sample rate).
 */
export function clickSnrDb(
  direct: Float64Array,
  at: number,
  rest: Float64Array,
  sampleRateHz: number,
): number {
  const band = bandHz(sampleRateHz);
  const signal = bandPower(direct, [0, 0.008 * sampleRateHz], band, sampleRateHz, 'none');
  const around = [at - 0.02 * sampleRateHz, at + 0.03 * sampleRateHz] as const;
  return db(signal / bandPower(rest, around, band, sampleRateHz, 'hann'));
}

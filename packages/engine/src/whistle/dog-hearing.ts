import { finiteBetween } from '../quantity/index.ts';

/**
 * What a dog just hears in quiet, averages of four dogs (Heffner1983, table): pitch in hertz, level in dB SPL. Single dogs
 * differ from it by up to 25 dB at one pitch, and old dogs hear less.
 */
const AUDIOGRAM: readonly (readonly [pitchHz: number, levelDbSpl: number])[] = [
  [50, 72],
  [62, 62],
  [125, 44],
  [250, 28],
  [500, 20],
  [1000, 14],
  [2000, 9],
  [4000, 4],
  [8000, -1],
  [16_000, 6],
  [32_000, 18],
  [40_000, 41],
  [45_000, 61],
  [50_000, 70],
];

export const HEARD_HZ = { low: 50, high: 50_000 } as const;

/**
 * The dog's threshold in quiet at a pitch, dB SPL: Heffner1983 between its points straight in the logarithm of pitch.
 * @throws RangeError outside 50 Hz to 50 kHz
 */
export function dogThresholdDbSpl(pitchHz: number): number {
  finiteBetween('pitchHz', pitchHz, HEARD_HZ.low, HEARD_HZ.high);
  const above = AUDIOGRAM.findIndex(([hz]) => hz >= pitchHz);
  const [highHz, highDb] = AUDIOGRAM[above]!;
  const [lowHz, lowDb] = AUDIOGRAM[Math.max(0, above - 1)]!;
  if (highHz === lowHz) return highDb;
  return lowDb + ((highDb - lowDb) * Math.log(pitchHz / lowHz)) / Math.log(highHz / lowHz);
}

import { seededRandom } from '../numeric/index.ts';

/** A tone with raised-cosine ends, its half heights at `startS` and `endS`, added into a sound. */
export function addTone(
  into: Float32Array,
  sampleRateHz: number,
  { startS, endS, pitchHz, level = 0.2 }: { startS: number; endS: number; pitchHz: number; level?: number },
): void {
  const slopeS = 0.016;
  const from = Math.floor((startS - slopeS / 2) * sampleRateHz);
  const rise = (s: number) => (s <= 0 ? 0 : s >= slopeS ? 1 : 0.5 - 0.5 * Math.cos((Math.PI * s) / slopeS));
  for (let i = Math.max(0, from); i < (endS + slopeS) * sampleRateHz && i < into.length; i++) {
    const atS = i / sampleRateHz;
    const shape = rise(atS - startS + slopeS / 2) * rise(endS + slopeS / 2 - atS);
    into[i] = into[i]! + level * shape * Math.sin(2 * Math.PI * pitchHz * atS);
  }
}

/** A press and its release: four modes that die in 2.5 ms, twice. */
export function addClick(into: Float32Array, sampleRateHz: number, timeS: number, level = 0.3): void {
  for (const [lateS, gain] of [
    [0, 1],
    [0.0015, 0.7],
    [0.14, 0.6],
    [0.1415, 0.42],
  ] as const) {
    const at = Math.round((timeS + lateS) * sampleRateHz);
    for (let i = 0; i < 0.03 * sampleRateHz && at + i < into.length; i++) {
      const s = i / sampleRateHz;
      const ring = [2600, 3700, 4900, 6300].reduce((sum, hz) => sum + Math.sin(2 * Math.PI * hz * s), 0);
      into[at + i] = into[at + i]! + 0.4 * level * gain * ring * Math.exp(-s / 0.0025);
    }
  }
}

/** Twelve seconds of quiet noise with two long blasts, three pips and two clicks. */
export function madeSound(sampleRateHz: number, lateS = 0): Float32Array {
  const random = seededRandom(5);
  const sound = new Float32Array(Math.round(12 * sampleRateHz));
  for (let i = 0; i < sound.length; i++) sound[i] = 0.002 * random.normal();
  for (const blast of MADE_BLASTS)
    addTone(sound, sampleRateHz, { ...blast, startS: blast.startS + lateS, endS: blast.endS + lateS });
  for (const timeS of MADE_CLICKS_S) addClick(sound, sampleRateHz, timeS + lateS);
  return sound;
}

export const MADE_BLASTS = [
  { startS: 1, endS: 1.9, pitchHz: 3200, kind: 'long' },
  { startS: 4, endS: 4.18, pitchHz: 3200, kind: 'pip' },
  { startS: 4.4, endS: 4.58, pitchHz: 3200, kind: 'pip' },
  { startS: 4.8, endS: 4.98, pitchHz: 3200, kind: 'pip' },
  { startS: 8, endS: 8.6, pitchHz: 3200, kind: 'long' },
] as const;
export const MADE_CLICKS_S = [3, 6.5] as const;

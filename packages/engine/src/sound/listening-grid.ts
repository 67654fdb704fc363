/** Every sound is brought to this rate first: pitches up to 7.2 kHz are kept. */
export const WORK_RATE_HZ = 16_000;

/** Samples of one frame (16 ms) and from one frame to the next (4 ms); frame f is centred on sample f * HOP. */
export const FRAME = 256;
export const HOP = 64;
export const HOP_S = HOP / WORK_RATE_HZ;

export const BIN_HZ = WORK_RATE_HZ / FRAME;
export const BINS = FRAME / 2;

/** Whistles and clicks are looked for in this band; a recording of a lower rate ends it at 0.45 of its rate. */
export const BAND_HZ = [1500, 7200] as const;
export const bandTopHz = (sampleRateHz: number) => Math.min(BAND_HZ[1], 0.45 * sampleRateHz);

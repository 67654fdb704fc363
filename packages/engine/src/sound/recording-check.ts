/** Full scale, less the last bit of 16. */
const FULL = 1 - 2 / 32_768;
const CLIPPED_SHARE = 1e-3;

/** What a recording is like as a whole. */
export interface RecordingCheck {
  /** Every sample is nought. */
  isSilent: boolean;
  /** Share of the samples at full scale; from a thousandth up the sound is cut off at its loudest. */
  fullShare: number;
  isClipped: boolean;
}

/** Looks at the samples of a recording as they come: whether there is anything, and whether it is cut off. */
export function createRecordingCheck() {
  let samples = 0;
  let full = 0;
  let isSilent = true;
  return {
    take(part: Float32Array): void {
      samples += part.length;
      for (const sample of part) {
        if (sample !== 0) isSilent = false;
        if (sample >= FULL || sample <= -FULL) full++;
      }
    },
    result(): RecordingCheck {
      const fullShare = samples === 0 ? 0 : full / samples;
      return { isSilent, fullShare, isClipped: fullShare >= CLIPPED_SHARE };
    },
  };
}

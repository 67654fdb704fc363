/** Half of the filter's length, in samples of the lower rate. */
const REACH = 24;
/** The middle of its edge, as a share of the lower rate: from about 0.42 to 0.49. */
const EDGE = 0.455;

/** How many steps of a model make one sample of the recording, where it wants `leastHz` steps a second. */
export const stepsASample = (sampleRateHz: number, leastHz: number) => Math.ceil(leastHz / sampleRateHz);

/**
 * Every `steps`-th sample of a sound, after what the lower rate cannot hold was taken away by a sinc under a Hann window. The filter is even, so
 * it delays nothing and every time stays where it was.
 */
export function thinned(fine: Float64Array, steps: number): Float64Array {
  if (steps === 1) return fine;
  const half = REACH * steps;
  const taps = Float64Array.from({ length: 2 * half + 1 }, (_, k) => {
    const x = (2 * Math.PI * EDGE * (k - half)) / steps;
    return (
      (Math.cos((0.5 * Math.PI * (k - half)) / (half + 1)) ** 2 * (x === 0 ? 1 : Math.sin(x) / x)) / steps
    );
  });
  const sum = taps.reduce((all, tap) => all + tap, 0);
  return Float64Array.from({ length: Math.ceil(fine.length / steps) }, (_, i) => {
    const from = i * steps - half;
    let kept = 0;
    const last = Math.min(taps.length, fine.length - from);
    for (let k = Math.max(0, -from); k < last; k++) kept += taps[k]! * fine[from + k]!;
    return kept / sum;
  });
}

import { createListener, type OwnWhistle } from '@sedgeline/engine/sound';
import type { Detector } from '../sound/recording.ts';

/** The engine's detector as the judge calls it: the samples in pieces, as from a file. */
export const engineEarOf = (own: OwnWhistle | null) => (samples: Float32Array, sampleRateHz: number) => {
  const listener = createListener({ sampleRateHz, own });
  const parts = [];
  for (let at = 0; at < samples.length; at += 16_384)
    parts.push(listener.push(samples.subarray(at, at + 16_384)));
  parts.push(listener.finish());
  return {
    whistles: parts.flatMap(({ whistles }) => whistles),
    clicks: parts.flatMap(({ clicks }) => clicks),
  };
};

export const engineEar = engineEarOf(null);

/** The ear where only blasts of these log odds and above are said. */
export const stricterEar =
  (leastLogOdds: number): Detector =>
  (samples, sampleRateHz) => {
    const { whistles, clicks } = engineEar(samples, sampleRateHz);
    return {
      whistles: whistles.filter(({ sureness }) => Math.log(sureness / (1 - sureness)) >= leastLogOdds),
      clicks,
    };
  };

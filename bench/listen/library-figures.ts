import Meyda from 'meyda';

/**
 * What a general library of sound figures costs: Meyda's loudness, flatness, centre and zero crossings of frames of 2,048 samples, 256 apart. No
 * tone is followed and nothing is said of it.
 */
export function createLibraryFigures(sampleRateHz: number) {
  const size = 2048;
  const hop = 256;
  Object.assign(Meyda, { bufferSize: size, sampleRate: sampleRateHz, windowingFunction: 'hanning' });
  const held = new Float32Array(size);
  let filled = 0;
  let flattest = 1;
  return {
    push(samples: Float32Array): void {
      for (const sample of samples) {
        held[filled++] = sample;
        if (filled < size) continue;
        const figures = Meyda.extract(['rms', 'spectralFlatness', 'spectralCentroid', 'zcr'], held);
        flattest = Math.min(flattest, figures?.spectralFlatness ?? 1);
        held.copyWithin(0, hop);
        filled = size - hop;
      }
    },
    flattest: () => flattest,
  };
}

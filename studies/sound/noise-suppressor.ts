import { transform } from './fourier.ts';
import { fromDb } from './noise.ts';

/** Frames of a fiftieth of a second, half over one another, as a phone's voice chain has them. */
const FRAME_S = 0.021;
/** Bands: this wide at the bottom, a sixth of their middle further up. */
const NARROWEST_HZ = 150;
const WIDTH_SHARE = 1 / 6;
/** A band is never turned down further. */
const FLOOR = fromDb(-15);
/** The noise of a band is believed to rise by so much a second at most, and to fall at once. */
const NOISE_RISES_DB_PER_S = 4;
/** How much of the last frame's gain stays when a sound comes, and when it goes. */
const OPENS = 0.2;
const SHUTS = 0.75;
/** What the least of a band's power lies below its mean: it is believed to be so much more. */
const LEAST_TO_MEAN = 2.5;

/** First bins of the bands, and the end. */
function bandEdges(bins: number, binHz: number): number[] {
  const edges = [0];
  while (edges.at(-1)! < bins) {
    const low = edges.at(-1)!;
    edges.push(
      Math.min(
        bins,
        low + Math.max(1, Math.round(Math.max(NARROWEST_HZ, WIDTH_SHARE * low * binHz) / binHz)),
      ),
    );
  }
  return edges;
}

/**
 * A phone's noise suppressor, of the common sort (Wiener's gain by bands over a noise that is tracked by its minimum; our own plain one): what
 * stands out of a band passes, what does not is turned down, tails of sounds are eaten as they near the noise, and a tone that is held for long
 * comes to be taken for noise. Delays nothing: frames under a sine window each way add up to what they were.
 */
export function suppressed(sound: Float64Array, sampleRateHz: number): Float64Array {
  const size = 2 ** Math.round(Math.log2(FRAME_S * sampleRateHz));
  const hop = size / 2;
  const edges = bandEdges(size / 2 + 1, sampleRateHz / size);
  const noise = edges.slice(1).map(() => Number.POSITIVE_INFINITY);
  const gains = noise.map(() => 1);
  const smooth = noise.map(() => 0);
  const rises = 10 ** ((NOISE_RISES_DB_PER_S * hop) / sampleRateHz / 10);
  const window = Float64Array.from({ length: size }, (_, i) => Math.sin((Math.PI * (i + 0.5)) / size));
  const out = new Float64Array(sound.length);
  for (let at = -hop; at < sound.length; at += hop) {
    const re = window.map((w, i) => w * (sound[at + i] ?? 0));
    const im = new Float64Array(size);
    transform(re, im, 'forward');
    noise.forEach((least, b) => {
      const [from, to] = [edges[b]!, edges[b + 1]!];
      let power = 1e-12;
      for (let k = from; k < to; k++) power += (re[k]! ** 2 + im[k]! ** 2) / (to - from);
      // Half a dozen frames' mean, or the least would be chance's.
      smooth[b] = smooth[b] === 0 ? power : 0.85 * smooth[b]! + 0.15 * power;
      noise[b] = Math.min(smooth[b]!, least * rises);
      const over = Math.max(0, 1 - (LEAST_TO_MEAN * noise[b]!) / power);
      const wanted = Math.max(FLOOR, over);
      const stays = wanted > gains[b]! ? OPENS : SHUTS;
      const gain = stays * gains[b]! + (1 - stays) * wanted;
      gains[b] = gain;
      for (let k = from; k < to; k++) {
        for (const bin of k === 0 || k === size / 2 ? [k] : [k, size - k]) {
          re[bin] = re[bin]! * gain;
          im[bin] = im[bin]! * gain;
        }
      }
    });
    transform(re, im, 'backward');
    const last = Math.min(size, sound.length - at);
    for (let i = Math.max(0, -at); i < last; i++) out[at + i] = out[at + i]! + window[i]! * re[i]!;
  }
  return out;
}

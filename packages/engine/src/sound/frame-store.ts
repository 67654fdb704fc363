import { BAND_HZ, BIN_HZ, BINS, FRAME, HOP } from './listening-grid.ts';
import { createPowerSpectrum } from './power-spectrum.ts';

/** What is kept to look back on: 16.4 s, longer than any blast and the wait for its verdict. */
const KEPT_SAMPLES = 2 ** 18;
const KEPT_FRAMES = KEPT_SAMPLES / HOP;

/** The floor is the median of 24 bins (1.5 kHz), at every eighth bin of the band. */
const FLOOR_STEP = 8;
const FIRST_BIN = BAND_HZ[0] / BIN_HZ;
const FLOORS = 12;
const BLOCKS = FLOORS + 2;
/** A frame's floor is taken no lower than this share of its loudest bin: sidelobes and the holes that coders leave are no silence. */
const FLOOR_UNDER_LOUDEST = 10 ** -6;
/** Far under the last bit of any recording: keeps digital silence out of the logarithms. */
const NOUGHT = 1e-22;

/** Median of three sorted blocks of eight that follow one another from `at`: the mean of the twelfth and the thirteenth. */
function medianOfThree(sorted: Float32Array, at: number): number {
  let [a, b, c] = [at, at + 8, at + 16];
  const [aEnd, bEnd, cEnd] = [at + 8, at + 16, at + 24];
  let twelfth = 0;
  for (let n = 1; ; n++) {
    const x = a < aEnd ? sorted[a]! : Number.POSITIVE_INFINITY;
    const y = b < bEnd ? sorted[b]! : Number.POSITIVE_INFINITY;
    const z = c < cEnd ? sorted[c]! : Number.POSITIVE_INFINITY;
    const least = Math.min(x, y, z);
    if (n === 12) twelfth = least;
    if (n === 13) return 0.5 * (twelfth + least);
    if (least === x) a++;
    else if (least === y) b++;
    else c++;
  }
}

/**
 * The last seconds of a sound at the working rate with the spectrum of each frame and the noise about each pitch: the running median over
 * frequency, which a tone does not move and a gust, a gain control or a rustle does. Samples before the first are silence.
 */
export class FrameStore {
  private readonly samples = new Float32Array(KEPT_SAMPLES);
  private readonly powers = new Float32Array(KEPT_FRAMES * BINS);
  private readonly floors = new Float32Array(KEPT_FRAMES * FLOORS);
  private readonly frame = new Float32Array(FRAME);
  private readonly sorted = new Float32Array(8 * BLOCKS);
  private readonly powerOf = createPowerSpectrum(FRAME);
  private readonly lastBin: number;
  /** Samples taken and frames made so far. */
  taken = 0;
  made = 0;

  constructor(topHz: number) {
    this.lastBin = Math.floor(topHz / BIN_HZ);
  }

  get topBin(): number {
    return this.lastBin;
  }

  take(sample: number): boolean {
    this.samples[this.taken % KEPT_SAMPLES] = sample;
    this.taken++;
    if (this.taken !== this.made * HOP + FRAME / 2) return false;
    this.make();
    return true;
  }

  private make(): void {
    const start = this.made * HOP - FRAME / 2;
    for (let i = 0; i < FRAME; i++) this.frame[i] = this.sampleAt(start + i);
    const row = this.made % KEPT_FRAMES;
    this.powerOf(this.frame, 0, this.powers, row * BINS);
    this.findFloors(row);
    this.made++;
  }

  private findFloors(row: number): void {
    const { powers, sorted, lastBin } = this;
    const base = row * BINS;
    let loudest = 0;
    for (let bin = FIRST_BIN; bin <= lastBin; bin++) loudest = Math.max(loudest, powers[base + bin]!);
    const least = Math.max(NOUGHT, loudest * FLOOR_UNDER_LOUDEST);
    // Blocks of eight bins are sorted once; each median of 24 is found by walking up three of them.
    for (let block = 0; block < BLOCKS; block++)
      this.sortBlock(base, Math.min(FIRST_BIN - 12 + 8 * block, lastBin - 7), 8 * block);
    for (let node = 0; node < FLOORS; node++) {
      this.floors[row * FLOORS + node] = Math.max(least, medianOfThree(sorted, 8 * node));
    }
  }

  private sortBlock(base: number, fromBin: number, at: number): void {
    const { powers, sorted } = this;
    for (let i = 0; i < 8; i++) {
      const power = powers[base + fromBin + i]!;
      let place = at + i;
      for (; place > at && sorted[place - 1]! > power; place--) sorted[place] = sorted[place - 1]!;
      sorted[place] = power;
    }
  }

  sampleAt(i: number): number {
    return i < 0 || i >= this.taken || i < this.taken - KEPT_SAMPLES ? 0 : this.samples[i % KEPT_SAMPLES]!;
  }

  /** The earliest frame that is still kept. */
  get earliest(): number {
    return Math.max(0, this.made - KEPT_FRAMES);
  }

  powerAt(frame: number, bin: number): number {
    return this.powers[(frame % KEPT_FRAMES) * BINS + bin]!;
  }

  /** Median of noise power about a bin. */
  floorAt(frame: number, bin: number): number {
    const node = Math.max(0, Math.min(FLOORS - 1, Math.round((bin - FIRST_BIN) / FLOOR_STEP)));
    return this.floors[(frame % KEPT_FRAMES) * FLOORS + node]!;
  }

  /** Place of the top of a parabola through the logarithms of a bin and its neighbours, in bins [SmithSerra1987]. */
  peakBin(frame: number, bin: number): number {
    const below = Math.log(this.powerAt(frame, bin - 1) + NOUGHT);
    const at = Math.log(this.powerAt(frame, bin) + NOUGHT);
    const above = Math.log(this.powerAt(frame, bin + 1) + NOUGHT);
    const bend = below - 2 * at + above;
    return bend >= 0 ? bin : bin + Math.max(-0.5, Math.min(0.5, (0.5 * (below - above)) / bend));
  }
}

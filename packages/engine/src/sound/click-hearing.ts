import { likeness, suddenSpectrum } from './click-spectrum.ts';
import type { FrameStore } from './frame-store.ts';
import { BAND_HZ, BIN_HZ, HOP, WORK_RATE_HZ } from './listening-grid.ts';

/** A sudden sound with what was measured of it. */
export interface ClickCandidate {
  timeS: number;
  levelDb: number;
  spectrum: Float32Array;
  own: Float64Array;
}

/** What is measured of a sudden sound: itself, then its company. */
export const CLICK_FEATURES = [
  'rise',
  'restless',
  'attack',
  'after6',
  'after12',
  'after24',
  'after40',
  'low',
  'high',
  'peaky',
  'even',
  'tone',
  'toneAfter',
  'releaseLike',
  'releaseDb',
  'pressLike',
  'pressDb',
  'crowd',
  'crowdNear',
] as const;

const MS = WORK_RATE_HZ / 1000;
const KEPT_MS = 4096;
const BEFORE_MS = 24;
/** A sudden sound stands 8 dB over the median of the 24 ms before it. */
const SUDDEN = 10 ** 0.8;
const QUIET_MS = 8;
const AFTER_MS = 48;
const CROWD_S = 0.7;
/** A clicker springs back 45 to 320 ms after the press (our judgement, 2026). */
export const RELEASE_S = [0.045, 0.32] as const;
const HIGH_PASS_HZ = 1700;
const NOUGHT = 1e-20;

const dB = (ratio: number) => 10 * Math.log10(Math.max(ratio, 1e-12));
const clip = (value: number, low: number, high: number) => Math.max(low, Math.min(high, value));

export type OnClick = (candidate: ClickCandidate, company: Float64Array) => void;

/** Finds what may be clicks: energy above 1.7 kHz, millisecond by millisecond, that leaps and falls. */
export function createClickHearing(store: FrameStore, onClick: OnClick) {
  const energies = new Float64Array(KEPT_MS);
  const sorted = new Float64Array(BEFORE_MS);
  // Two second-order high-passes (Butterworth of the fourth order), in the form of two sums [BristowJohnson].
  const stages = [0.541, 1.307].map((q) => {
    const w = (2 * Math.PI * HIGH_PASS_HZ) / WORK_RATE_HZ;
    const alpha = Math.sin(w) / (2 * q);
    const a0 = 1 + alpha;
    const b = (1 + Math.cos(w)) / 2 / a0;
    return { b, a1: (-2 * Math.cos(w)) / a0, a2: (1 - alpha) / a0, s1: 0, s2: 0 };
  });
  let sum = 0;
  let samples = 0;
  let lastAt = -QUIET_MS;
  let waiting: number[] = [];
  let undecided: ClickCandidate[] = [];
  let recent: ClickCandidate[] = [];
  const energyAt = (ms: number) => (ms < 0 ? 0 : energies[ms % KEPT_MS]!);

  function mean(fromMs: number, toMs: number): number {
    let total = 0;
    for (let ms = fromMs; ms < toMs; ms++) total += energyAt(ms);
    return total / (toMs - fromMs);
  }

  function quantileBefore(ms: number, share: number): number {
    for (let i = 0; i < BEFORE_MS; i++) sorted[i] = energyAt(ms - 2 - i);
    sorted.sort();
    return sorted[Math.round(share * (BEFORE_MS - 1))]!;
  }

  function isSudden(ms: number): boolean {
    if (ms < BEFORE_MS + 2 || ms - lastAt < QUIET_MS) return false;
    const now = energyAt(ms);
    // Most milliseconds are no louder than those just before: no median is needed to see it.
    if (now < 3 * mean(ms - 12, ms - 2) && now < SUDDEN * energyAt(ms - 2)) return false;
    return now > SUDDEN * quantileBefore(ms, 0.5) + NOUGHT;
  }

  function candidateAt(ms: number): ClickCandidate {
    const before = quantileBefore(ms, 0.5) + NOUGHT;
    let peakMs = ms;
    for (let k = ms; k < ms + 5; k++) if (energyAt(k) > energyAt(peakMs)) peakMs = k;
    const peak = energyAt(peakMs) - before + NOUGHT;
    const left = (from: number, to: number) =>
      clip(dB((mean(ms + from, ms + to) - before) / peak), -35, 3) / 10;
    const timeS = onsetS(ms, before, peak);
    const sample = Math.round(timeS * WORK_RATE_HZ);
    const spectrum = suddenSpectrum(store, sample);
    const band = (fromHz: number, toHz: number) => {
      let total = NOUGHT;
      for (let k = Math.ceil(fromHz / BIN_HZ); k < toHz / BIN_HZ; k++) total += spectrum[k]!;
      return total;
    };
    const topHz = store.topBin * BIN_HZ;
    const whole = band(BAND_HZ[0], topHz);
    let most = 0;
    let logs = 0;
    const first = BAND_HZ[0] / BIN_HZ;
    for (let k = first; k < store.topBin; k++) {
      most = Math.max(most, spectrum[k]!);
      logs += Math.log(spectrum[k]! + 1e-3 * (whole / (store.topBin - first)));
    }
    const average = whole / (store.topBin - first);
    const frame = Math.round(sample / HOP);
    const tone = (at: number) => {
      let ratio = 1;
      for (let k = first; k < store.topBin; k++)
        ratio = Math.max(ratio, store.powerAt(at, k) / store.floorAt(at, k));
      return clip(dB(ratio) / 10, 0, 4);
    };
    return {
      timeS,
      levelDb: dB(peak),
      spectrum,
      own: Float64Array.of(
        clip(dB(peak / before) / 10, 0, 5),
        dB((quantileBefore(ms, 0.9) + NOUGHT) / before) / 10,
        peakMs - ms,
        left(5, 8),
        left(10, 15),
        left(18, 30),
        left(35, 46),
        clip(dB(band(190, 1400) / whole) / 10, -3, 2),
        clip(dB(band(4000, topHz) / band(BAND_HZ[0], 4000)) / 10, -3, 3),
        dB(most / average) / 10,
        logs / (store.topBin - first) - Math.log(average),
        tone(Math.max(store.earliest, frame - 6)),
        tone(Math.min(store.made - 1, frame + 10)),
      ),
    };
  }

  /** The moment within two milliseconds at which a quarter of the leap is reached, from samples. */
  function onsetS(ms: number, before: number, peak: number): number {
    const from = Math.max(0, (ms - 1) * MS);
    let most = 0;
    for (let i = from; i < from + 4 * MS; i++) most = Math.max(most, Math.abs(store.sampleAt(i)));
    const need = 0.35 * most;
    for (let i = from; i < from + 3 * MS; i++) {
      if (Math.abs(store.sampleAt(i)) >= need && (peak > 4 * before || i >= ms * MS)) return i / WORK_RATE_HZ;
    }
    return (ms * MS) / WORK_RATE_HZ;
  }

  function company(one: ClickCandidate): Float64Array {
    let [releaseLike, releaseDb, pressLike, pressDb, crowd, crowdNear] = [0, -3, 0, -3, 0, 0];
    const near = recent.filter((other) => other !== one && Math.abs(other.timeS - one.timeS) < CROWD_S);
    let partner: ClickCandidate | null = null;
    for (const other of near) {
      const lateS = other.timeS - one.timeS;
      const louderDb = other.levelDb - one.levelDb;
      if (Math.abs(lateS) < RELEASE_S[0] || Math.abs(lateS) > RELEASE_S[1]) continue;
      const like = likeness(one.spectrum, other.spectrum, store.topBin) - Math.abs(louderDb + 4) * 0.01;
      if (lateS > 0 && like > releaseLike && louderDb > -16 && louderDb < 6) {
        [releaseLike, releaseDb] = [like, louderDb / 10];
        partner = other;
      }
      if (lateS < 0 && like > pressLike && louderDb < 16 && louderDb > -6) {
        [pressLike, pressDb] = [like, louderDb / 10];
      }
    }
    for (const other of near) {
      if (other === partner) continue;
      const weight = 1 / (1 + Math.exp(-(other.levelDb - one.levelDb + 8) / 3));
      crowd += weight;
      if (Math.abs(other.timeS - one.timeS) < 0.12) crowdNear += weight;
    }
    return Float64Array.of(
      releaseLike,
      clip(releaseDb, -3, 1),
      pressLike,
      clip(pressDb, -3, 2),
      Math.min(6, crowd) / 2,
      Math.min(4, crowdNear),
    );
  }

  function advance(nowMs: number): void {
    while (waiting.length > 0 && waiting[0]! + AFTER_MS <= nowMs) {
      const candidate = candidateAt(waiting.shift()!);
      undecided.push(candidate);
      recent.push(candidate);
    }
    const decidedS = nowMs / 1000 - CROWD_S - 0.1;
    while (undecided.length > 0 && undecided[0]!.timeS < decidedS) {
      const one = undecided.shift()!;
      onClick(one, company(one));
    }
    if (recent.length > 0 && recent[0]!.timeS < decidedS - CROWD_S - 0.1)
      recent = recent.filter(({ timeS }) => timeS >= decidedS - CROWD_S - 0.1);
  }

  return {
    take(sample: number): void {
      let x = sample;
      for (const stage of stages) {
        const y = stage.b * x + stage.s1;
        stage.s1 = -2 * stage.b * x - stage.a1 * y + stage.s2;
        stage.s2 = stage.b * x - stage.a2 * y;
        x = y;
      }
      sum += x * x;
      samples++;
      if (samples % MS !== 0) return;
      const ms = samples / MS - 1;
      energies[ms % KEPT_MS] = sum;
      sum = 0;
      if (isSudden(ms)) {
        waiting.push(ms);
        lastAt = ms;
      }
      if (waiting.length > 0 || undecided.length > 0) advance(ms - 20);
    },
    finish(): void {
      const now = samples / MS;
      for (let ms = now; ms < now + AFTER_MS + 4; ms++) energies[Math.floor(ms) % KEPT_MS] = 0;
      advance(now + 10 * KEPT_MS);
      undecided = [];
      waiting = [];
    },
  };
}

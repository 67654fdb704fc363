import type { BlastCandidate } from './blast-context.ts';

/**
 * What is measured of a span against what else was heard, each weighed by how like a blast it looked alone. Near: within two seconds, as the
 * notes of a song or the pips of a pattern come. Far: within half a minute before, where a whistle comes back at its own pitch.
 */
export const MEMORY_FEATURES = [
  'alone',
  'sameCount',
  'sameMean',
  'sameLeast',
  'sameMost',
  'otherBlasts',
  'otherNotBlasts',
  'farBlasts',
  'farNotBlasts',
  'farElsewhere',
  'busy',
  'likeLength',
] as const;

export const MEMORY_S = 30;
const NEAR_S = 2;
const BUSY_S = 8;
const SAME_PITCH = 0.03;
const OTHER_PITCH = 0.05;
/** One whistle's blasts lie about a hundredth apart. */
const FAR_SPREAD = 0.012;

const step = (x: number) => 1 / (1 + Math.exp(-x));
const clip = (value: number) => Math.max(-3, Math.min(3, value));

/** Figures of one span among those heard about it and in the half minute before, in the order of `MEMORY_FEATURES`. */
export function memoryFeatures(one: BlastCandidate, all: readonly BlastCandidate[]): Float64Array {
  const lastsS = one.endS - one.startS;
  let [same, sum, least, most] = [0, 0, 3, -3];
  let [otherBlasts, otherNots, farBlasts, farNots, elsewhere, busy] = [0, 0, 0, 0, 0, 0];
  let likeLength = 1.5;
  for (const other of all) {
    const gapS = Math.max(other.startS - one.endS, one.startS - other.endS);
    if (other === one || other.startS - one.endS > NEAR_S || gapS > MEMORY_S) continue;
    const away = Math.abs(Math.log(other.pitchHz / one.pitchHz));
    const chance = step(other.alone);
    const louderDb = other.levelDb - one.levelDb;
    const isApart = gapS >= 0;
    if (isApart && gapS < NEAR_S && away < SAME_PITCH) {
      const now = clip(other.alone / 3);
      same++;
      sum += now;
      least = Math.min(least, now);
      most = Math.max(most, now);
      likeLength = Math.min(likeLength, Math.abs(Math.log((other.endS - other.startS) / lastsS)));
    }
    if (gapS < NEAR_S && away > OTHER_PITCH) {
      const weight = step((louderDb + 9) / 3) * Math.exp(-Math.max(0, gapS) / 0.7);
      otherBlasts += weight * chance;
      otherNots += weight * (1 - chance);
    }
    if (gapS < BUSY_S) busy += 1 - chance;
    if (!isApart) continue;
    const near = Math.exp(-0.5 * (away / FAR_SPREAD) ** 2);
    farBlasts += near * chance;
    farNots += near * (1 - chance);
    if (away > OTHER_PITCH) elsewhere += chance;
  }
  return Float64Array.of(
    clip(one.alone / 3),
    Math.log1p(same),
    same === 0 ? 0 : sum / same,
    same === 0 ? 0 : least,
    same === 0 ? 0 : most,
    Math.log1p(otherBlasts),
    Math.log1p(otherNots),
    Math.log1p(farBlasts),
    Math.log1p(farNots),
    Math.log1p(elsewhere),
    Math.log1p(busy),
    likeLength,
  );
}

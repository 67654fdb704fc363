import type { BlastCandidate } from './blast-context.ts';

type Placed = Pick<BlastCandidate, 'startS' | 'endS' | 'pitchHz'>;

/** Two readings are of one sound when they share more than half of the shorter and their pitches lie within 13 %: a whistle of two chambers. */
const SHARED = 0.5;
const TWO_CHAMBERS = Math.log(1.13);
/** Readings that begin within this of one another say the same of when a blast began. */
const BEGIN_TOGETHER_S = 0.04;

/** Whether at most one of both can be a blast. */
export function isAlternative(one: Placed, other: Placed): boolean {
  const sharedS = Math.min(one.endS, other.endS) - Math.max(one.startS, other.startS);
  if (sharedS <= 0) return false;
  const shorterS = Math.min(one.endS - one.startS, other.endS - other.startS);
  return sharedS > SHARED * shorterS && Math.abs(Math.log(one.pitchHz / other.pitchHz)) < TWO_CHAMBERS;
}

/** Whether both are readings of one sound that begin it together, so that either tells when it began. */
export const beginTogether = (one: Placed, other: Placed) =>
  Math.abs(one.startS - other.startS) < BEGIN_TOGETHER_S && isAlternative(one, other);

/** Of every sound that reading which looks likest a blast alone: what a candidate's company is counted from. */
export function likeliestReadings(all: readonly BlastCandidate[]): BlastCandidate[] {
  const byStart = [...all].sort((a, b) => a.startS - b.startS);
  const isBeaten = new Uint8Array(byStart.length);
  byStart.forEach((one, i) => {
    for (let k = i + 1; k < byStart.length && byStart[k]!.startS < one.endS; k++) {
      if (isAlternative(one, byStart[k]!)) isBeaten[one.alone >= byStart[k]!.alone ? k : i] = 1;
    }
  });
  return byStart.filter((_, i) => isBeaten[i] === 0);
}

/** What is measured of a reading against others of its sound: those that begin with it, and those that begin elsewhere. */
export const RIVAL_FEATURES = [
  'begun',
  'begunLead',
  'begunLonger',
  'begunShorter',
  'excluded',
  'excludedLead',
] as const;

const clip = (value: number) => Math.max(-3, Math.min(3, value));

/**
 * Figures of a reading against the others that exclude it, in the order of `RIVAL_FEATURES`: how many, how far the likeliest lies below it, and of those
 * that begin with it how much longer and shorter the next are, as logarithms.
 */
export function rivalFeatures(one: BlastCandidate, all: readonly BlastCandidate[]): Float64Array {
  let [begun, excluded, begunBest, excludedBest] = [0, 0, -9, -9];
  let [longer, shorter] = [3, 3];
  const lastsS = one.endS - one.startS;
  for (const other of all) {
    if (other === one || !isAlternative(one, other)) continue;
    if (!beginTogether(one, other)) {
      excluded++;
      excludedBest = Math.max(excludedBest, other.alone);
      continue;
    }
    begun++;
    begunBest = Math.max(begunBest, other.alone);
    const ratio = Math.log((other.endS - other.startS) / lastsS);
    if (ratio > 0) longer = Math.min(longer, ratio);
    else shorter = Math.min(shorter, -ratio);
  }
  return Float64Array.of(
    Math.log1p(begun),
    clip(one.alone - begunBest),
    longer,
    shorter,
    Math.log1p(excluded),
    clip(one.alone - excludedBest),
  );
}

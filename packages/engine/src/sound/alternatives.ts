import type { BlastCandidate } from './blast-context.ts';

type Placed = Pick<BlastCandidate, 'startS' | 'endS' | 'pitchHz'>;

/** Two readings are of one sound when they share more than half of the shorter and their pitches lie within 13 %: a whistle of two chambers. */
const SHARED = 0.5;
const TWO_CHAMBERS = Math.log(1.13);

/** Whether at most one of both can be a blast. */
export function isAlternative(one: Placed, other: Placed): boolean {
  const sharedS = Math.min(one.endS, other.endS) - Math.max(one.startS, other.startS);
  if (sharedS <= 0) return false;
  const shorterS = Math.min(one.endS - one.startS, other.endS - other.startS);
  return sharedS > SHARED * shorterS && Math.abs(Math.log(one.pitchHz / other.pitchHz)) < TWO_CHAMBERS;
}

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

import type { BlastCandidate } from './blast-context.ts';
import { BLAST_FEATURES } from './blast-features.ts';

/** A candidate at a place, all of its figures nought but those that are given. */
export const candidateAt = (
  startS: number,
  endS: number,
  { pitchHz = 3000, alone = 0, levelDb = 0 }: Partial<BlastCandidate> = {},
): BlastCandidate => ({
  startS,
  endS,
  pitchHz,
  levelDb,
  alone,
  own: new Float64Array(BLAST_FEATURES.length),
});

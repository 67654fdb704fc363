import type { CareerSpec } from '../careers/career.ts';
import { PATTERNS, type Pattern } from '../careers/pattern.ts';
import type { Detector } from './detectors.ts';
import { careersOf, type DogRecordSeen, recordOf } from './planted-record.ts';

/** A claim is made over this probability. */
export const CLAIMED_OVER = 0.8;
/** What must be so: 80 in 100 found, at most 5 in 100 claimed of careers that have it not. */
export const WANTED = { found: 0.8, claimed: 0.05 } as const;

/** How a detector did on one pattern. */
export interface PatternScore {
  readonly pattern: Pattern;
  readonly careers: number;
  readonly found: number;
  readonly claimed: number;
  /** Found if the detector might claim just so often as to be wrong of 5 in 100 careers without: what the records allow. */
  readonly foundAtFive: number;
}

function foundAtFive(having: readonly number[], lacking: readonly number[]): number {
  const worst = [...lacking].sort((a, b) => b - a)[Math.floor(WANTED.claimed * lacking.length)] ?? 1;
  return having.filter((probability) => probability > worst).length;
}

/**
 * Scores a detector on planted careers and those without, `count` of each for every pattern. `read` reads a career: the same
 * for all detectors, so that a record is made once.
 */
export function judgeDetectors(
  detectors: readonly Detector[],
  count: number,
  seed: number,
  read: (spec: CareerSpec) => DogRecordSeen = recordOf,
  patterns: readonly Pattern[] = PATTERNS,
): PatternScore[][] {
  const scores = patterns.map((pattern) => {
    const { having, lacking } = careersOf(pattern, count, seed);
    const probabilities = (specs: readonly CareerSpec[]) => {
      const each = specs.map((spec) => {
        const record = read(spec);
        return detectors.map((detector) => detector(pattern, record));
      });
      return detectors.map((_, d) => each.map((all) => all[d]!));
    };
    const [has, lacks] = [probabilities(having), probabilities(lacking)];
    const over = (all: readonly number[]) => all.filter((p) => p > CLAIMED_OVER).length;
    return detectors.map((_, d) => ({
      pattern,
      careers: count,
      found: over(has[d]!),
      claimed: over(lacks[d]!),
      foundAtFive: foundAtFive(has[d]!, lacks[d]!),
    }));
  });
  return detectors.map((_, d) => scores.map((all) => all[d]!));
}

/** Whether the figures keep what is wanted, as shares. */
export function keepsWanted({ careers, found, claimed }: PatternScore): boolean {
  return found >= WANTED.found * careers && claimed <= WANTED.claimed * careers;
}

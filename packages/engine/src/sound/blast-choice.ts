import { beginTogether, isAlternative, likeliestReadings, rivalFeatures } from './alternatives.ts';
import { type BlastCandidate, contextFeatures } from './blast-context.ts';
import { MEMORY_S, memoryFeatures } from './blast-memory.ts';
import { type OwnWhistle, ownFigures } from './own-whistle.ts';

/** A candidate with how surely a blast begins there, its company known, and how surely it ends there if it does. */
export type JudgedBlast = BlastCandidate & { logOdds: number; wholeLogOdds: number };

/** A score of the figures of a candidate. */
type Score = (figures: Float64Array) => number;

/** The figures by which a candidate is judged among all readings of what was heard and the likeliest of each sound. */
export function blastFigures(
  one: BlastCandidate,
  all: readonly BlastCandidate[],
  likeliest: readonly BlastCandidate[],
  own: OwnWhistle | null,
): Float64Array {
  const company = likeliest.filter((other) => other !== one && !isAlternative(one, other));
  return Float64Array.of(
    ...one.own,
    ...contextFeatures(one, company),
    ...memoryFeatures(one, company),
    ...rivalFeatures(one, all),
    ...ownFigures(own, one.pitchHz),
  );
}

/**
 * Of readings that begin together that which is likeliest whole; of these, where they exclude one another, the surest, none where one that was chosen
 * before excludes it.
 */
export function surestReadings<Judged extends JudgedBlast>(
  judged: readonly Judged[],
  before: readonly JudgedBlast[],
  least: number,
): Judged[] {
  const wholes = judged.filter((one) =>
    judged.every((other) => !beginTogether(one, other) || other.wholeLogOdds <= one.wholeLogOdds),
  );
  const chosen: Judged[] = [];
  for (const one of wholes.sort((a, b) => b.logOdds - a.logOdds)) {
    const excludes = (other: JudgedBlast) => isAlternative(one, other);
    if (one.logOdds > least && !chosen.some(excludes) && !before.some(excludes)) chosen.push(one);
  }
  return chosen.sort((a, b) => a.startS - b.startS);
}

/** Judges candidates as they become ready, and gives those that are blasts with log odds over `least`. */
export function createBlastChoice(
  { score, wholeScore }: { score: Score; wholeScore: Score },
  own: OwnWhistle | null,
  least: number,
) {
  let said: JudgedBlast[] = [];
  return (ready: readonly BlastCandidate[], all: readonly BlastCandidate[]): JudgedBlast[] => {
    const likeliest = likeliestReadings(all);
    const judged = ready.map((one) => {
      const figures = blastFigures(one, all, likeliest, own);
      return { ...one, logOdds: score(figures), wholeLogOdds: wholeScore(figures) };
    });
    const chosen = surestReadings(judged, said, least);
    const lastS = Math.max(...ready.map(({ endS }) => endS));
    said = [...said.filter(({ endS }) => endS > lastS - MEMORY_S), ...chosen];
    return chosen;
  };
}

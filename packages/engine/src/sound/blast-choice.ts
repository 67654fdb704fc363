import { isAlternative, likeliestReadings } from './alternatives.ts';
import { type BlastCandidate, contextFeatures } from './blast-context.ts';
import { MEMORY_S, memoryFeatures } from './blast-memory.ts';
import { type OwnWhistle, ownFigures } from './own-whistle.ts';

/** A candidate with how surely it is a blast, its company known. */
export type JudgedBlast = BlastCandidate & { logOdds: number };

/** The figures by which a candidate is judged among the likeliest readings of all that was heard. */
export function blastFigures(
  one: BlastCandidate,
  likeliest: readonly BlastCandidate[],
  own: OwnWhistle | null,
): Float64Array {
  const company = likeliest.filter((other) => other !== one && !isAlternative(one, other));
  return Float64Array.of(
    ...one.own,
    ...contextFeatures(one, company),
    ...memoryFeatures(one, company),
    ...ownFigures(own, one.pitchHz),
  );
}

/** Of readings that exclude one another the surest, none where one that was chosen before excludes it. */
export function surestReadings<Judged extends JudgedBlast>(
  judged: readonly Judged[],
  before: readonly JudgedBlast[],
): Judged[] {
  const chosen: Judged[] = [];
  for (const one of [...judged].sort((a, b) => b.logOdds - a.logOdds)) {
    const excludes = (other: JudgedBlast) => isAlternative(one, other);
    if (!chosen.some(excludes) && !before.some(excludes)) chosen.push(one);
  }
  return chosen.sort((a, b) => a.startS - b.startS);
}

/** Judges candidates as they become ready, and gives those that are blasts with log odds over `least`. */
export function createBlastChoice(
  score: (figures: Float64Array) => number,
  own: OwnWhistle | null,
  least: number,
) {
  let said: JudgedBlast[] = [];
  return (ready: readonly BlastCandidate[], all: readonly BlastCandidate[]): JudgedBlast[] => {
    const likeliest = likeliestReadings(all);
    const judged = ready
      .map((one) => ({ ...one, logOdds: score(blastFigures(one, likeliest, own)) }))
      .filter(({ logOdds }) => logOdds > least);
    const chosen = surestReadings(judged, said);
    const lastS = Math.max(...ready.map(({ endS }) => endS));
    said = [...said.filter(({ endS }) => endS > lastS - MEMORY_S), ...chosen];
    return chosen;
  };
}

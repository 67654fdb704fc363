import type { KeptRep, LaidLeg, Plan } from '@sedgeline/engine/session';

const keyOf = (legs: readonly LaidLeg[]): string =>
  JSON.stringify(legs.map(({ skill, ask }) => [skill, ask]));

/** Where locked reps stand in a plan that was made round them; one that could not be had is no longer locked. */
export function locksFound(kept: readonly KeptRep[], { reps }: Plan): number[] {
  const found = new Set<number>();
  for (const { n, legs } of kept) {
    const alike = reps.filter((rep) => !found.has(rep.n) && keyOf(rep.legs) === keyOf(legs));
    const nearest = alike.toSorted((a, b) => Math.abs(a.n - n) - Math.abs(b.n - n))[0];
    if (nearest !== undefined) found.add(nearest.n);
  }
  return [...found].toSorted((a, b) => a - b);
}

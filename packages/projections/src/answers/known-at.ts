import { type Fact, readTime } from '@sedgeline/journal';

/** Kinds that say what earlier reps finally were: they count whenever they were said. */
const CORRECTIONS: ReadonlySet<string> = new Set(['rep-amended', 'rep-struck', 'rep-ended']);

/** The facts an answer for a moment may know: what happened up to then, as the journal finally says it was. */
export function factsKnownAt(facts: readonly Fact[], atMs: number): Fact[] {
  return facts.filter((fact) => {
    if (CORRECTIONS.has(fact.kind)) return true;
    const reading = readTime(fact.at);
    return reading.ok && reading.ms <= atMs;
  });
}

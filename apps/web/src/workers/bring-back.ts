import { type Fact, readJournal, sameContent } from '@sedgeline/journal';
import type { BroughtBack } from '@sedgeline/words';

/** The facts of a file of lines that a record lacks. Never throws; what cannot be read is counted. */
export function factsToBringBack(
  text: string,
  there: readonly Fact[],
): BroughtBack & { readonly facts: readonly Fact[] } {
  const reading = readJournal(text);
  const byId = new Map(there.map((fact) => [fact.id, fact]));
  const facts = reading.facts.filter(({ id }) => !byId.has(id));
  const twins = reading.facts.filter(({ id }) => byId.has(id));
  const known = twins.filter((fact) => sameContent(fact, byId.get(fact.id))).length;
  return {
    facts,
    added: facts.length,
    known,
    differing: twins.length - known,
    unreadable: reading.badLines.length,
  };
}

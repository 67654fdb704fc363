import type { Fact } from '@sedgeline/journal';

/** Those of some ids (of letters, digits and hyphens) that stand anywhere in a fact, whatever its kind: one that is not known yet may speak of a sound too. */
export function spokenOf(facts: readonly Fact[], ids: readonly string[]): readonly string[] {
  const found = new Set<string>();
  for (const { body } of facts) {
    if (found.size === ids.length) break;
    const text = JSON.stringify(body);
    for (const id of ids) if (text.includes(id)) found.add(id);
  }
  return [...found];
}

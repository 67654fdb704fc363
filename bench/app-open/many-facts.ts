import { demoKennel } from '@sedgeline/demo';
import { atMsOf, type Fact, timeText } from '@sedgeline/journal';

/** Identities that are a kennel's own, and those that are a year's own. */
const OF_KENNEL = ['dog', 'handler', 'ground', 'goal'] as const;
const OF_YEAR = ['session', 'rep', 'layout'] as const;
/** Ten kennels of three dogs are worked side by side; when they are through, the same thirty dogs are worked on. */
const KENNELS = 10;

/** Whole invented kennels until there are so many facts: thirty dogs, the later years after the earlier ones. */
export function manyFacts(least: number): readonly Fact[] {
  const facts: Fact[] = [];
  for (let seed = 1; facts.length < least; seed++) {
    const kennel = (seed - 1) % KENNELS;
    const year = Math.floor((seed - 1) / KENNELS);
    const played = demoKennel(seed);
    const firstMs = Math.min(...played.map(atMsOf));
    const lastMs = Math.max(...played.map(atMsOf));
    const shiftMs = -year * (lastMs - firstMs + 7 * 86_400_000);
    for (const fact of played) facts.push(moved(fact, kennel, seed, shiftMs));
  }
  return facts;
}

function moved(fact: Fact, kennel: number, seed: number, shiftMs: number): Fact {
  const atMs = atMsOf(fact) + shiftMs;
  const body: Record<string, unknown> = { ...fact.body };
  for (const name of OF_KENNEL) if (typeof body[name] === 'string') body[name] = `${kennel}-${body[name]}`;
  for (const name of OF_YEAR) if (typeof body[name] === 'string') body[name] = `${seed}-${body[name]}`;
  const clock = `${String(atMs).padStart(13, '0')}-0000-${kennel}`;
  return { ...fact, id: `${seed}-${fact.id}`, at: timeText(atMs), clock, body };
}

/** Legs that the facts record. */
export function countLegs(facts: readonly Fact[]): number {
  return facts.reduce((n, { kind, body }) => {
    return kind === 'rep-recorded' && Array.isArray(body.legs) ? n + body.legs.length : n;
  }, 0);
}

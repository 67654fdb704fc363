import type { Fact } from '../../fact.ts';

const START_MS = 1_772_355_600_000; // 2026-03-01T09:00:00Z

/** An invented fact: number `n` stands at the n-th second, so a rising `n` is the journal's order. */
export function kitFact(n: number, body: Readonly<Record<string, unknown>> = { note: `mark ${n}` }): Fact {
  return {
    id: `fact-${String(n).padStart(6, '0')}`,
    kind: 'mark-set',
    at: '2026-03-01T09:00:00Z',
    body,
    clock: `${START_MS + n * 1000}-0000-kit`,
    device: 'kit',
  };
}

/** Invented facts numbered `from` to `to`, both included. */
export function kitFacts(from: number, to: number): readonly Fact[] {
  return Array.from({ length: to - from + 1 }, (_, i) => kitFact(from + i));
}

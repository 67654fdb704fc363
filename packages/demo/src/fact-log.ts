import type { Fact, FactBodies, KnownKind } from '@sedgeline/journal';

/** Writes the facts of the invented record, each later than the one before, with ids that tell the seed. */
export interface FactLog {
  write<Kind extends KnownKind>(kind: Kind, body: FactBodies[Kind], atMs: number): void;
  readonly facts: readonly Fact[];
}

const DEVICE = 'demo';

/** A log of a seed. Facts are to be written in time order: an earlier moment throws RangeError. */
export function factLog(seed: number): FactLog {
  const facts: Fact[] = [];
  let lastMs = 0;
  let counter = 0;
  return {
    facts,
    write(kind, body, atMs) {
      if (atMs < lastMs) throw new RangeError(`atMs: expected ${lastMs} or later, got ${atMs}`);
      counter = atMs === lastMs ? counter + 1 : 0;
      lastMs = atMs;
      const clock = `${String(atMs).padStart(13, '0')}-${counter.toString(16).padStart(4, '0')}-${DEVICE}`;
      const id = `demo-${seed}-${String(facts.length + 1).padStart(5, '0')}`;
      facts.push({ id, kind, at: new Date(atMs).toISOString(), clock, device: DEVICE, body });
    },
  };
}

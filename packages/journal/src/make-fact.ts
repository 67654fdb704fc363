import { type Clock, clockText, tickClock } from './clock.ts';
import type { Fact } from './fact.ts';
import type { FactBodies, FactOf, KnownKind } from './schema/kinds.ts';
import { validateFact } from './schema/validate-fact.ts';
import { timeText } from './time.ts';

/** What a new fact is made of. */
export interface FactParts<Kind extends KnownKind> {
  readonly kind: Kind;
  readonly body: FactBodies[Kind];
  /** When it happened. */
  readonly atMs: number;
  /** The device's clock as it stood before this fact. */
  readonly clock: Clock;
  /** Gives an id that no other fact has, on any device. */
  readonly newId: () => string;
  /** The wall clock as the fact is made; left out: `atMs`. They differ where something is written down afterwards. */
  readonly nowMs?: number | undefined;
  /** Who recorded it. */
  readonly by?: string | undefined;
}

/**
 * Makes a fact of a known kind and says where the device's clock stands after it. Pure: time, clock and ids are handed
 * in. Throws RangeError where the body is not one of its kind: that is the caller's bug.
 */
export function makeFact<Kind extends KnownKind>(
  parts: FactParts<Kind>,
): { readonly fact: FactOf<Kind>; readonly clock: Clock } {
  const clock = tickClock(parts.clock, parts.nowMs ?? parts.atMs);
  const fact: Fact = {
    id: parts.newId(),
    kind: parts.kind,
    at: timeText(parts.atMs),
    body: parts.body,
    clock: clockText(clock),
    device: clock.device,
    ...(parts.by === undefined ? {} : { by: parts.by }),
  };
  const checked = validateFact(fact);
  if (!checked.ok) throw new RangeError(checked.message);
  return { fact: fact as FactOf<Kind>, clock };
}

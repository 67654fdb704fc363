import { legBody } from '../record/leg-body.ts';
import type { LegRecord } from '../record/training-record.ts';
import type { TapFact } from '../tap-fact.ts';
import type { RepFigures } from './rep-figures.ts';

/** The longest latency that a leg can have, seconds: the journal's own limit. */
const LONGEST_S = 60;
/** Kept to a hundredth of a second: a frame is two to four of them. */
const PER_S = 100;

/** A halt latency that the marks give, and what the leg says so far. */
export interface FoundLatency {
  readonly leg: number;
  readonly latencyS: number;
  readonly before: number | null;
}

/** The halt latencies that could be kept with the legs: those that are not there yet, or were otherwise. */
export function foundLatencies(legs: readonly LegRecord[], figures: RepFigures): readonly FoundLatency[] {
  return figures.halts.flatMap(({ leg, latency }) => {
    if (leg === null || latency === null || latency.s > LONGEST_S) return [];
    const latencyS = Math.round(latency.s * PER_S) / PER_S;
    const before = legs[leg]?.latencyS ?? null;
    return before === latencyS ? [] : [{ leg, latencyS, before }];
  });
}

/** The fact that keeps latencies with their legs; `latencyS` null takes one out again. All else of the legs stays as it was. */
export function latencyFact(
  rep: string,
  legs: readonly LegRecord[],
  latencies: readonly { readonly leg: number; readonly latencyS: number | null }[],
): TapFact {
  const said = new Map(latencies.map(({ leg, latencyS }) => [leg, latencyS]));
  const amended = legs.map((leg, n) => {
    const found = said.get(n);
    if (found === undefined) return legBody(leg);
    const { latencyS: _, ...rest } = legBody(leg);
    return found === null ? rest : { ...rest, latencyS: found };
  });
  return { kind: 'rep-amended', body: { rep, legs: amended } };
}

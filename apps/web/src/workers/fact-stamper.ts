import {
  type Clock,
  clockText,
  type Fact,
  newClock,
  readClock,
  receiveClock,
  tickClock,
  timeText,
} from '@sedgeline/journal';
import type { TapFact } from '@sedgeline/projections';

/** Gives facts their identity, time and clock: the one place where this device's clock runs. */
export interface FactStamper {
  stamp(taps: readonly TapFact[]): readonly Fact[];
  /** Runs after the clocks of facts from elsewhere, so that what comes next is later than all of them. */
  see(facts: readonly Fact[]): void;
  /** How far the device's own time is behind the last fact seen, milliseconds: 0 unless somebody set it back, or another's is ahead. */
  behindMs(): number;
}

/** A stamper for one device. `nowMs` and `newId` are the world's. */
export function createFactStamper(device: string, nowMs: () => number, newId: () => string): FactStamper {
  let clock: Clock = newClock(device);
  return {
    stamp: (taps) =>
      taps.map(({ kind, body, place }) => {
        if (place !== undefined) {
          const at = timeText(place.ms);
          return { id: newId(), kind, at, body, clock: clockText({ ...place, device }), device };
        }
        const atMs = nowMs();
        clock = tickClock(clock, atMs);
        return { id: newId(), kind, at: timeText(atMs), body, clock: clockText(clock), device };
      }),
    see: (facts) => {
      const wallMs = nowMs();
      for (const fact of facts) {
        if (fact.clock === undefined) continue;
        const reading = readClock(fact.clock);
        if (!reading.ok) continue;
        // This device's own clock is followed however wrong it was: what is recorded next stands after what was recorded last.
        const isOwn = reading.clock.device === device;
        clock = receiveClock(clock, reading.clock, isOwn ? Math.max(wallMs, reading.clock.ms) : wallMs);
      }
    },
    behindMs: () => Math.max(0, clock.ms - nowMs()),
  };
}

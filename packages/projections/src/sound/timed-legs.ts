import type { Ask } from '@sedgeline/engine/ability';
import { legBody } from '../record/leg-body.ts';
import type { LegRecord } from '../record/training-record.ts';
import { blewLaterM, type WhistleTiming } from './whistle-timing.ts';

/** The journal's own limits on a distance. */
const [NEAREST_M, FARTHEST_M] = [1, 400];
/** Places within 5 cm are one place: the screens show tenths of a metre. */
const SAME_PLACE_M = 0.05;

/**
 * The legs of a rep with what its stop whistles tell: latencies, and the place of a stop that was blown later or earlier than planned,
 * with all that stands at that place. The plan is kept beside what was done. `null` where nothing changes.
 */
export function timedLegs(
  legs: readonly LegRecord[],
  timings: readonly WhistleTiming[],
): readonly object[] | null {
  let told = legs;
  for (const timing of timings) {
    told = withLatency(told, timing);
    const laterM = blewLaterM(timing);
    if (laterM !== null && laterM !== 0 && timing.blewAtM !== null)
      told = moved(told, timing.leg, timing.blewAtM);
  }
  return told === legs ? null : told.map(legBody);
}

function withLatency(legs: readonly LegRecord[], { leg, latencyS }: WhistleTiming): readonly LegRecord[] {
  if (latencyS === null || legs[leg]?.latencyS === latencyS) return legs;
  return legs.map((one, n) => (n === leg ? { ...one, latencyS } : one));
}

function moved(legs: readonly LegRecord[], leg: number, atM: number): readonly LegRecord[] {
  const askedM = legs[leg]?.ask.distanceM;
  const toM = Math.min(FARTHEST_M, Math.max(NEAREST_M, Math.round(atM)));
  if (askedM === undefined || Math.abs(toM - askedM) < 1) return legs;
  return legs.map((one) => {
    const isCue = one.skill === 'stop' || one.skill.startsWith('cast-');
    const standsAtM = one.ask.distanceM;
    if (!isCue || standsAtM === undefined || Math.abs(standsAtM - askedM) > SAME_PLACE_M) return one;
    return { ...one, ask: placed(one.ask, askedM, toM), planned: one.planned ?? one.ask };
  });
}

/** Distance and share of the way move together: the send is as long as it was. */
function placed(ask: Ask, fromM: number, toM: number): Ask {
  if (ask.wayFraction === undefined) return { ...ask, distanceM: toM };
  const wayFraction = Math.min(1, Math.round(1000 * ask.wayFraction * (toM / fromM)) / 1000);
  return { ...ask, distanceM: toM, wayFraction };
}

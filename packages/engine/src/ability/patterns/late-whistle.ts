import { evidenceOf, type PatternFinding, type PatternLeg, stateOf } from './pattern.ts';
import { sharePosterior } from './share-posterior.ts';
import { SHARES } from './sizes.ts';

/**
 * Does the handler's whistle come late? The share of stops that were blown later than planned, or were not good and were put
 * down to the handler.
 */
export function lateWhistle(legs: readonly PatternLeg[]): PatternFinding {
  const size = SHARES['late-whistle'];
  const stops = legs.filter(({ skill }) => skill === 'stop');
  const isLate = ({ cause, wasBlownLate }: PatternLeg) => cause === 'handler' || wasBlownLate === true;
  const isThin = stops.length < size.need;
  const seen = isThin ? [] : stops;
  const { mean, sd, probability } = sharePosterior(seen.filter(isLate).length, seen.length, size);
  return {
    pattern: 'late-whistle',
    state: isThin ? 'cant-say' : stateOf(probability),
    strength: { mean, sd },
    probability,
    evidence: [evidenceOf('stops', stops, isLate)],
    ...(isThin ? { tooLittle: { code: 'too-few', of: 'stops', have: stops.length, need: size.need } } : {}),
  };
}

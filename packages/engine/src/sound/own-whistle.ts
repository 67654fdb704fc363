/** What is known of the handler's own whistle: its pitch, and how far a blast of it may lie from that (one standard deviation of its logarithm). */
export interface OwnWhistle {
  pitchHz: number;
  spread: number;
}

/** Blasts of one whistle lie about 1.5 % apart, which counts as four blasts seen (our judgement, 2026). */
const USUAL_SPREAD = 0.015;
const PRIOR_WEIGHT = 4;
/** How near a pitch lies to the own one is told by three bells: of a steady mouth, an unsteady one, and of pips that begin low. */
const NEARNESS_SPREADS = [0.008, 0.02, 0.06] as const;
const OWN_WITHIN_SPREADS = 3;

/**
 * The own whistle learned from blasts that the handler confirmed: a normal belief about the logarithm of the pitch, its mean that of the
 * blasts and its spread theirs with a prior worth four blasts, widened by how surely the mean is known. Null before the first one.
 * @throws RangeError for a pitch that is not above nought
 */
export function learnOwnWhistle(confirmedHz: readonly number[]): OwnWhistle | null {
  for (const hz of confirmedHz) {
    if (!(hz > 0 && Number.isFinite(hz))) throw new RangeError(`confirmedHz: expected > 0, got ${hz}`);
  }
  const n = confirmedHz.length;
  if (n === 0) return null;
  const logs = confirmedHz.map(Math.log);
  const mean = logs.reduce((sum, x) => sum + x, 0) / n;
  const squares = logs.reduce((sum, x) => sum + (x - mean) ** 2, PRIOR_WEIGHT * USUAL_SPREAD ** 2);
  const spread = Math.sqrt((squares / (PRIOR_WEIGHT + n - 1)) * (1 + 1 / n));
  return { pitchHz: Math.exp(mean), spread };
}

/** Whether a blast lies where the own whistle does. */
export const isOwn = (own: OwnWhistle, pitchHz: number) =>
  Math.abs(Math.log(pitchHz / own.pitchHz)) < OWN_WITHIN_SPREADS * own.spread;

/** What is measured of a span against the own whistle. */
export const OWN_FEATURES = ['isKnown', ...NEARNESS_SPREADS.map((spread) => `near${spread}`)] as const;

/**
 * Figures of a pitch against the own whistle, in the order of `OWN_FEATURES`: exp(-d^2 / 2 s^2) of its logarithm's distance d, for each spread s.
 * All are nought where no whistle is known. How much they speak for a blast is fitted with all other figures.
 */
export function ownFigures(own: OwnWhistle | null, pitchHz: number): Float64Array {
  if (own === null) return new Float64Array(OWN_FEATURES.length);
  const away = Math.log(pitchHz / own.pitchHz);
  return Float64Array.of(1, ...NEARNESS_SPREADS.map((spread) => Math.exp(-0.5 * (away / spread) ** 2)));
}

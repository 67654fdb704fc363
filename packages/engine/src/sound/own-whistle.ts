/** What is known of the handler's own whistle: its pitch, and how far a blast of it may lie from that (one standard deviation of its logarithm). */
export interface OwnWhistle {
  pitchHz: number;
  spread: number;
}

/** Blasts of one whistle lie about 1.5 % apart, which counts as four blasts seen (our judgement, 2026). */
const USUAL_SPREAD = 0.015;
const PRIOR_WEIGHT = 4;
/** Of the blasts in a handler's recording, the share taken to be the handler's own before anything is heard (our judgement, 2026). */
const OWN_SHARE = 0.95;
/** The band in which any other blast may lie is taken to be evenly filled in its logarithm. */
const BAND_LOG_WIDTH = Math.log(7200 / 1500);
/** Its pitch alone does not make a blast. */
const MOST_LOG_ODDS = 2.5;
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

/** By how much a pitch speaks for a blast, in log odds: own blasts lie close together, others and what is none anywhere in the band. */
export function ownPitchLogOdds(own: OwnWhistle, pitchHz: number): number {
  const away = Math.log(pitchHz / own.pitchHz) / own.spread;
  const density = Math.exp(-0.5 * away * away) / (own.spread * Math.sqrt(2 * Math.PI));
  return Math.min(MOST_LOG_ODDS, Math.log(OWN_SHARE * density * BAND_LOG_WIDTH + 1 - OWN_SHARE));
}

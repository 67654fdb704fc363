import type { Dice } from '../careers/dice.ts';
import { wander } from './noise.ts';

/** How one handler blows: common practice, no source; the spans are our judgement, 2026. */
export interface Mouth {
  /** How often the tongue lets a long blast go; else the breath begins it. Pips are tongued. */
  tongued: number;
  tongueS: number;
  breathS: number;
  /** Pressure that has built up behind the tongue, over the usual, and how soon it is spent. */
  pentUp: number;
  spentS: number;
  stopS: number;
  /** How often a long blast runs out of breath in place of being stopped. */
  runsOut: number;
  hard: number;
  unsteady: number;
  diaphragm: number;
}

export const drawMouth = (dice: Dice): Mouth => ({
  tongued: dice.pick([0.95, 0.8, 0.3]),
  tongueS: dice.between(0.003, 0.012),
  breathS: dice.between(0.03, 0.14),
  pentUp: dice.between(0, 0.5),
  spentS: dice.between(0.01, 0.05),
  stopS: dice.between(0.004, 0.02),
  runsOut: dice.pick([0, 0.1, 0.4]),
  hard: dice.between(0.85, 1.25),
  unsteady: dice.between(0.01, 0.06),
  diaphragm: dice.chance(0.25) ? dice.between(0.02, 0.1) : 0,
});

/** A blast shorter than this is a pip to the mouth: tongued at both ends. */
const PIP_UNTIL_S = 0.3;
/** A mouth is slow: its pressure is reckoned every so many steps, and straight between. */
const TOLD_EVERY = 16;

/**
 * Pressure in the mouth along one blast of about `durationS`, 1 as usual, a step `1 / rateHz`: let go by the tongue with what was pent up behind
 * it, or begun by the breath; carried by lungs that waver; cut off by the tongue, or run out over the last third. Ends in silence of 60 ms.
 */
export function breathOf(mouth: Mouth, durationS: number, rateHz: number, dice: Dice): Float64Array {
  const isPip = durationS < PIP_UNTIL_S;
  const isTongued = isPip || dice.chance(mouth.tongued);
  const runsOut = durationS > 0.6 && dice.chance(mouth.runsOut);
  const riseS = (isTongued ? mouth.tongueS : mouth.breathS) * dice.between(0.8, 1.25);
  const hard = mouth.hard * dice.between(0.93, 1.07);
  const blownS = durationS + riseS / 2;
  const fallS = runsOut ? dice.between(0.06, 0.16) : mouth.stopS * dice.between(0.8, 1.25);
  const outFromS = runsOut ? blownS * dice.between(0.6, 0.85) : blownS;
  const outTo = runsOut ? dice.between(0.35, 0.75) : 1;
  const told = Math.ceil(((blownS + fallS + 0.06) * rateHz) / TOLD_EVERY) + 1;
  const waver = wander(told, 0.2, rateHz / TOLD_EVERY, dice);
  const [shakesHz, phase] = [dice.between(4, 7), dice.between(0, 6)];
  const pressure = Float64Array.from({ length: told }, (_, i) => {
    const s = (i * TOLD_EVERY) / rateHz;
    const up = 1 - Math.exp(-2.5 * (s / riseS) ** 1.5);
    const spent = isTongued ? 1 + mouth.pentUp * Math.exp(-s / mouth.spentS) : 1;
    const out = s < outFromS ? 1 : 1 - ((1 - outTo) * (s - outFromS)) / Math.max(1e-3, blownS - outFromS);
    const down = s < blownS ? 1 : Math.exp(-3 * ((s - blownS) / fallS) ** 1.5);
    const lungs =
      1 + mouth.unsteady * waver[i]! + mouth.diaphragm * Math.sin(2 * Math.PI * shakesHz * s + phase);
    return Math.max(0, hard * up * spent * Math.max(0.2, out) * down * lungs);
  });
  return Float64Array.from({ length: (told - 1) * TOLD_EVERY }, (_, i) => {
    const at = Math.floor(i / TOLD_EVERY);
    const part = (i % TOLD_EVERY) / TOLD_EVERY;
    return (1 - part) * pressure[at]! + part * pressure[at + 1]!;
  });
}

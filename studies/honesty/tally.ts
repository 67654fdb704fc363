import type { Chances } from '../careers/mind.ts';
import type { JudgedLeg, Stated } from './judged-leg.ts';

const GRADES = ['missed', 'fair', 'good'] as const;
/** A stated 0 that comes true costs 34.5 nats, not infinity. */
const LEAST = 1e-15;
const held = (chance: number) => Math.max(LEAST, chance);

/**
 * Regret of stating `stated` where `truth` holds, in nats: the expected log loss beyond that of stating the truth itself,
 * `sum_k truth_k ln(truth_k / stated_k)` (Kullback and Leibler's divergence); 0 at best.
 */
export function regretOf(truth: Chances, stated: Chances): number {
  return GRADES.reduce(
    (sum, k) => sum + (truth[k] > 0 ? truth[k] * Math.log(truth[k] / held(stated[k])) : 0),
    0,
  );
}

/** Sums over the scored legs of one kennel. Divide by `legs`, and by `intervals` what is inside. */
export class Tally {
  legs = 0;
  logLoss = 0;
  brier = 0;
  ranked = 0;
  regret = 0;
  /** Log loss beyond that of the truth on what came, less regret: 0 on average for whoever doesn't peek. */
  luck = 0;
  luckSquared = 0;
  intervals = 0;
  goodInside = 0;
  notMissedInside = 0;
  /** Stated logits of good, and whether it came. */
  readonly logits: number[] = [];
  readonly came: boolean[] = [];

  add({ truth, grade }: JudgedLeg, { chance, interval90 }: Stated): void {
    this.legs += 1;
    const loss = -Math.log(held(chance[grade]));
    const regret = regretOf(truth, chance);
    this.logLoss += loss;
    this.regret += regret;
    const luck = loss + Math.log(held(truth[grade])) - regret;
    this.luck += luck;
    this.luckSquared += luck * luck;
    let below = 0;
    GRADES.forEach((k, n) => {
      const away = chance[k] - (k === grade ? 1 : 0);
      this.brier += away * away;
      below += away;
      if (n < 2) this.ranked += below * below;
    });
    const good = Math.min(1 - 1e-6, Math.max(1e-6, chance.good));
    this.logits.push(Math.log(good / (1 - good)));
    this.came.push(grade === 'good');
    if (interval90 === undefined) return;
    this.intervals += 1;
    const inside = (value: number, [low, high]: readonly [number, number]) =>
      value >= low && value <= high ? 1 : 0;
    this.goodInside += inside(truth.good, interval90.good);
    this.notMissedInside += inside(1 - truth.missed, interval90.notMissed);
  }
}

import type { Contestant, JudgedLeg } from '../judged-leg.ts';
import { fromTwoCuts } from './two-cuts.ts';

/** `K(n) = a/(1 + b n)`: Pelanek2016 recommends this shape, with a = 1 and b = 0.05. */
const uncertainty = (times: number) => 1 / (1 + 0.05 * times);
/** The demands are told by every leg of the kennel: a tenth of the step (our judgement, 2026). */
const DEMAND_SHARE = 0.1;

interface Rating {
  value: number;
  times: number;
}

/**
 * One Elo rating for one cut: `logit = dog + (dog, skill) + skill - sum_j d_j x_j`; each part moves by `K(n)(came - chance)`
 * (Pelanek2016, the extended model for several skills). The difficulty of the item is the sum of its demands. `start` is the logit before
 * any rating has moved.
 */
function eloOfCut(start: number): {
  logit(leg: JudgedLeg): number;
  learns(leg: JudgedLeg, came: number): void;
} {
  const ratings = new Map<string, Rating>();
  const demands: Rating[] = Array.from({ length: 21 }, () => ({ value: 0, times: 0 }));
  const of = (key: string): Rating => {
    const known = ratings.get(key) ?? { value: 0, times: 0 };
    ratings.set(key, known);
    return known;
  };
  const partsOf = ({ dog, skill }: JudgedLeg) => [of(dog), of(`${dog} ${skill}`), of(skill)];
  const logit = (leg: JudgedLeg) => {
    const able = partsOf(leg).reduce((sum, { value }) => sum + value, start);
    return leg.demands.reduce((sum, x, j) => sum - x * demands[j]!.value, able);
  };
  const move = (rating: Rating, by: number) => {
    rating.value += uncertainty(rating.times) * by;
    rating.times += 1;
  };
  return {
    logit,
    learns(leg, came) {
      const surprise = came - 1 / (1 + Math.exp(-logit(leg)));
      const parts = partsOf(leg);
      for (const part of parts) move(part, surprise / parts.length);
      leg.demands.forEach((x, j) => {
        if (x !== 0) move(demands[j]!, -DEMAND_SHARE * x * surprise);
      });
    },
  };
}

/** Elo ratings with demands in place of items, one set for "not missed" and one for "good". */
export function elo(): Contestant {
  const [notMissed, good] = [eloOfCut(Math.log(2)), eloOfCut(-Math.log(2))];
  return {
    states: (leg) => fromTwoCuts(notMissed.logit(leg), good.logit(leg)),
    learns(leg) {
      notMissed.learns(leg, leg.grade === 'missed' ? 0 : 1);
      good.learns(leg, leg.grade === 'good' ? 1 : 0);
    },
  };
}

import type { Contestant, JudgedLeg } from '../judged-leg.ts';
import { RefittedLogistic, type Row } from './refitted-logistic.ts';
import { fromTwoCuts } from './two-cuts.ts';

/**
 * Prior sd of every weight: of 0.1, 0.2, 0.3, 0.5 and 1 the one of least regret on the short form's kennels of seed 77, so that
 * nothing plain is judged at less than its best.
 */
const SD_WITH_COUNTS = 0.2;
const SD_POOLED = 0.3;
/** Counts of past legs enter in tens, so that their weights are of the size of the others. */
const COUNT_UNIT = 10;

type Features = readonly (readonly [name: string, much: number])[];

/** What a dog did at a skill before. */
interface Past {
  successes: number;
  failures: number;
}
type PastOf = (key: string) => Past;

/** Two penalised logistic regressions over the kennel, of not missed and of good, on named features; at 1/3 each at first. */
function logisticOn(sd: number, featuresOf: (leg: JudgedLeg, past: PastOf) => Features): Contestant {
  const notMissed = new RefittedLogistic(sd, Math.log(2));
  const good = new RefittedLogistic(sd, -Math.log(2));
  const places = new Map<string, number>([['intercept', 0]]);
  const pasts = new Map<string, Past>();
  const past = (key: string): Past => {
    const known = pasts.get(key) ?? { successes: 0, failures: 0 };
    pasts.set(key, known);
    return known;
  };
  const rowOf = (leg: JudgedLeg): Row => {
    const features = featuresOf(leg, past).filter(([, much]) => much !== 0);
    const place = (name: string) => {
      const known = places.get(name) ?? places.size;
      places.set(name, known);
      return known;
    };
    return {
      at: [0, ...features.map(([name]) => place(name))],
      much: [1, ...features.map(([, much]) => much)],
    };
  };
  return {
    states(leg) {
      const row = rowOf(leg);
      return fromTwoCuts(notMissed.logit(row), good.logit(row));
    },
    learns(leg) {
      const row = rowOf(leg);
      notMissed.learns(row, leg.grade === 'missed' ? 0 : 1);
      good.learns(row, leg.grade === 'good' ? 1 : 0);
      for (const key of [leg.dog, `${leg.dog} ${leg.skill}`]) {
        const known = past(key);
        if (leg.grade === 'good') known.successes += 1;
        else known.failures += 1;
      }
    },
  };
}

const demandsOf = ({ demands }: JudgedLeg): Features =>
  Array.from(demands, (x, j) => [`demand ${j}`, x] as const);

/** Logistic regression pooled over the kennel: skill, dog, and the demands of the ask. */
export const pooledLogistic = (): Contestant =>
  logisticOn(SD_POOLED, (leg) => [[`skill ${leg.skill}`, 1], [`dog ${leg.dog}`, 1], ...demandsOf(leg)]);

/**
 * Performance-factors analysis (Pavlik2009): `logit = beta_k + gamma_k s + rho_k f`, with the dog's earlier successes (good)
 * and failures at the skill. It knows nothing of the ask.
 */
export const performanceFactors = (): Contestant =>
  logisticOn(SD_WITH_COUNTS, ({ dog, skill }, past) => {
    const { successes, failures } = past(`${dog} ${skill}`);
    return [
      [`skill ${skill}`, 1],
      [`successes ${skill}`, successes / COUNT_UNIT],
      [`failures ${skill}`, failures / COUNT_UNIT],
    ];
  });

/**
 * "Best logistic regression" (Gervet2020): dog, skill, and the logarithms of successes and failures, of the dog at all and of
 * the dog at the skill; here with the demands of the ask in place of the item's difficulty.
 */
export const bestLogistic = (): Contestant =>
  logisticOn(SD_WITH_COUNTS, (leg, past) => {
    const whole = past(leg.dog);
    const atSkill = past(`${leg.dog} ${leg.skill}`);
    return [
      [`skill ${leg.skill}`, 1],
      [`dog ${leg.dog}`, 1],
      ['successes', Math.log1p(whole.successes)],
      ['failures', Math.log1p(whole.failures)],
      [`successes ${leg.skill}`, Math.log1p(atSkill.successes)],
      [`failures ${leg.skill}`, Math.log1p(atSkill.failures)],
      ...demandsOf(leg),
    ];
  });

import { logistic } from '../numeric/logistic.ts';
import type { Random } from '../numeric/random.ts';
import { MS_PER_DAY } from '../quantity/time.ts';
import type { Ask, Grade, Skill } from './ask.ts';
import { EASY_CONTEXT } from './ask-range.ts';
import { DEMANDS, demandVector } from './demands.ts';
import type { LegQuestion, LegResult } from './leg.ts';
import { oddKey } from './odd-key.ts';
import type { AbilityPriors } from './priors.ts';

const START_MS = Date.UTC(2026, 2, 1, 9);
export const SIMULATED_SKILLS = ['stop', 'line', 'recall'] as const satisfies readonly Skill[];
const ASKS: readonly Ask[] = [
  {},
  { distanceM: 20 },
  { distanceM: 40, wayFraction: 0.4, handlerPlace: 'beside' },
  { distanceM: 60, wayFraction: 0.7, temptation: 'placed-dummy', handlerPlace: 'beside', cover: 1 },
  { distanceM: 80, temptation: 'thrown-dummy', handlerPlace: 'beside', otherDummies: 1, gapDeg: 40 },
  { distanceM: 30, distraction: 2, crew: 3, waitS: 20 },
];

/** What is true of a simulated dog at the end of its record. */
export interface SimulatedTruth {
  /** Whole ability at the skill's easy reference ask, as of the last leg. */
  ability(skill: Skill): number;
  /** Log-odds of "not missed" of an ask in a session yet to come, form and oddity drawn anew. */
  logOdds(question: LegQuestion, random: Random): number;
  readonly lastForm: number;
  readonly gap: number;
}

export interface SimulatedDog {
  readonly legs: readonly LegResult[];
  readonly truth: SimulatedTruth;
}

/** One dog's truth at one skill: ability and weights, without the kennel's. */
interface Departure {
  readonly b: Float64Array;
  atMs: number;
  gained: number;
  waiting: string | null;
}

/** What is common to the dogs of a simulated kennel. */
export interface SimulatedKennel {
  readonly blocks: ReadonlyMap<Skill, Float64Array>;
  readonly gapCentre: number;
}

/** Draws a kennel from the priors. */
export function simulateKennel(random: Random, priors: AbilityPriors): SimulatedKennel {
  const blocks = new Map<Skill, Float64Array>();
  for (const skill of SIMULATED_SKILLS) {
    const b = Float64Array.from([
      priors.abilityMean + priors.kennelAbilitySd * random.normal(),
      ...DEMANDS.map((name) => priors.weightMean[name] + priors.kennelWeightSd * random.normal()),
    ]);
    blocks.set(skill, b);
  }
  return { blocks, gapCentre: priors.gapCentre + priors.gapCentreSd * random.normal() };
}

/**
 * A dog's career drawn from the very model that the filter assumes (for calibration: Talts2018), with
 * the walk, the gain, the form of the day and oddities: `sessions` sessions three days apart.
 */
export function simulateDog(
  dog: string,
  kennel: SimulatedKennel,
  random: Random,
  priors: AbilityPriors,
  sessions: number,
  legsPerSession: number,
): SimulatedDog {
  const departures = new Map<Skill, Departure>();
  const odd = new Map<string, number>();
  const walk = Math.sqrt;
  let general = priors.generalSd * random.normal();
  let generalAtMs = START_MS;
  let form = 0;
  let gap = 0;
  do gap = kennel.gapCentre + priors.gapDogSd * random.normal();
  while (gap < 0.45 || gap > 2.45);

  const at = (skill: Skill, atMs: number): Departure => {
    let d = departures.get(skill);
    if (d === undefined) {
      const b = Float64Array.from({ length: DEMANDS.length + 1 }, (_, j) =>
        j === 0 ? priors.dogAbilitySd * random.normal() : priors.dogWeightSd * random.normal(),
      );
      d = { b, atMs, gained: 0, waiting: null };
      departures.set(skill, d);
    }
    const days = Math.min(priors.walkDaysAtMost, (atMs - d.atMs) / MS_PER_DAY);
    d.b.forEach((value, j) => {
      const perDay = j === 0 ? priors.abilityWalkPerDay : priors.weightWalkPerDay;
      d.b[j] = value + walk(days * perDay) * random.normal();
    });
    d.atMs = atMs;
    const generalDays = Math.min(priors.walkDaysAtMost, (atMs - generalAtMs) / MS_PER_DAY);
    general += walk(generalDays * priors.generalWalkPerDay) * random.normal();
    generalAtMs = atMs;
    return d;
  };
  const payOut = (d: Departure, session: string | null) => {
    if (d.waiting === null || d.waiting === session) return;
    d.b[0]! += priors.gainPerSession * priors.gainFading ** d.gained;
    d.gained += 1;
    d.waiting = null;
  };
  const without = (d: Departure, question: LegQuestion): number => {
    const common = kennel.blocks.get(question.skill)!;
    const x = demandVector(question.skill, question.ask, question.context);
    const demands = x.reduce((sum, value, j) => sum - value * (common[j + 1]! + d.b[j + 1]!), 0);
    return common[0]! + d.b[0]! + general + demands;
  };

  const legs: LegResult[] = [];
  let atMs = START_MS;
  for (let s = 0; s < sessions; s++) {
    const session = `${dog} ${s}`;
    form = priors.formSd * random.normal();
    for (let k = 0; k < legsPerSession; k++) {
      atMs = START_MS + s * 3 * MS_PER_DAY + k * 60_000;
      const skill = SIMULATED_SKILLS[random.below(SIMULATED_SKILLS.length)]!;
      const ask = ASKS[random.below(ASKS.length)]!;
      const context = { ...EASY_CONTEXT, earlierSessionsOnGround: s % 4, repsSinceBreak: k % 12 };
      const question = { dog, skill, session, atMs, ask, context };
      const d = at(skill, atMs);
      payOut(d, session);
      d.waiting = session;
      const key = oddKey(skill, ask);
      if (!odd.has(key)) odd.set(key, priors.oddSd * random.normal());
      const eta = without(d, question) + form + odd.get(key)!;
      const u = random.uniform();
      const grade: Grade = u < logistic(eta - gap) ? 'good' : u < logistic(eta) ? 'fair' : 'missed';
      legs.push({ ...question, grade, weight: 1 });
    }
  }
  const truth: SimulatedTruth = {
    ability: (skill) => {
      const d = at(skill, atMs);
      payOut(d, null);
      return kennel.blocks.get(skill)![0]! + d.b[0]! + general;
    },
    logOdds: (question, chance) => {
      const d = at(question.skill, question.atMs);
      payOut(d, null);
      const key = oddKey(question.skill, question.ask);
      const oddity = odd.get(key) ?? priors.oddSd * chance.normal();
      return without(d, question) + priors.formSd * chance.normal() + oddity;
    },
    lastForm: form,
    gap,
  };
  return { legs, truth };
}

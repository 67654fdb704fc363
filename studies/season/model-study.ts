import {
  type AbilityPriors,
  createAbilityFilter,
  EASY_CONTEXT,
  type LegResult,
  shippedPriors,
} from '@sedgeline/engine/ability';
import { seededRandom } from '@sedgeline/engine/numeric';
import { evenly, forecastGoal, gainShares, type SeasonQuestion } from '@sedgeline/engine/season';
import { diceNamed } from '../careers/dice.ts';
import { MODEL_SKILLS, ModelDog } from './model-dog.ts';
import { type ForecastOutcome, readyWeek } from './ready-week.ts';

const WEEKS = 26;
/** Sessions of the record, legs of each, sessions a week then and after. */
const SESSIONS = 24;
const LEGS = 9;
const PER_WEEK = 2;
/** What is wanted of each ask above what is stated of it: the forecaster's own figure, so that nothing of the truth chooses the goals. */
const ABOVE = [0.02, 0.06, 0.12] as const;

/** A way of stating when a goal is reached, from the same question. */
export type Forecaster = (question: SeasonQuestion, seed: number) => ForecastOutcome['forecast'];
export const ourForecaster: Forecaster = (question, seed) => forecastGoal(question, seededRandom(seed));

/** Takes every variance of the state for a fraction of what it is, and walk and doubt of the gain for nothing: sure of
 * what it can't know. */
export function overconfident(fraction: number): Forecaster {
  return (question, seed) => {
    const priors: AbilityPriors = {
      ...question.priors,
      abilityWalkPerDay: 0,
      weightWalkPerDay: 0,
      generalWalkPerDay: 0,
    };
    const { snapshot } = question;
    const { state } = structuredClone(snapshot) as {
      state: {
        kennel: { cov: Float64Array }[];
        dogs: Map<
          string,
          {
            general: { variance: number };
            skills: ({ cov: Float64Array } | null)[];
            odd: Map<string, { variance: number }>;
          }
        >;
      };
    };
    const shrink = (cov: Float64Array) => {
      for (let k = 0; k < cov.length; k++) cov[k]! *= fraction;
    };
    for (const { cov } of state.kennel) shrink(cov);
    for (const dog of state.dogs.values()) {
      dog.general.variance *= fraction;
      for (const odd of dog.odd.values()) odd.variance *= fraction;
      for (const skill of dog.skills) if (skill !== null) shrink(skill.cov);
    }
    const sure = { form: 'ability-2', priors: JSON.stringify(priors), state };
    const { sessionDays, share } = question.work;
    const work = { sessionDays, share };
    return forecastGoal({ ...question, priors, snapshot: sure, work }, seededRandom(seed));
  };
}

/** One dog by the model's law: a record, a goal, forecasts of it, and the week in which the truth reached it. */
export function modelOutcomes(
  seed: number,
  forecasters: readonly Forecaster[],
  futures: number,
): ForecastOutcome[] {
  const dice = diceNamed(`season model ${seed}`);
  // What a session is worth to it is any of those that the forecast weighs, alike likely.
  const { times } = dice.pick(gainShares([], shippedPriors));
  const gainPerSession = times * shippedPriors.gainPerSession;
  const dog = new ModelDog({ ...shippedPriors, gainPerSession }, dice);
  const legs: LegResult[] = [];
  for (let n = 0; n < SESSIONS; n++) {
    if (n > 0) dog.pass(7 / PER_WEEK);
    legs.push(...dog.works(LEGS));
  }
  const filter = createAbilityFilter();
  for (const leg of legs) filter.observe(leg);
  const goals = [{ distanceM: 20 }, { distanceM: 30, temptation: 'placed-dummy', cover: 1 }] as const;
  const skills = MODEL_SKILLS.slice(0, 1 + (seed % 2));
  const above = dice.pick(ABOVE);
  const asks = skills.map((skill, n) => {
    const context = { ...EASY_CONTEXT, daysSinceWorked: dog.daysSinceWorked(skill) };
    const ask = goals[n]!;
    const stated = filter.forecast({ dog: 'd', skill, session: null, atMs: dog.atMs, ask, context });
    return { skill, ask, context, wanted: Math.min(0.97, stated.chance.good + above) };
  });
  const question: SeasonQuestion = {
    snapshot: filter.snapshot(),
    priors: shippedPriors,
    recalibration: null,
    dog: 'd',
    asks,
    atMs: dog.atMs,
    work: { sessionDays: evenly(PER_WEEK), share: () => 1, gains: gainShares(legs, shippedPriors) },
    weeks: WEEKS,
    futures,
  };
  const truth = readyWeek(
    lived(dog, dice.uniform(), asks),
    asks.map(({ wanted }) => wanted),
  );
  return forecasters.map((forecaster) => ({ forecast: forecaster(question, seed), truth }));
}

/** The true chances at the ends of the weeks to come, sessions evenly apart from a phase on. */
function lived(dog: ModelDog, phase: number, asks: SeasonQuestion['asks']): number[][] {
  const look = () =>
    asks.map(({ skill, ask }) => dog.chanceOfGood(skill as (typeof MODEL_SKILLS)[number], ask));
  const chances = [look()];
  let day = 0;
  let next = (7 * phase) / PER_WEEK;
  for (let week = 1; week <= WEEKS; week++) {
    for (; next <= 7 * week; next += 7 / PER_WEEK) {
      dog.pass(next - day);
      day = next;
      dog.works(LEGS);
    }
    dog.pass(7 * week - day);
    day = 7 * week;
    chances.push(look());
  }
  return chances;
}

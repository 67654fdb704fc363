import { createKennel, forecastOfGoal } from '@sedgeline/projections';
import type { Ask, Skill } from '../careers/ask.ts';
import { figuresOf } from '../careers/ask.ts';
import { calendarOf } from '../careers/calendar.ts';
import type { CareerFact, MechanismName } from '../careers/career.ts';
import { type Dice, diceNamed } from '../careers/dice.ts';
import { exemplar } from '../careers/exemplar.ts';
import { FactWriter } from '../careers/fact-writer.ts';
import { linearOperator } from '../careers/linear-operator.ts';
import type { Mind } from '../careers/mind.ts';
import { playSession } from '../careers/play-session.ts';
import { practiceCurve } from '../careers/practice-curve.ts';
import { threshold } from '../careers/threshold.ts';
import { POLICIES, Trainer } from '../careers/trainer.ts';
import { type ForecastOutcome, readyWeek } from './ready-week.ts';

const DAY_MS = 86_400_000;
const START_MS = Date.UTC(2024, 2, 1);
const MONTH_DAYS = 30.4375;
const WEEKS = 26;
const SESSIONS_BEFORE = 40;
/** More than come in half a year. */
const SESSIONS_AFTER = 90;
const BY_NAME = {
  'linear-operator': linearOperator,
  threshold,
  exemplar,
  'practice-curve': practiceCurve(null),
};

const GOALS: readonly (readonly { readonly skill: Skill; readonly ask: Ask }[])[] = [
  [{ skill: 'stop', ask: { distanceM: 25, wayFraction: 0.5, temptation: 'placed-dummy' } }],
  [{ skill: 'line', ask: { distanceM: 50, temptation: 'placed-dummy', cover: 1 } }],
  [{ skill: 'recall', ask: { distanceM: 40, distraction: 1 } }],
  [
    { skill: 'stop', ask: { distanceM: 30, wayFraction: 0.5 } },
    { skill: 'cast-right', ask: { distanceM: 30, castM: 20 } },
  ],
  [
    { skill: 'line', ask: { distanceM: 40, temptation: 'placed-dummy' } },
    { skill: 'stop', ask: { distanceM: 20, wayFraction: 0.5, temptation: 'post' } },
  ],
];
const ABOVE = [0.02, 0.06, 0.12] as const;

interface Life {
  readonly facts: readonly CareerFact[];
  /** End of the last session of the record. */
  readonly atMs: number;
  /** True chances of good at the ends of the weeks after it, by week, then by ask. */
  readonly chances: readonly (readonly number[])[];
}

/** Plays one dog's work: a record, and the half year after it, looked at week by week. */
function live(mechanism: MechanismName, seed: number, goal: (typeof GOALS)[number]): Life {
  const policy = POLICIES[seed % POLICIES.length]!;
  const dice = (name: string): Dice => diceNamed(`season ${mechanism} ${seed} ${name}`);
  const mind: Mind = BY_NAME[mechanism](dice('kennel'))(dice('mind'));
  const trainer = new Trainer(policy, dice('trainer'), 0);
  const about = dice('about');
  const ageDays = MONTH_DAYS * about.between(9, 30);
  const writer = new FactWriter(`${mechanism.slice(0, 2)}${seed}`);
  const grounds = ['home', 'field', 'wood'];
  for (const ground of grounds)
    writer.write('ground-added', START_MS, { ground, name: `Invented ${ground}` });
  const born = new Date(START_MS - ageDays * DAY_MS).toISOString().slice(0, 10);
  writer.write('dog-added', START_MS + 1000, { dog: 'd', name: 'Invented dog', born });
  const life = { truths: new Map(), expectations: new Map(), writer };
  const { spoils, clean, repeats, breaks } = policy;
  const handler = { spoils, spoiltStops: 0, clean, repeats, breaks };
  const sessions = SESSIONS_BEFORE + SESSIONS_AFTER;
  const days = calendarOf(dice('calendar'), {
    sessions,
    firstDay: 0,
    grounds: grounds.length,
    reps: [6, 12],
  });
  const throws = dice('throws');
  const visits = grounds.map(() => 0);
  const ageAt = (day: number) => (ageDays + day) / MONTH_DAYS;
  let next = 0;
  const playNext = () => {
    const { day, ground, reps } = days[next]!;
    playSession(life, {
      dog: 'd',
      mind,
      trainer,
      handler,
      dice: throws,
      name: `s${next}`,
      number: next,
      ground: grounds[ground]!,
      visits: visits[ground]!++,
      reps,
      day,
      startMs: START_MS + day * DAY_MS + 9 * 3_600_000,
      ageMonths: ageAt(day),
    });
    next += 1;
  };
  while (next < SESSIONS_BEFORE) playNext();
  const facts = writer.inTimeOrder();
  const atMs = Date.parse(facts.at(-1)!.at);
  const chances: number[][] = [];
  for (let week = 0; week <= WEEKS; week++) {
    const day = (atMs - START_MS) / DAY_MS + 7 * week;
    while (next < sessions && days[next]!.day + 0.5 <= day) playNext();
    const situation = { day, visits: 20, repsSinceBreak: 0, ageMonths: ageAt(day) };
    chances.push(
      goal.map(
        ({ skill, ask }) =>
          mind.chances({ ...situation, skill, figures: figuresOf(skill, ask) }).formFree.good,
      ),
    );
  }
  return { facts, atMs, chances };
}

/** One career by a mechanism that is not the model, through the whole program: forecast at the end of the record, and what came. */
export function careerOutcome(mechanism: MechanismName, seed: number): ForecastOutcome {
  const goal = GOALS[seed % GOALS.length]!;
  const { facts, atMs, chances } = live(mechanism, seed, goal);
  const kennel = createKennel();
  kennel.add(facts);
  const { record } = kennel;
  const timeline = kennel.timeline();
  const above = ABOVE[seed % ABOVE.length]!;
  const at = { session: null, ground: null, atMs, repsSinceBreak: 0 };
  const asks = goal.map(({ skill, ask }) => {
    const stated = timeline.filter.forecast(timeline.question('d', skill, ask, at, record));
    return { skill, ask, chance: Math.min(0.97, stated.chance.good + above) };
  });
  const view = forecastOfGoal(
    record,
    timeline,
    { goal: 'g', dog: 'd', name: 'Aim', by: null, asks },
    { atMs, seed, perWeek: null },
  );
  if (view.kind !== 'forecast') throw new RangeError(`forecast: expected one, got ${view.why}`);
  const truth = readyWeek(
    chances,
    asks.map(({ chance }) => chance),
  );
  return { forecast: view.forecast, truth };
}

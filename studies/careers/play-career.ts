import { calendarOf } from './calendar.ts';
import type { Career, CareerFact, CareerSpec, MechanismName } from './career.ts';
import { type Dice, diceNamed } from './dice.ts';
import { exemplar } from './exemplar.ts';
import { FactWriter } from './fact-writer.ts';
import { linearOperator } from './linear-operator.ts';
import type { Mechanism } from './mind.ts';
import type { Planted } from './pattern.ts';
import { playSession } from './play-session.ts';
import { practiceCurve } from './practice-curve.ts';
import { threshold } from './threshold.ts';
import { Trainer } from './trainer.ts';

const BY_NAME: Readonly<Record<MechanismName, (planted: Planted | null) => Mechanism>> = {
  'linear-operator': () => linearOperator,
  threshold: () => threshold,
  exemplar: () => exemplar,
  'practice-curve': practiceCurve,
};

const BIG_STEPS = 0.5;
const SPOILT_STOPS = 0.3;
const START_MS = Date.UTC(2024, 2, 1);
const DAY_MS = 86_400_000;
const MONTH_DAYS = 30.4375;

/** Plays the working life of a kennel from its spec: facts in time order, and what was true of every leg. */
export function playCareer(spec: CareerSpec): Career {
  if (spec.planted !== null && spec.mechanism !== 'practice-curve')
    throw new RangeError(`planted: expected mechanism practice-curve, got ${spec.mechanism}`);
  // The dice are named without what is planted, so that the career without it has the same dogs, days and trainer.
  const { mechanism, policy, seed, planted } = spec;
  const dice = (name: string): Dice => diceNamed(`${mechanism} ${policy.name} ${seed} ${name}`);
  const writer = new FactWriter(`${mechanism.slice(0, 2)}${seed}`);
  const newDog = BY_NAME[mechanism](planted)(dice('kennel'));
  const names = Array.from({ length: spec.grounds }, (_, n) => `ground-${n}`);
  for (const ground of names) writer.write('ground-added', START_MS, { ground, name: `Invented ${ground}` });
  const life = { truths: new Map(), expectations: new Map(), writer };
  const handler = {
    spoils: policy.spoils,
    spoiltStops: planted?.pattern === 'late-whistle' ? Math.min(0.9, SPOILT_STOPS * planted.size) : 0,
    clean: policy.clean,
    repeats: policy.repeats,
    breaks: policy.breaks,
  };
  const bigSteps = planted?.pattern === 'too-big-steps' ? Math.min(1, BIG_STEPS * planted.size) : 0;
  for (let n = 0; n < spec.dogs; n++) {
    const about = dice(`about dog ${n}`);
    const dog = `dog-${n}`;
    const ageDays = MONTH_DAYS * about.between(7, 30);
    const firstDay = n * about.below(40);
    const born = new Date(START_MS + (firstDay - ageDays) * DAY_MS).toISOString().slice(0, 10);
    writer.write('dog-added', START_MS + 1000 + n, { dog, name: `Invented dog ${n}`, born });
    const mind = newDog(dice(`mind of dog ${n}`));
    const trainer = new Trainer(policy, dice(`trainer of dog ${n}`), bigSteps);
    const hours = 8 + 0.75 * n;
    const throws = dice(`throws of dog ${n}`);
    const visits = names.map(() => 0);
    const days = calendarOf(dice(`calendar of dog ${n}`), { ...spec, firstDay });
    days.forEach(({ day, ground, reps }, session) => {
      playSession(life, {
        dog,
        mind,
        trainer,
        handler,
        dice: throws,
        name: `${dog}-s${session}`,
        number: session,
        ground: names[ground]!,
        visits: visits[ground]!++,
        reps,
        day,
        startMs: START_MS + day * DAY_MS + hours * 3_600_000,
        ageMonths: (ageDays + day - firstDay) / MONTH_DAYS,
      });
    });
  }
  const facts: readonly CareerFact[] = writer.inTimeOrder();
  return { spec, facts, truths: life.truths, expectations: life.expectations };
}

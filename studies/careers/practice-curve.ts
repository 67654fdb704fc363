import type { Skill } from './ask.ts';
import { type Chances, chancesOf, IDLE_EXPECTATION, type Mechanism, mixed, type Situation } from './mind.ts';
import type { Planted } from './pattern.ts';
import { bySkill, type Traits, type Trouble, traitsAround, troublesOf } from './traits.ts';

/** What each trouble at its full size costs in readiness; distance goes by its logarithm. Our judgement, 2026. */
const COSTS: Readonly<Record<Exclude<Trouble, 'distance'>, number>> = {
  way: 1.6,
  pull: 2.2,
  apart: 0.8,
  cover: 1.4,
  distraction: 1.7,
  off: 1.1,
  cast: 1.4,
  others: 1.2,
  narrow: 1.2,
  blind: 0.7,
  wait: 0.9,
  obstacle: 1.6,
  wind: 0.4,
  new: 0.4,
  tired: 0.4,
  young: 0.5,
};
const MOOD_HALF_RANGE = 0.5;
const MOODS = [-0.8, -0.4, 0, 0.4, 0.8];
/** Share of the way that the value of "the whistle comes" goes at each send (Rescorla and Wagner's learning rate). */
const EXPECTATION_RATE = 0.25;

/** Distribution function of Gumbel's law: slow to rise, quick to fall; no logistic. */
const gumbel = (x: number) => Math.exp(-Math.exp(-x));

function costOf(at: Situation, traits: Traits): number {
  const much = troublesOf(at.figures, at);
  let cost = 0.5 * traits.distance * Math.log(at.figures.distanceM / 5);
  for (const [trouble, full] of Object.entries(COSTS) as [Trouble, number][])
    cost += full * traits[trouble] * much[trouble];
  return cost;
}

/** What the planted pattern takes from readiness; `expected` is how surely the dog looks for the whistle. */
function plantedCost(planted: Planted, at: Situation, expected: number): number {
  const { pattern, size } = planted;
  if (pattern === 'one-sided') return at.skill === `cast-${planted.weakSide}` ? size : 0;
  if (pattern === 'only-at-home') return 1.3 * size * 0.75 ** at.visits;
  if (pattern === 'distance-wall') return at.figures.distanceM > planted.wallM ? 1.5 * size : 0;
  if (pattern === 'tires-late') return 0.22 * size * Math.max(0, at.repsSinceBreak - 7);
  if (pattern !== 'expects-the-whistle') return 0;
  if (at.skill === 'line') return 0.6 * size * expected;
  return at.skill === 'stop' ? -0.6 * size * expected : 0;
}

/**
 * Practice by a logarithm of the legs done (the law of practice, Newell1981), Gumbel's law for the chance, an even mood of
 * the day, and a value of "the whistle comes" learnt by `V += rate (came - V)` (rescorla1972). One of the dog's patterns may be
 * planted; the handler's two are played by the trainer.
 */
export function practiceCurve(planted: Planted | null): Mechanism {
  return (kennel) => {
    const shared = { traits: traitsAround(kennel, 0.15), skills: bySkill(kennel, 0.3) };
    return (dog) => {
      const traits = traitsAround(dog, 0.3, shared.traits);
      const own = bySkill(dog, 0.45);
      const able = 2.9 + 0.4 * dog.normal();
      const gain = dog.between(0.35, 0.75);
      const second = dog.between(0.6, 1.3);
      const practice = new Map<Skill, { legs: number; day: number }>();
      let mood = 0;
      let expected = 0;
      const at = (margin: number): Chances => {
        const notMissed = gumbel(margin);
        return chancesOf(notMissed, gumbel(margin - second) / notMissed);
      };
      return {
        wakes() {
          mood = dog.between(-MOOD_HALF_RANGE, MOOD_HALF_RANGE);
        },
        chances(situation) {
          const { skill, day } = situation;
          const known = practice.get(skill);
          const idle = known === undefined ? 0 : Math.max(0, day - known.day);
          const won = gain * Math.log(1 + (known?.legs ?? 0) / 8) - 0.12 * Math.log(1 + idle / 7);
          const plain = able + shared.skills[skill] + own[skill] + won - costOf(situation, traits);
          const margin = plain - (planted === null ? 0 : plantedCost(planted, situation, expected));
          const formFree = mixed(
            MOODS.map((m) => [1 / MOODS.length, at(margin + m * MOOD_HALF_RANGE)] as const),
          );
          return { given: at(margin + mood), formFree, unplanted: at(plain + mood) };
        },
        learns(situation, grade) {
          const legs = (practice.get(situation.skill)?.legs ?? 0) + (grade === 'missed' ? 0.5 : 1);
          practice.set(situation.skill, { legs, day: situation.day });
        },
        sent(stopped) {
          expected += EXPECTATION_RATE * ((stopped ? 1 : 0) - expected);
        },
        expectation() {
          const looksForIt =
            planted?.pattern === 'expects-the-whistle' ? 0.5 * planted.size * expected ** 2 : 0;
          return { given: Math.min(0.95, IDLE_EXPECTATION + looksForIt), unplanted: IDLE_EXPECTATION };
        },
      };
    };
  };
}

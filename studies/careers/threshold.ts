import type { AskFigures, Skill } from './ask.ts';
import { type Chances, chancesOf, IDLE_EXPECTATION, type Mechanism, mixed, type Situation } from './mind.ts';
import { bySkill, type Traits, traitsAround, troublesOf } from './traits.ts';

/** Distribution function of Student's t with 3 degrees: tails far heavier than the logistic's. */
function studentThree(x: number): number {
  const u = x / Math.sqrt(3);
  return 0.5 + (u / (1 + u * u) + Math.atan(u)) / Math.PI;
}

/** What of a new ground is left at the first, second, third .. visit: a step, and then gone. */
const NEWNESS = [0.7, 0.4];
const HINGE_REPS = 9;
const OFF_DAY_CHANCE = 0.18;
const FORGETS_IN_DAYS = 250;

/** How hard the ask pulls against the cue. Late, far and tempting work on each other. Our judgement, 2026. */
function pullAgainst(figures: AskFigures, at: Situation, traits: Traits): number {
  const much = troublesOf(figures, at);
  const far = Math.log(1 + figures.distanceM / 15);
  const drawn = figures.pull * traits.pull;
  return (
    0.65 * far * traits.distance +
    0.2 * drawn +
    0.5 * drawn * much.way * traits.way * Math.min(2, 0.4 + figures.distanceM / 50) +
    0.8 * much.apart * traits.apart * (figures.pull >= 2 ? 1.3 : 0.6) +
    1.2 * much.cover * traits.cover +
    1.5 * much.distraction * traits.distraction * (figures.pull >= 3 ? 1.5 : 1) +
    1.0 * much.off * traits.off +
    1.1 * much.cast * traits.cast +
    0.8 * much.others * traits.others +
    1.1 * much.narrow * traits.narrow +
    0.6 * much.blind * traits.blind +
    0.5 * much.wait * traits.wait * (1 + 0.2 * figures.pull) +
    1.2 * much.obstacle * traits.obstacle +
    0.4 * much.wind * traits.wind +
    (NEWNESS[at.visits] ?? 0) * traits.new +
    0.14 * Math.max(0, at.repsSinceBreak - HINGE_REPS) * traits.tired +
    0.5 * much.young * traits.young
  );
}

/**
 * Readiness against temptation: a leg is done when readiness, less the pull of everything else and a heavy-tailed noise,
 * is above a threshold, and done well above a second. Readiness saturates with practice. Some days are off days: all or
 * nothing, not a bell curve. Tiredness sets in at a hinge.
 */
export const threshold: Mechanism = (kennel) => {
  const shared = { traits: traitsAround(kennel, 0.15), skills: bySkill(kennel, 0.35) };
  return (dog) => {
    const traits = traitsAround(dog, 0.3, shared.traits);
    const own = bySkill(dog, 0.5);
    const able = 2.9 + 0.45 * dog.normal();
    const learns = { most: dog.between(1.2, 2.6), legs: dog.between(40, 120) };
    const second = dog.between(0.7, 1.4);
    const offDay = dog.between(0.8, 1.6);
    const practice = new Map<Skill, { legs: number; day: number }>();
    let isOff = false;
    const practised = ({ skill, day }: Situation) => {
      const known = practice.get(skill);
      return known === undefined ? 0 : known.legs * Math.exp(-Math.max(0, day - known.day) / FORGETS_IN_DAYS);
    };
    const at = (margin: number): Chances => {
      const notMissed = studentThree(margin / 0.8);
      return chancesOf(notMissed, studentThree((margin - second) / 0.8) / notMissed);
    };
    return {
      wakes() {
        isOff = dog.chance(OFF_DAY_CHANCE);
      },
      chances(situation) {
        const { skill, figures } = situation;
        const won = learns.most * (1 - Math.exp(-practised(situation) / learns.legs));
        const margin =
          able + shared.skills[skill] + own[skill] + won - pullAgainst(figures, situation, traits);
        const [on, off] = [at(margin), at(margin - offDay)];
        const given = isOff ? off : on;
        const formFree = mixed([
          [1 - OFF_DAY_CHANCE, on],
          [OFF_DAY_CHANCE, off],
        ]);
        return { given, formFree, unplanted: given };
      },
      learns(situation, grade) {
        const legs = practised(situation) + (grade === 'missed' ? 0.3 : 1);
        practice.set(situation.skill, { legs, day: situation.day });
      },
      sent() {},
      expectation: () => ({ given: IDLE_EXPECTATION, unplanted: IDLE_EXPECTATION }),
    };
  };
};

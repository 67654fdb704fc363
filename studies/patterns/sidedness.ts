import { figuresOf } from '../careers/ask.ts';
import type { CareerSpec } from '../careers/career.ts';
import { diceNamed } from '../careers/dice.ts';
import { practiceCurve } from '../careers/practice-curve.ts';

/**
 * How much readier the career's dog is to the right than to the left before any practice, in units of readiness, what was planted
 * and what it was born with together: each skill of such a dog has a level of its own, so that a career in which nothing was
 * planted may well have a weaker side. Read from the dog itself, woken with the dice of its career.
 */
export function sidednessOf(spec: CareerSpec): number {
  const name = `${spec.mechanism} ${spec.policy.name} ${spec.seed}`;
  const dog = practiceCurve(spec.planted)(diceNamed(`${name} kennel`))(diceNamed(`${name} mind of dog 0`));
  const readiness = (skill: 'cast-left' | 'cast-right') => {
    const situation = {
      skill,
      figures: figuresOf(skill, {}),
      day: 0,
      visits: 20,
      repsSinceBreak: 0,
      ageMonths: 30,
    };
    // The chance is Gumbel's law of readiness, exp(-exp(-x)).
    return -Math.log(-Math.log(1 - dog.chances(situation).given.missed));
  };
  return readiness('cast-right') - readiness('cast-left');
}

import type { Dice } from '../careers/dice.ts';
import { dayFactor, PLACES, type Place, playLeg, type ReachDog } from './reach-dog.ts';

/** What a handler says of a dog before there is a record: the farthest it lately went well, 0 for never, and the strangest ground. */
export interface Told {
  readonly farthestM: number;
  readonly place: Place;
}

export type Teller = (dog: ReachDog, dice: Dice) => Told;

const LATELY = 12;
const FARTHEST_M = 400;

/** Remembers a dozen legs of the last weeks, and of those that went well the farthest and the strangest, give or take a tenth. */
const honest: Teller = (dog, dice) => {
  let farthestM = 0;
  let strangest = 0;
  for (let leg = 0; leg < LATELY; leg++) {
    const draw = dice.uniform();
    const place = PLACES[draw < 0.4 ? 0 : draw < 0.8 ? 1 : 2]!;
    const distanceM = dog.reachM * Math.exp(-0.2 + 0.5 * dice.normal());
    if (playLeg(dog, distanceM, place, dayFactor(dice), dice) !== 'good') continue;
    farthestM = Math.max(farthestM, distanceM);
    strangest = Math.max(strangest, PLACES.indexOf(place));
  }
  return told(farthestM * Math.exp(0.1 * dice.normal()), PLACES[strangest]!);
};

function told(farthestM: number, place: Place): Told {
  return { farthestM: Math.min(FARTHEST_M, farthestM), place };
}

function stretching(factor: number): Teller {
  return (dog, dice) => {
    const { farthestM, place } = honest(dog, dice);
    return told(farthestM * factor, place);
  };
}

/** Says anything: log-uniform over two metres to four hundred, and any ground, whatever the dog is. */
const wild: Teller = (_dog, dice) =>
  told(2 * Math.exp(dice.uniform() * Math.log(FARTHEST_M / 2)), dice.pick(PLACES));

/** The control: every dog gets the same, so that what it gains is a mere lift of all chances and no knowledge of any dog. */
const sameOfAll: Teller = () => told(15, 'known');

/** The handlers of the study. */
export const TELLERS: Readonly<Record<string, Teller>> = {
  honest,
  modest: stretching(0.6),
  optimistic: stretching(1.8),
  boasting: stretching(4),
  wild,
  'same of all': sameOfAll,
};

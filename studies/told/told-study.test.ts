import { shippedPriors } from '@sedgeline/engine/ability';
import { describe, expect, it } from 'vitest';
import { diceNamed } from '../careers/dice.ts';
import { firstLegs, startOf } from './first-legs.ts';
import { reachDog, trueChances } from './reach-dog.ts';
import { TELLERS } from './tellers.ts';
import { toldFigures } from './told-figures.ts';

const START = { stoodAt: 0.8, errorSd: 2 };

describe('the dogs of the study', () => {
  it('miss half of their legs at their reach but for lapses, and hardly any at their feet', () => {
    const dog = reachDog(diceNamed('reach'), 20);
    expect(trueChances(dog, dog.reachM, 'home', 1).notMissed).toBeCloseTo(0.97 / 2, 12);
    expect(trueChances(dog, 0, 'home', 1)).toEqual({ notMissed: 0.97, good: 0.97 });
    expect(trueChances(dog, 15, 'new', 1).notMissed).toBeLessThan(trueChances(dog, 15, 'home', 1).notMissed);
  });

  it('are told of by their reach, and by the wild one by anything', () => {
    const toldBy = (teller: string) =>
      Array.from({ length: 400 }, (_, n) => {
        const { dog } = firstLegs(`told test ${n}`);
        return [
          Math.log(dog.reachM),
          Math.log(1 + TELLERS[teller]!(dog, diceNamed(`teller ${n}`)).farthestM),
        ];
      });
    expect(correlation(toldBy('honest'))).toBeGreaterThan(0.8);
    // The standard error of a correlation of nothing is 0.05.
    expect(Math.abs(correlation(toldBy('wild')))).toBeLessThan(0.2);
  });
});

describe('the start', () => {
  it('is the one worked out by hand: 40 m on new ground', () => {
    // z = 0.8 + 3 doublings x 0.5 + 1 x 0.5 = 2.8; V = 0.25 + 0.36 + 0.49 = 1.1; K = 1.1/5.1; K (2.8 - 1.8) = 0.2157.
    expect(shippedPriors).toMatchObject({ kennelAbilitySd: 0.5, dogAbilitySd: 0.6, generalSd: 0.7 });
    expect(startOf({ farthestM: 40, place: 'new' }, START)).toBeCloseTo(1.1 / 5.1, 12);
  });

  it('helps honest words and is spoiled little by wild ones', () => {
    // Seeds that the long form does not use; 300 dogs: standard error of the figures about 0.002 nats.
    const { figures } = toldFigures(300, 9, [START]);
    const soon = Object.fromEntries(figures[0]!.tellers.map((one) => [one.teller, one.soon]));
    expect(soon.honest).toBeLessThan(0);
    expect(soon.wild).toBeLessThan(0.01);
    expect(figures[0]!.apart.most).toBeLessThan(0.08);
  });
});

function correlation(pairs: readonly (readonly number[])[]): number {
  const mean = (of: number) => pairs.reduce((sum, pair) => sum + pair[of]!, 0) / pairs.length;
  const means = [mean(0), mean(1)];
  const product = (a: number, b: number) =>
    pairs.reduce((sum, pair) => sum + (pair[a]! - means[a]!) * (pair[b]! - means[b]!), 0);
  return product(0, 1) / Math.sqrt(product(0, 0) * product(1, 1));
}

import { describe, expect, it } from 'vitest';
import type { CareerSpec } from '../careers/career.ts';
import { plantedPair } from '../careers/kennels.ts';
import { ourDetector, rawShareDetector } from './detectors.ts';
import { judgeDetectors, keepsWanted, WANTED } from './judge-detector.ts';
import { careersOf, type DogRecordSeen, recordOf } from './planted-record.ts';
import { sidednessOf } from './sidedness.ts';

/** Few careers, so that the suite stays quick; seeds that the long form does not use. */
const CAREERS = 5;
const SEED = 50_000;

/** P(Bin(n, p) <= k), summed out. */
function binomialCdf(k: number, n: number, p: number): number {
  let chance = (1 - p) ** n;
  let total = 0;
  for (let j = 0; j <= k; j++) {
    total += chance;
    chance *= ((n - j) / (j + 1)) * (p / (1 - p));
  }
  return total;
}
/** A count this far out would come once in a thousand honest runs: under it something is broken. */
const UNLIKELY = 0.001;

const seen = new Map<string, DogRecordSeen>();
const read = (spec: CareerSpec): DogRecordSeen => {
  const name = JSON.stringify(spec);
  const known = seen.get(name) ?? recordOf(spec);
  seen.set(name, known);
  return known;
};

describe('patterns where they were planted', () => {
  const [ours, raw] = judgeDetectors([ourDetector, rawShareDetector], CAREERS, SEED, read);

  it.each(ours!)('$pattern is found in $found of $careers, claimed in $claimed', ({ found, claimed }) => {
    expect(binomialCdf(found, CAREERS, WANTED.found)).toBeGreaterThan(UNLIKELY);
    expect(1 - binomialCdf(claimed - 1, CAREERS, WANTED.claimed)).toBeGreaterThan(UNLIKELY);
  });

  it('over all patterns claims no more than 5 in 100 of the careers without', () => {
    const claimed = ours!.reduce((sum, score) => sum + score.claimed, 0);
    const tail = 1 - binomialCdf(claimed - 1, 7 * CAREERS, WANTED.claimed);
    expect(tail).toBeGreaterThan(UNLIKELY);
  });

  it('a detector that is wrong on purpose does not pass: it claims where nothing is', () => {
    const claimed = raw!.reduce((sum, score) => sum + score.claimed, 0);
    expect(1 - binomialCdf(claimed - 1, 7 * CAREERS, WANTED.claimed)).toBeLessThan(UNLIKELY);
    expect(raw!.every(keepsWanted)).toBe(false);
  });
});

describe('the careers that count', () => {
  it('sides: planted and born together, read from the dog', () => {
    const { having, lacking } = careersOf('one-sided', 5, SEED);
    for (const spec of having) {
      expect(Math.abs(sidednessOf(spec))).toBeGreaterThanOrEqual(0.9);
      expect(Math.abs(sidednessOf(spec))).toBeLessThanOrEqual(1.2);
    }
    for (const spec of lacking) expect(Math.abs(sidednessOf(spec))).toBeLessThanOrEqual(0.25);
    // What was planted is the difference between the two of a pair: a size of 1 to the weak side.
    const pair = plantedPair('one-sided', 1, 4);
    expect(pair.with.planted?.weakSide).toBe('left');
    expect(sidednessOf(pair.with) - sidednessOf(pair.without)).toBeCloseTo(1, 6);
  });
});

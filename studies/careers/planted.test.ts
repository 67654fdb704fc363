import { describe, expect, it } from 'vitest';
import type { Career } from './career.ts';
import { diceNamed } from './dice.ts';
import { EXERCISES } from './exercises.ts';
import { plantedPair } from './kennels.ts';
import { PATTERNS, type Pattern } from './pattern.ts';
import { playCareer } from './play-career.ts';
import { LADDER_CLIMBER, Trainer } from './trainer.ts';

const SEEDS = [2, 3, 6];
const pairs = (pattern: Pattern) =>
  SEEDS.map((seed) => {
    const specs = plantedPair(pattern, 1, seed);
    return { planted: playCareer(specs.with), plain: playCareer(specs.without) };
  });

interface WrittenLeg {
  readonly skill: string;
  readonly ask: { readonly distanceM?: number };
  readonly grade: string;
  readonly cause?: string;
}

/** Of each leg: what the pattern took from the chance of not missed, and whether the leg is one that it touches. */
function takenBy(career: Career): {
  readonly leg: WrittenLeg;
  readonly taken: number;
  readonly newGround: boolean;
  readonly sinceBreak: number;
}[] {
  const seen = new Set<string>();
  let newGround = false;
  let sinceBreak = 0;
  return career.facts.flatMap(({ kind, body }) => {
    if (kind === 'session-opened') {
      newGround = !seen.has(String(body.ground));
      seen.add(String(body.ground));
    }
    if (kind === 'session-opened' || kind === 'break-taken') sinceBreak = 0;
    if (kind !== 'rep-recorded') return [];
    const before = sinceBreak++;
    return (body.legs as WrittenLeg[]).map((leg, n) => {
      const { given, unplanted } = career.truths.get(`${String(body.rep)}/${n}`)!;
      return { leg, taken: given.missed - unplanted.missed, newGround, sinceBreak: before };
    });
  });
}

const mean = (list: readonly number[]) => list.reduce((sum, x) => sum + x, 0) / list.length;
/** Least mean chance that a pattern of size 1 takes from the legs it touches (what `Planted` says, by less for easy legs). */
const MATTERS = 0.08;

describe('a planted pattern is in the truths of the career that has it, and in no other', () => {
  it.each(PATTERNS)('%s: the matching career has nothing of it', (pattern) => {
    for (const { planted, plain } of pairs(pattern)) {
      expect(planted.spec).toEqual({ ...plain.spec, planted: planted.spec.planted });
      expect(planted.spec.planted?.pattern).toBe(pattern);
      expect(planted.facts).not.toEqual(plain.facts);
      expect(takenBy(plain).every(({ taken }) => taken === 0)).toBe(true);
      expect([...plain.expectations.values()].every((one) => one.given === one.unplanted)).toBe(true);
    }
  });

  type Taken = ReturnType<typeof takenBy>[number];
  const touched: readonly [Pattern, (one: Taken, career: Career) => boolean][] = [
    ['one-sided', ({ leg }, { spec }) => leg.skill === `cast-${spec.planted?.weakSide}`],
    ['only-at-home', ({ newGround }) => newGround],
    ['distance-wall', ({ leg }, { spec }) => (leg.ask.distanceM ?? 5) > spec.planted!.wallM],
    ['tires-late', ({ sinceBreak }) => sinceBreak >= 10],
  ];
  it.each(touched)('%s takes its part where it touches', (pattern, touches) => {
    for (const { planted } of pairs(pattern)) {
      const legs = takenBy(planted);
      const inside = legs.filter((one) => touches(one, planted));
      expect(inside.length).toBeGreaterThan(15);
      expect(mean(inside.map(({ taken }) => taken))).toBeGreaterThan(MATTERS);
      expect(legs.every(({ taken }) => taken >= 0)).toBe(true);
      if (pattern === 'one-sided' || pattern === 'distance-wall')
        expect(legs.every((one) => touches(one, planted) || one.taken === 0)).toBe(true);
    }
  });

  it('expects-the-whistle: sends hang back, stops come easier, lines go worse', () => {
    for (const { planted } of pairs('expects-the-whistle')) {
      const legs = takenBy(planted);
      const of = (skill: string) =>
        mean(legs.filter(({ leg }) => leg.skill === skill).map(({ taken }) => taken));
      expect(of('line')).toBeGreaterThan(0.01);
      // Stops that are done 9 times in 10 have little to gain.
      expect(of('stop')).toBeLessThan(-0.005);
      expect(of('recall')).toBe(0);
      expect(mean([...planted.expectations.values()].map(({ given }) => given))).toBeGreaterThan(0.1);
    }
  });

  it("late-whistle: 3 stops in 10 are the handler's mistake, 1 in 20 where it was not planted", () => {
    const share = (careers: readonly Career[]) => {
      const stops = careers.flatMap(takenBy).filter(({ leg }) => leg.skill === 'stop');
      return stops.filter(({ leg }) => leg.cause === 'handler').length / stops.length;
    };
    const both = pairs('late-whistle');
    // Some 900 stops each: a standard error of 0.015 and less, held within 0.05. Ordinary: 0.7 of the spoilt 5 in 100.
    expect(share(both.map(({ planted }) => planted))).toBeCloseTo(0.3 + 0.7 * 0.05 * 0.7, 1);
    expect(share(both.map(({ plain }) => plain))).toBeLessThan(0.07);
  });

  it('too-big-steps: several things by two steps each after a success, instead of one by one', () => {
    const work = EXERCISES.find(({ name }) => name === 'straight')!;
    const raisedBy = (bigSteps: number) => {
      const trainer = new Trainer(
        { ...LADDER_CLIMBER, patience: 1, below: 0 },
        diceNamed('a trainer'),
        bigSteps,
      );
      trainer.notes(work, 'well');
      return Object.values(trainer.asks(work, false)).reduce((sum, step) => sum + step, 0);
    };
    expect(raisedBy(0)).toBe(1);
    expect(raisedBy(1)).toBeGreaterThanOrEqual(2);
  });
});

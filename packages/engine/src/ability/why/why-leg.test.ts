import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { logistic } from '../../numeric/logistic.ts';
import { type Ask, GRADES, HANDLER_PLACES, TEMPTATIONS } from '../ask.ts';
import { EASY_CONTEXT } from '../ask-range.ts';
import { DEMANDS } from '../demands.ts';
import { createAbilityFilter } from '../filter.ts';
import type { AbilityFilter } from '../forecaster.ts';
import type { LegContext, LegQuestion, LegResult } from '../leg.ts';
import type { WellDone } from './base.ts';
import { chancePerLogit } from './chance-parts.ts';
import { fieldOf } from './factor-fields.ts';
import { whyLeg } from './why-leg.ts';

const leg = (ask: Ask, context: Partial<LegContext> = {}): LegQuestion => ({
  dog: 'wren',
  skill: 'stop',
  session: 's',
  atMs: 0,
  ask,
  context: { ...EASY_CONTEXT, ...context },
});
const wentWell = (question: LegQuestion, rep = 'r0'): WellDone => ({
  rep,
  leg: 0,
  question,
  grade: 'good',
});

describe('why a leg was as hard as it was', () => {
  it('names every change with its value then and now, and its part by the table of the design', () => {
    // No record: weights are the table's. 10 to 40 m is two doublings at 0.5; a post is half a step at 0.5, standing apart
    // from beside half a step at 0.4; two dummies are log2 3 at 0.4; a second session on a ground halves newness at 0.5.
    const then = leg({ distanceM: 10, handlerPlace: 'beside' }, { earlierSessionsOnGround: 0 });
    const now = leg(
      { distanceM: 40, temptation: 'post', handlerPlace: 'apart', otherDummies: 2 },
      { earlierSessionsOnGround: 1 },
    );
    const { step } = whyLeg(createAbilityFilter(), now, [wentWell(then)]);
    expect(step?.base.rep).toBe('r0');
    const want = [
      { factor: 'distance', field: 'distanceM', from: 10, to: 40, logit: 1 },
      { factor: 'others', field: 'otherDummies', from: 0, to: 2, logit: 0.4 * Math.log2(3) },
      { factor: 'temptation', field: 'temptation', from: 'none', to: 'post', logit: 0.25 },
      { factor: 'handler', field: 'handlerPlace', from: 'beside', to: 'apart', logit: 0.2 },
      { factor: 'newness', field: 'earlierSessionsOnGround', from: 0, to: 1, logit: -0.25 },
    ];
    expect(step?.changed.map(({ chance: _, ...change }) => change)).toEqual(
      want.map((change) => ({ ...change, logit: expect.closeTo(change.logit, 12) })),
    );
    expect(step?.stretch.mean).toBeCloseTo(1 + 0.4 * Math.log2(3) + 0.25 + 0.2 - 0.25, 12);
    // Prior sds of a weight: kennel 0.15 and dog 0.14, independent.
    const away = Math.hypot(2, Math.log2(3), 0.5, 0.5, 0.5);
    expect(step?.stretch.sd).toBeCloseTo(Math.hypot(0.15, 0.14) * away, 12);
    // Harder took some chance away, easier gave some back.
    for (const change of step?.changed ?? []) expect(Math.sign(change.chance)).toBe(-Math.sign(change.logit));
  });

  it('has no step with no success before, and a chance all the same', () => {
    const filter = createAbilityFilter();
    const now = leg({ distanceM: 60 });
    expect(whyLeg(filter, now, [])).toEqual({
      chanceBefore: filter.forecast(now).chance.good,
      interval90: filter.forecast(now).interval90.good,
      step: null,
    });
  });

  it('an ask that is the same again has nothing changed and the same chance', () => {
    const now = leg({ distanceM: 30 });
    const { step, chanceBefore } = whyLeg(createAbilityFilter(), now, [wentWell(now)]);
    expect(step).toMatchObject({ stretch: { mean: 0, sd: 0 }, changed: [], odd: { logit: 0 } });
    expect(step?.chanceAtBase).toBe(chanceBefore);
  });

  it('has a field for every demand but the product of two', () => {
    expect(DEMANDS.filter((demand) => fieldOf(demand) === null)).toEqual(['late-temptation']);
  });
});

describe('chances that are corrected by a curve', () => {
  /** Half the log-odds of good: a curve of slope 0.5, as a record might earn. */
  const halved = (chance: number) => logistic(0.5 * Math.log(chance / (1 - chance)));

  it('parts follow the stated chances, and what is left over stays small', () => {
    const plain = createAbilityFilter();
    const corrected: AbilityFilter = {
      forecast: (question) => {
        const forecast = plain.forecast(question);
        const good = halved(forecast.chance.good);
        return { ...forecast, chance: { missed: 1 - good, fair: 0, good } };
      },
      observe: (result) => plain.observe(result),
      tell: (dog, skill, atMs, level) => plain.tell(dog, skill, atMs, level),
      toldLeft: (dog, skill) => plain.toldLeft(dog, skill),
      because: (question) => plain.because(question),
      ability: (dog, skill, atMs) => plain.ability(dog, skill, atMs),
      form: (dog, session) => plain.form(dog, session),
      gap: (dog) => plain.gap(dog),
      stretch: (now, then) => plain.stretch(now, then),
      chain: (questions) => plain.chain(questions),
      snapshot: () => plain.snapshot(),
    };
    const now = leg({ distanceM: 40, cover: 2 });
    const then = leg({ distanceM: 10 });
    const one = whyLeg(plain, now, [wentWell(then)]);
    const other = whyLeg(corrected, now, [wentWell(then)]);
    expect(other.chanceBefore).toBeCloseTo(halved(one.chanceBefore), 12);
    expect(other.step?.chanceAtBase).toBeCloseTo(halved(one.step?.chanceAtBase ?? 0), 12);
    // Every part is stretched alike: as the whole way between the two chances is.
    const stretched =
      (other.chanceBefore - (other.step?.chanceAtBase ?? 0)) /
      (one.chanceBefore - (one.step?.chanceAtBase ?? 0));
    const parts = (reasons: typeof one) => reasons.step?.changed.map(({ chance }) => chance) ?? [];
    parts(other).forEach((part, n) => {
      expect(part).toBeCloseTo(parts(one)[n]! * stretched, 9);
    });
    expect(other.step?.sureness.chance).toBeCloseTo((one.step?.sureness.chance ?? 0) * stretched, 9);
    // The same ask again: the curve's own slope, and nothing to part.
    expect(whyLeg(corrected, now, [wentWell(now)]).step?.sureness.chance).toBeCloseTo(0, 12);
  });
});

describe('what a logit is worth in chance', () => {
  const slope = (mean: number) => logistic(mean) * logistic(-mean);

  it('where all is known: the rise of the logistic over the way between the two', () => {
    const rise = logistic(2) - logistic(-1);
    expect(chancePerLogit({ mean: 2, variance: 0 }, { mean: -1, variance: 0 })).toBeCloseTo(rise / 3, 12);
  });

  it('where the two are the same: the slope of the logistic there', () => {
    // Central difference over 0.1: off by f'''/24 h^2 at most, 0.125/24 x 0.01 = 5.3e-5.
    for (const mean of [-2, 0, 0.7]) {
      const at = { mean, variance: 0 };
      expect(Math.abs(chancePerLogit(at, at) - slope(mean))).toBeLessThan(6e-5);
    }
  });

  it('does not jump where the means come together (1e-3 apart), and stays between 0 and 0.25', () => {
    const from = { mean: 0.4, variance: 0.9 };
    const near = chancePerLogit(from, { mean: 0.4 + 0.99e-3, variance: 1.4 });
    const apart = chancePerLogit(from, { mean: 0.4 + 1.01e-3, variance: 1.4 });
    // The wider difference bends away by 5.3e-5; the narrow one carries the quadrature's rounding over 1e-3.
    expect(Math.abs(near - apart)).toBeLessThan(1e-4);
    fc.assert(
      fc.property(
        fc.record({ a: MOMENTS, b: MOMENTS }),
        ({ a, b }) => chancePerLogit(a, b) >= 0 && chancePerLogit(a, b) <= 0.25 + 1e-6,
      ),
    );
  });
});

const MOMENTS = fc.record({
  mean: fc.double({ min: -8, max: 8, noNaN: true }),
  variance: fc.double({ min: 0, max: 6, noNaN: true }),
});
const ASK: fc.Arbitrary<Ask> = fc.record(
  {
    distanceM: fc.double({ min: 0, max: 400, noNaN: true }),
    wayFraction: fc.double({ min: 0, max: 1, noNaN: true }),
    temptation: fc.constantFrom(...TEMPTATIONS),
    handlerPlace: fc.constantFrom(...HANDLER_PLACES),
    cover: fc.double({ min: 0, max: 3, noNaN: true }),
    blind: fc.boolean(),
    gapDeg: fc.double({ min: 0, max: 180, noNaN: true }),
    otherDummies: fc.nat(6),
  },
  { requiredKeys: [] },
);
const CONTEXT: fc.Arbitrary<LegContext> = fc.record({
  earlierSessionsOnGround: fc.option(fc.nat(9)),
  repsSinceBreak: fc.nat(20),
  daysSinceWorked: fc.nat(90),
  stopsRunning: fc.nat(8),
  ageMonths: fc.option(fc.nat(60)),
});
const LEG = fc.record({ ask: ASK, context: CONTEXT, grade: fc.constantFrom(...GRADES) });

describe('laws of why', () => {
  it('parts add up: logits to the stretch, chances to the difference of the two chances; nothing is NaN', () => {
    fc.assert(
      fc.property(fc.array(LEG, { minLength: 1, maxLength: 14 }), LEG, (history, last) => {
        const filter = createAbilityFilter();
        const successes: WellDone[] = [];
        for (const [n, { ask, context, grade }] of history.entries()) {
          const question = { ...leg(ask, context), atMs: n * 86_400_000, session: `s${n % 4}` };
          filter.observe({ ...question, grade, weight: 1 } satisfies LegResult);
          if (grade === 'good') successes.push(wentWell(question, `r${n}`));
        }
        const now = { ...leg(last.ask, last.context), atMs: 20 * 86_400_000 };
        const { step, chanceBefore } = whyLeg(filter, now, successes);
        expect(step === null).toBe(successes.length === 0);
        if (step === null) return;
        const sum = (of: 'logit' | 'chance') => step.changed.reduce((so, part) => so + part[of], 0);
        // Twenty sums of numbers up to about 10: rounding under 1e-12.
        expect(sum('logit')).toBeCloseTo(step.stretch.mean, 11);
        expect(step.chanceAtBase + sum('chance') + step.odd.chance + step.sureness.chance).toBeCloseTo(
          chanceBefore,
          12,
        );
        const numbers = [step.stretch.sd, step.odd.logit, step.odd.chance, step.sureness.chance];
        for (const number of [...numbers, ...step.intervalAtBase90]) expect(number).not.toBeNaN();
      }),
      { numRuns: 150 },
    );
  });

  it('changes nothing in the filter', () => {
    const filter = createAbilityFilter();
    const then = leg({ distanceM: 10 });
    filter.observe({ ...then, grade: 'good', weight: 1, session: 's' });
    const before = structuredClone(filter.snapshot());
    whyLeg(filter, leg({ distanceM: 40 }), [wentWell(then)]);
    expect(filter.snapshot()).toEqual(before);
  });
});

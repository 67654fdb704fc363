import type { Ask } from '@sedgeline/engine/ability';
import type { Fact } from '@sedgeline/journal';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { whyAnswer } from '../answers/why-answer.ts';
import { createKennel } from '../kennel-of-facts.ts';
import { journalArbitrary } from '../record/journal-arbitrary.fixture.ts';
import { foldRecord } from '../record/record-builder.ts';
import { AbilityTimeline } from '../timeline/ability-timeline.ts';
import { busyKennel } from '../timeline/busy-kennel.fixture.ts';
import { TrainingDay, type WrittenLeg } from '../work/training-day.fixture.ts';
import { whyInKennel, whyOfRep } from './why-of-rep.ts';

const stop = (distanceM: number, more: Partial<WrittenLeg> = {}, ask: Ask = {}): WrittenLeg => ({
  skill: 'stop',
  ask: { distanceM, ...ask },
  ...more,
});

function day(): TrainingDay {
  return new TrainingDay('2026-03-01T09:00:00Z').dog('wren').open('s1', 'wren');
}
function kennelOf(facts: readonly Fact[]) {
  const kennel = createKennel();
  kennel.add(facts);
  return kennel;
}
/** Why the last rep of a day went as it did. */
function whyLast(written: TrainingDay) {
  const record = foldRecord(written.facts);
  const last = record.sessions.flatMap(({ reps }) => reps).at(-1);
  const view = whyOfRep(record, last?.rep ?? '');
  if (view === null) throw new Error('expected the last rep to stand');
  return view;
}

describe('why a rep went as it did', () => {
  it('a first leg has no base, no step, and a chance all the same', () => {
    const { legs, repNumber } = whyLast(day().rep([stop(60, { grade: 'missed' })]));
    expect(repNumber).toBe(1);
    expect(legs).toHaveLength(1);
    expect(legs[0]).toMatchObject({ step: null, verdict: 'not-yet', grade: 'missed', cause: 'dog' });
    expect(legs[0]!.chanceBefore).toBeGreaterThan(0);
    expect(legs[0]!.chanceBefore).toBeLessThan(1);
  });

  it('is held against the nearest of what went well, not against the last rep', () => {
    const written = day()
      .rep([stop(20)])
      .rep([stop(40, { grade: 'missed' })])
      .rep([stop(5)])
      .rep([stop(24, { grade: 'missed' })]);
    const [leg] = whyLast(written).legs;
    expect(leg?.step?.since).toMatchObject({ rep: 'rep-2', leg: 0, repNumber: 1, ask: { distanceM: 20 } });
    const [distance, ...rest] = leg?.step?.changed ?? [];
    expect(distance).toMatchObject({ factor: 'distance', from: 20, to: 24 });
    // The minute since the last stop is a lapse too: log2(1 + 1/1440/7) = 1.4e-4 at 0.15, and whatever was learnt of 0.15.
    expect(rest.map(({ factor }) => factor)).toEqual(['lapse']);
    expect(rest[0]!.logit).toBeLessThan(1e-4);
    expect(leg?.step?.chanceAtBase).toBeGreaterThan(leg?.chanceBefore ?? 1);
  });

  it('counts fair ones while there is no good one, and none of them after', () => {
    const fair = day().rep([stop(20, { grade: 'fair' })]);
    expect(whyLast(fair.rep([stop(22, { grade: 'missed' })])).legs[0]?.step?.since.rep).toBe('rep-2');
    fair.rep([stop(8)]).rep([stop(22, { grade: 'missed' })]);
    expect(whyLast(fair).legs[0]?.step?.since.rep).toBe('rep-4');
  });

  it('passes over what was struck, and says nothing of it', () => {
    const written = day()
      .rep([stop(10)])
      .rep([stop(20)])
      .write('rep-struck', { rep: 'rep-3' })
      .rep([stop(20, { grade: 'missed' })]);
    expect(whyLast(written).legs[0]?.step?.since.rep).toBe('rep-2');
    expect(whyOfRep(foldRecord(written.facts), 'rep-3')).toBeNull();
  });

  it('has nothing to say of a rep nobody recorded, or whose session is not there', () => {
    const written = day().write('rep-recorded', { rep: 'lost', session: 'elsewhere', legs: [] });
    for (const rep of ['lost', 'never']) expect(whyOfRep(foldRecord(written.facts), rep)).toBeNull();
  });

  it('answers for a rep with no leg', () => {
    expect(whyLast(day().rep([])).legs).toEqual([]);
  });

  it('takes an earlier leg of the same rep as the base of a later one', () => {
    const { legs } = whyLast(day().rep([stop(10), stop(30, { grade: 'missed' })]));
    expect(legs[1]?.step?.since).toMatchObject({ rep: 'rep-2', leg: 0, repNumber: 1 });
  });

  it('tells what the moment added: new ground, a long time since', () => {
    const written = new TrainingDay('2026-03-01T09:00:00Z')
      .dog('wren')
      .write('ground-added', { ground: 'acre', name: 'Long Acre' })
      .open('s1', 'wren', { ground: 'acre' })
      .rep([stop(20)])
      .wait(14 * 24 * 60)
      .open('s2', 'wren', { ground: 'acre' })
      .rep([stop(20, { grade: 'missed' })]);
    const changed = whyLast(written).legs[0]?.step?.changed ?? [];
    expect(changed.map(({ factor, field, from }) => ({ factor, field, from }))).toEqual([
      { factor: 'lapse', field: 'daysSinceWorked', from: 0 },
      { factor: 'newness', field: 'earlierSessionsOnGround', from: 0 },
    ]);
    expect(changed[0]!.to).toBeCloseTo(14 + 2 / 1440, 9);
    // Ground seen once before is easier than new ground; so long without work is harder.
    expect(changed.map(({ logit }) => Math.sign(logit))).toEqual([1, -1]);
  });
});

describe('verdicts from a record', () => {
  const known = () => {
    const written = day();
    for (let n = 0; n < 6; n++) written.rep([stop(10)]);
    return written;
  };
  const far: Ask = { wayFraction: 0.7, temptation: 'thrown-dummy', handlerPlace: 'apart' };

  it('too big a step: far more than anything before, and missed', () => {
    const [leg] = whyLast(known().rep([stop(80, { grade: 'missed' }, far)])).legs;
    expect(leg?.verdict).toBe('too-big-a-step');
    expect(leg?.step?.stretch.mean).toBeGreaterThan(1.2);
    expect(leg?.chanceBefore).toBeLessThan(0.6);
  });

  it("the handler's and the set-up's as they were given, a fair one too", () => {
    for (const cause of ['handler', 'setup'] as const) {
      const [leg] = whyLast(known().rep([stop(80, { grade: 'fair', cause }, far)])).legs;
      expect(leg?.verdict).toBe(cause);
    }
  });

  it('better than hoped: the same step, taken', () => {
    expect(whyLast(known().rep([stop(80, {}, far)])).legs[0]?.verdict).toBe('better-than-hoped');
    expect(whyLast(known().rep([stop(10)])).legs[0]?.verdict).toBe('as-hoped');
  });

  it('bad luck on the day, and the form of the day once the rest of it is known', () => {
    const SKILLS = ['stop', 'recall', 'steady', 'delivery', 'heel'] as const;
    const written = new TrainingDay('2026-03-01T09:00:00Z').dog('wren');
    for (let session = 0; session < 12; session++) {
      written.open(`s${session}`, 'wren').wait(24 * 60);
      for (let n = 0; n < 10; n++) written.rep([{ skill: SKILLS[n % 5]! }]);
    }
    written.open('poor', 'wren').rep([{ skill: 'stop', grade: 'missed' }]);
    const rep = `rep-${written.facts.length - 1}`;
    const first = whyLast(written);
    expect(first.rep).toBe(rep);
    expect(first.legs[0]?.verdict).toBe('bad-luck');
    for (let n = 0; n < 20; n++) written.rep([{ skill: SKILLS[n % 5]!, grade: 'missed' }]);
    const later = whyOfRep(foldRecord(written.facts), rep);
    expect(later?.form.poorProbability).toBeGreaterThan(0.8);
    expect(later?.legs[0]?.verdict).toBe('form');
    // A good day after it leaves that day's form as it was.
    written.open('better', 'wren').wait(24 * 60);
    for (let n = 0; n < 20; n++) written.rep([{ skill: SKILLS[n % 5]! }]);
    expect(whyOfRep(foldRecord(written.facts), rep)).toEqual(later);
  });
});

describe('laws of why from a record', () => {
  it('states the chance that replay states, of every leg of every rep that stands', () => {
    fc.assert(
      fc.property(journalArbitrary, (facts) => {
        const record = foldRecord(facts);
        const timeline = new AbilityTimeline();
        timeline.update(record);
        const replayed = timeline.stated.map(({ rep, leg, forecast }) => [
          `${rep}/${leg}`,
          forecast.chance.good,
        ]);
        const explained = record.sessions
          .flatMap(({ reps }) => reps)
          .flatMap(({ rep }) =>
            whyOfRep(record, rep)!.legs.map((leg) => [`${rep}/${leg.leg}`, leg.chanceBefore]),
          );
        expect(new Map(explained as [string, number][])).toEqual(new Map(replayed as [string, number][]));
      }),
      { numRuns: 100 },
    );
  });

  it("does so where the kennel's own priors and a recalibration are in use, from the first rep of a session on", () => {
    // 3 dogs and 400 legs: enough for a fit and for a look at the recalibration, both at the beginning of a session.
    const kennel = kennelOf(busyKennel(7, 3, 14));
    const { stated, own } = kennel.timeline();
    expect(own.fits).toHaveLength(1);
    const replayed = new Map(stated.map(({ rep, forecast }) => [rep, forecast.chance.good]));
    const firsts = kennel.record.sessions.slice(-14).map(({ reps }) => reps[0]!.rep);
    for (const rep of firsts) {
      expect(whyInKennel(kennel, rep)?.legs[0]?.chanceBefore).toBe(replayed.get(rep));
    }
  });

  it('later legs change nothing but the form', () => {
    const leg = fc.record({
      skill: fc.constantFrom('stop' as const, 'line' as const),
      ask: fc.record({ distanceM: fc.integer({ min: 5, max: 80 }) }),
      grade: fc.constantFrom('good' as const, 'fair' as const, 'missed' as const),
    });
    const legs = fc.array(leg, { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(legs, legs, fc.boolean(), (earlier, later, isNewSession) => {
        const written = day();
        for (const one of earlier) written.rep([one]);
        const before = whyLast(written);
        if (isNewSession) written.wait(24 * 60).open('s2', 'wren');
        for (const one of later) written.rep([one]);
        const after = whyOfRep(foldRecord(written.facts), before.rep);
        const withoutForm = (view: typeof after) => ({
          ...view,
          form: null,
          legs: view?.legs.map((one) => ({ ...one, verdict: null })),
        });
        expect(withoutForm(after)).toEqual(withoutForm(before));
        if (isNewSession) expect(after).toEqual(before);
      }),
      { numRuns: 60 },
    );
  });

  it('asked of a kennel it says the same, of an old rep and of one of the last session, and leaves the kennel as it was', () => {
    fc.assert(
      fc.property(journalArbitrary, (facts) => {
        const kennel = kennelOf(facts);
        const stated = () => kennel.timeline().stated.map(({ forecast }) => forecast);
        const before = structuredClone(stated());
        for (const { rep } of kennel.record.sessions.flatMap(({ reps }) => reps)) {
          expect(whyInKennel(kennel, rep)).toEqual(whyOfRep(kennel.record, rep));
        }
        expect(stated()).toEqual(before);
        const scratch = new AbilityTimeline();
        scratch.update(kennel.record);
        expect(kennel.timeline().filter.snapshot()).toEqual(scratch.filter.snapshot());
      }),
      { numRuns: 60 },
    );
  });
});

describe('the answer of why', () => {
  it("has the contract's fields, null where there was no success before, and names what was asked for", () => {
    const written = day().rep([stop(10, { grade: 'missed' })]);
    expect(whyAnswer(kennelOf(written.facts), 'rep-2')).toMatchObject({
      rep: 'rep-2',
      legs: [{ leg: 0, stretch: null, since: null, changed: [], verdict: 'not-yet' }],
    });
    written.rep([stop(10)]).rep([stop(20, { grade: 'missed' })]);
    const answer = whyAnswer(kennelOf(written.facts), 'rep-4');
    expect(answer?.legs[0]).toMatchObject({
      leg: 0,
      since: { rep: 'rep-3' },
      changed: [{ factor: 'distance', from: 10, to: 20 }],
      verdict: 'not-yet',
    });
    // Two legs a minute apart: nothing but the distance and that minute (under 1e-4 logits).
    expect(answer?.legs[0]?.stretch).toBeCloseTo(answer?.legs[0]?.changed[0]?.logit ?? Number.NaN, 3);
    expect(whyAnswer(kennelOf(written.facts), 'rep-9')).toBeNull();
  });
});

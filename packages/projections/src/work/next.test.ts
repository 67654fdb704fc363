import type { Ask } from '@sedgeline/engine/ability';
import type { NextAnswer, PlannedRep } from '@sedgeline/engine/session';
import { describe, expect, it } from 'vitest';
import { createKennel } from '../kennel-of-facts.ts';
import { TrainingDay } from './training-day.fixture.ts';

/** The rules below are common practice, no source (product rules of the trade; counted as in the plan's contract). */
const next = (day: TrainingDay, seed = 0): NextAnswer => {
  const kennel = createKennel();
  kennel.add(day.facts);
  const answer = kennel.next(day.session, day.atMs, seed);
  if (answer === null) throw new Error('expected the session to be there');
  return answer;
};
const rep = (answer: NextAnswer): PlannedRep => {
  if (answer.do !== 'rep') throw new Error(`expected a rep, got ${answer.do}`);
  return answer.rep;
};
const codes = (answer: NextAnswer) => answer.reasons.map((reason) => reason.code);
const askOf = (planned: PlannedRep, skill: string): Ask =>
  planned.legs.find((leg) => leg.skill === skill)?.ask ?? {};

const RECALL: Ask = { distanceM: 20 };
const STOP: Ask = { distanceM: 20, wayFraction: 0.5, temptation: 'placed-dummy' };

/** A month of recalls, of which every n-th was missed, the last one good. */
function recalls(dog: string, missEvery: number): TrainingDay {
  const day = new TrainingDay('2026-03-01T09:00:00Z').dog(dog);
  for (let session = 0; session < 8; session++) {
    day.wait(2 * 24 * 60).open(`${dog}-${session}`, dog);
    for (let n = 0; n < 6; n++) {
      day.rep([
        { skill: 'recall', ask: RECALL, grade: (session * 6 + n) % missEvery === 0 ? 'missed' : 'good' },
      ]);
    }
    day.write('session-closed', { session: day.session });
  }
  return day
    .wait(2 * 24 * 60)
    .open(`${dog}-today`, dog)
    .focus('recall');
}

describe('a new dog', () => {
  /** No way is lengthened by more at once (sizes of the steps: our judgement, 2026). */
  const STEP_M = 10;

  it('that does well is sent farther, a step at a time, before anything is hidden or another dummy put out', () => {
    for (const skill of ['stop', 'line', 'recall'] as const) {
      const day = new TrainingDay('2026-03-01T09:00:00Z').dog('new').open('first', 'new').focus(skill);
      let farthestM = 5;
      for (let n = 0; n < 9; n++) {
        const answer = next(day);
        if (answer.do !== 'rep') break;
        const { legs, clean } = answer.rep;
        for (const { ask } of legs) {
          expect(ask.distanceM ?? 0).toBeLessThanOrEqual(farthestM + STEP_M);
          if (farthestM < 20) expect(ask).not.toHaveProperty('blind');
          if (farthestM < 20) expect(ask).not.toHaveProperty('otherDummies');
        }
        farthestM = Math.max(farthestM, ...legs.map(({ ask }) => ask.distanceM ?? 0));
        day.rep(
          legs.map(({ skill: part, ask }) => ({ skill: part, ask })),
          { clean },
        );
      }
      expect(farthestM, skill).toBeGreaterThan(10);
    }
  });
});

describe('what to ask next', () => {
  it('comes from the whole record: the same last rep after different histories gets different asks, as the chances say', () => {
    const sure = rep(next(recalls('sure', 48).rep([{ skill: 'recall', ask: RECALL }])));
    const shaky = rep(next(recalls('shaky', 2).rep([{ skill: 'recall', ask: RECALL }])));
    expect(sure.legs).not.toEqual(shaky.legs);
    const hard = (planned: PlannedRep) => planned.legs[0]?.stretch ?? 0;
    expect(hard(sure)).toBeGreaterThan(0.1);
    expect(hard(shaky)).toBeLessThan(hard(sure));
    // Asked the same, the two dogs have chances as different as their histories.
    const kennel = createKennel();
    const day = recalls('sure', 48);
    kennel.add(day.facts);
    const surely = kennel.judge(
      day.session,
      { legs: [{ skill: 'recall', ask: RECALL }], clean: false, purpose: null },
      day.atMs,
    );
    const other = createKennel();
    const shakyDay = recalls('shaky', 2);
    other.add(shakyDay.facts);
    const barely = other.judge(
      shakyDay.session,
      { legs: [{ skill: 'recall', ask: RECALL }], clean: false, purpose: null },
      shakyDay.atMs,
    );
    expect(surely.rep.legs[0]!.chance.good).toBeGreaterThan(barely.rep.legs[0]!.chance.good + 0.2);
  });

  it('gives a new dog the easy end, the only fair ask, and says that nothing went well before', () => {
    const day = new TrainingDay('2026-03-01T09:00:00Z').dog('pup').open('s', 'pup').focus('stop');
    const answer = next(day);
    expect(codes(answer)).toEqual(['easy-end']);
    for (const leg of rep(answer).legs) {
      expect(leg.stretch).toBeNull();
      expect(leg.ask.distanceM ?? 5).toBe(5);
      expect(leg.ask.wayFraction ?? 0.1).toBe(0.1);
      expect(leg.ask.temptation ?? 'none').toBe('none');
    }
  });

  it('begins with something known: 85 in 100 or more not missed', () => {
    const answer = next(recalls('sure', 48));
    expect(rep(answer).purpose).toBe('check');
    expect(1 - rep(answer).legs[0]!.chance.missed).toBeGreaterThanOrEqual(0.85);
    expect(codes(answer)).toEqual(['known-first']);
  });

  it('raises one thing at a time, within reach', () => {
    for (const missEvery of [48, 7, 4]) {
      const answer = next(recalls('dog', missEvery).rep([{ skill: 'recall', ask: RECALL }]));
      const ask = askOf(rep(answer), 'recall');
      const harder = [
        (ask.distanceM ?? 5) > 20,
        (ask.distraction ?? 0) > 0,
        (ask.temptation ?? 'none') !== 'none',
        (ask.cover ?? 0) > 0,
      ].filter(Boolean);
      expect(harder.length).toBeLessThanOrEqual(1);
      for (const leg of rep(answer).legs) expect(1 - leg.chance.missed).toBeGreaterThanOrEqual(0.65);
    }
  });

  it('asks something easier after a miss: nothing harder, one thing or more easier, a better chance', () => {
    const hard: Ask = { distanceM: 40, distraction: 1 };
    const answer = next(recalls('dog', 7).rep([{ skill: 'recall', ask: hard, grade: 'missed' }]));
    const ask = askOf(rep(answer), 'recall');
    expect(rep(answer).purpose).toBe('easier');
    expect(ask.distanceM ?? 5).toBeLessThanOrEqual(40);
    expect(ask.distraction ?? 0).toBeLessThanOrEqual(1);
    expect([ask.distanceM, ask.distraction ?? 0]).not.toEqual([40, 1]);
    const reason = answer.reasons[0]!;
    expect(reason.code).toBe('easier-after-miss');
    expect(reason.chanceNow!).toBeGreaterThan(reason.chanceBefore!);
  });

  it('ends a line of work after two misses running, and does not ask that skill again that day', () => {
    const day = recalls('dog', 7);
    day.rep([{ skill: 'heel' }]).rep([{ skill: 'heel' }]);
    day
      .rep([{ skill: 'recall', ask: RECALL, grade: 'missed' }])
      .rep([{ skill: 'recall', ask: { distanceM: 10 }, grade: 'missed' }]);
    const answer = next(day);
    expect(codes(answer)[0]).toBe('two-misses-end-this');
    if (answer.do === 'rep') expect(answer.rep.legs.map((leg) => leg.skill)).not.toContain('recall');
    const later = next(day.rep([{ skill: 'heel' }]));
    if (later.do === 'rep') expect(later.rep.legs.map((leg) => leg.skill)).not.toContain('recall');
  });

  it('repeats the same ask after a miss that was not the dog, and counts it neither for nor against', () => {
    const day = recalls('dog', 7);
    day.rep([{ skill: 'recall', ask: { distanceM: 25 }, grade: 'missed', cause: 'handler' }]);
    const answer = next(day);
    expect(codes(answer)).toEqual(['repeat-set-up-better']);
    expect(askOf(rep(answer), 'recall')).toEqual({ distanceM: 25 });
    // Dog's miss, excused miss, dog's miss: two running, the excused one between them notwithstanding.
    const two = recalls('dog', 7)
      .rep([{ skill: 'recall', ask: RECALL, grade: 'missed' }])
      .rep([{ skill: 'recall', ask: RECALL, grade: 'missed', cause: 'setup' }])
      .rep([{ skill: 'recall', ask: RECALL, grade: 'missed' }]);
    expect(codes(next(two))[0]).toBe('two-misses-end-this');
  });

  it('asks for a break before twelve reps or twelve minutes have gone by without one', () => {
    const day = recalls('dog', 48);
    for (let n = 0; n < 12; n++) {
      const answer = next(day);
      if (answer.do === 'break') {
        expect(n).toBeGreaterThanOrEqual(6);
        expect(codes(answer)).toEqual(['break-due']);
        return;
      }
      day.rep([{ skill: 'recall', ask: RECALL }]);
    }
    throw new Error('no break in twelve reps');
  });

  it('ends on something good, in time, and sooner for the young', () => {
    const older = recalls('dog', 48)
      .rep([{ skill: 'recall', ask: RECALL }])
      .wait(17);
    const answer = next(older);
    expect(rep(answer).purpose).toBe('finish');
    expect(codes(answer)).toEqual(['long-enough', 'finish-well']);
    for (const leg of rep(answer).legs) expect(1 - leg.chance.missed).toBeGreaterThanOrEqual(0.85);
    older.rep([{ skill: 'recall', ask: RECALL }], { purpose: 'finish' });
    expect(next(older)).toEqual({ do: 'end', reasons: [{ code: 'end-on-good' }] });

    const young = new TrainingDay('2026-03-01T09:00:00Z')
      .dog('pup', { born: '2025-10-15' })
      .open('s', 'pup')
      .focus('recall');
    for (let n = 0; n < 4; n++) young.rep([{ skill: 'recall', ask: { distanceM: 5 } }]);
    expect(codes(next(young))).not.toContain('long-enough');
    expect(codes(next(young.wait(6)))[0]).toBe('long-enough');
  });

  it('runs sends straight through, more of them for a dog that expects the whistle, and in no fixed order', () => {
    const stops = (expecting: boolean) => {
      const day = new TrainingDay('2026-03-01T09:00:00Z').dog('dog');
      for (let session = 0; session < 6; session++) {
        day
          .wait(2 * 24 * 60)
          .open(`s-${session}`, 'dog')
          .focus('stop');
        for (let n = 0; n < 8; n++) {
          if (n % 4 === 3) {
            day.rep([{ skill: 'line', ask: { distanceM: 40 } }], {
              clean: true,
              expectation: expecting ? 'hangs-back' : 'none',
            });
          } else
            day.rep([
              { skill: 'line', ask: { distanceM: 40 } },
              { skill: 'stop', ask: STOP },
            ]);
        }
      }
      return day
        .wait(2 * 24 * 60)
        .open('today', 'dog')
        .focus('stop')
        .rep([
          { skill: 'line', ask: { distanceM: 40 } },
          { skill: 'stop', ask: STOP },
        ]);
    };
    const share = (day: TrainingDay) => {
      const kennel = createKennel();
      kennel.add(day.facts);
      let clean = 0;
      for (let seed = 0; seed < 100; seed++) {
        const answer = kennel.next(day.session, day.atMs, seed);
        if (answer?.do === 'rep' && answer.rep.purpose === 'clean') clean += 1;
      }
      return clean / 100;
    };
    const free = share(stops(false));
    const expecting = share(stops(true));
    expect(free).toBeGreaterThan(0.1);
    expect(free).toBeLessThan(0.4);
    expect(expecting).toBeGreaterThan(free + 0.15);
    expect(expecting).toBeLessThan(0.75);
  });

  it('keeps both sides even', () => {
    const day = new TrainingDay('2026-03-01T09:00:00Z').dog('dog');
    for (const skill of ['cast-left', 'cast-right'] as const) {
      day.open(`s-${skill}`, 'dog');
      for (let n = 0; n < 6; n++) day.rep([{ skill, ask: { distanceM: 10, castM: 10 } }]);
    }
    day
      .wait(24 * 60)
      .open('today', 'dog')
      .focus('cast-left')
      .rep([{ skill: 'cast-left', ask: { distanceM: 10, castM: 10 } }]);
    expect(rep(next(day)).side).toBe('right');
    day
      .rep([{ skill: 'cast-right', ask: { distanceM: 10, castM: 10 } }])
      .rep([{ skill: 'cast-right', ask: { distanceM: 10, castM: 10 } }]);
    expect(rep(next(day)).side).toBe('left');
  });

  it('gives a fall-back that is easier, for every rep', () => {
    for (const missEvery of [48, 7, 3]) {
      const answer = next(recalls('dog', missEvery).rep([{ skill: 'recall', ask: RECALL }]));
      if (answer.do !== 'rep') throw new Error('expected a rep');
      expect(answer.easier.legs[0]!.chance.good).toBeGreaterThan(answer.rep.legs[0]!.chance.good);
      expect(answer.easier.legs).toEqual(answer.rep.easier.legs);
    }
  });

  it('says the same again for the same seed, and needs no order of facts', () => {
    const day = recalls('dog', 7).rep([{ skill: 'recall', ask: RECALL }]);
    const kennel = createKennel();
    kennel.add([...day.facts].reverse());
    expect(kennel.next(day.session, day.atMs, 3)).toEqual(next(day, 3));
  });
});

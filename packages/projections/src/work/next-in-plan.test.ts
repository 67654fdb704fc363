import type { NextAnswer, Plan } from '@sedgeline/engine/session';
import { describe, expect, it } from 'vitest';
import { createKennel } from '../kennel-of-facts.ts';
import { planFor } from '../plan/plan-answer.ts';
import { DAY_MS, trainedDog } from '../plan/trained-dog.fixture.ts';
import type { TrainingDay, WrittenLeg } from './training-day.fixture.ts';

/**
 * Rules of the trade (common practice, no source): an excused miss repeats its rep; after a miss easier; two misses end the line
 * of work; short sessions end on something good.
 */
function plannedDay(minutes = 20) {
  const day = trainedDog();
  const kennel = createKennel();
  kennel.add(day.facts);
  const plan = planFor(
    kennel,
    { dog: 'wren', minutes, ground: 'home' },
    { atMs: day.atMs + DAY_MS, seed: 3 },
  );
  day.wait(24 * 60).write('session-planned', {
    plan: 'p',
    dog: 'wren',
    minutes,
    reps: plan.reps.map(({ purpose, legs }) => ({ purpose, legs: asksOf(legs) })),
    breaks: plan.breaks,
  });
  day.open('today', 'wren', { ground: 'home', plan: 'p' });
  return { day, plan };
}

const asksOf = (legs: Plan['reps'][number]['legs']) => legs.map(({ skill, ask }) => ({ skill, ask }));

function next(day: TrainingDay): NextAnswer {
  const kennel = createKennel();
  kennel.add(day.facts);
  const answer = kennel.next('today', day.atMs, 0);
  if (answer === null) throw new Error('expected an answer');
  return answer;
}

/** Does what the answer says; `grade` is given to the leg that the rep is about. */
function work(day: TrainingDay, answer: NextAnswer, change: (leg: WrittenLeg, n: number) => WrittenLeg) {
  if (answer.do !== 'rep') throw new Error(`expected a rep, got ${answer.do}`);
  const { rep } = answer;
  const legs: WrittenLeg[] = [];
  for (const [n, { skill, ask }] of rep.legs.entries()) {
    const leg = change({ skill, ask, grade: 'good' }, n);
    legs.push(leg);
    if (leg.grade === 'missed') break;
  }
  const id = `rep-${day.facts.length}`;
  day.rep(legs, {
    chain: asksOf(rep.legs),
    purpose: rep.purpose,
    clean: rep.clean,
    ...(rep.planRep === undefined ? {} : { planRep: rep.planRep }),
  });
  if (legs.length < rep.legs.length) day.write('rep-ended', { rep: id });
}

const asPlanned = (leg: WrittenLeg) => leg;
const missed = (leg: WrittenLeg, n: number): WrittenLeg =>
  n === 0 ? { ...leg, grade: 'missed', cause: 'dog' } : leg;
const codes = (answer: NextAnswer) => answer.reasons.map(({ code }) => code);

describe('the next rep of a planned session', () => {
  it('is the plan from end to end when all goes as asked, its breaks among them', () => {
    const { day, plan } = plannedDay();
    const asked: unknown[] = [];
    const breaks: number[] = [];
    for (let step = 0; step < 40; step++) {
      const answer = next(day);
      if (answer.do === 'end') {
        expect(codes(answer)).toEqual(['plan-done']);
        expect(answer.plan).toEqual({ do: 'end', done: plan.reps.length, of: plan.reps.length });
        break;
      }
      expect(answer.plan?.do).toBe('keep');
      if (answer.do === 'break') {
        breaks.push(asked.length);
        day.write('break-taken', { session: 'today', minutes: answer.minutes });
        continue;
      }
      expect(answer.rep.planRep).toBe(asked.length + 1);
      asked.push(asksOf(answer.rep.legs));
      work(day, answer, asPlanned);
    }
    expect(asked).toEqual(plan.reps.map(({ legs }) => asksOf(legs)));
    expect(breaks).toEqual(plan.breaks.map(({ afterRep }) => afterRep));
  });

  it("is the same rep again after a miss that was the handler's, and the plan waits", () => {
    const { day, plan } = plannedDay();
    work(day, next(day), asPlanned);
    work(day, next(day), (leg, n) => (n === 0 ? { ...leg, grade: 'missed', cause: 'handler' } : leg));
    const again = next(day);
    if (again.do !== 'rep') throw new Error('expected a rep');
    expect(codes(again)).toContain('repeat-set-up-better');
    expect(again.rep.planRep).toBe(2);
    expect(asksOf(again.rep.legs)).toEqual(asksOf(plan.reps[1]?.legs ?? []));
    expect(again.plan).toEqual({ do: 'keep', done: 1, of: plan.reps.length });
    work(day, again, asPlanned);
    const on = next(day);
    expect(on.do === 'rep' && on.rep.planRep).toBe(3);
  });

  it('is something easier after a miss, and then the plan goes on', () => {
    const { day } = plannedDay();
    work(day, next(day), asPlanned);
    work(day, next(day), missed);
    const easier = next(day);
    if (easier.do !== 'rep') throw new Error('expected a rep');
    expect(easier.plan?.do).toBe('adapt');
    expect(easier.rep.purpose).toBe('easier');
    expect(easier.rep.planRep).toBeUndefined();
    work(day, easier, asPlanned);
    const on = next(day);
    expect(on.do === 'rep' && on.rep.planRep).toBe(3);
  });

  it('leaves a line of work out after two misses running, and says so in one plain reason', () => {
    const { day, plan } = plannedDay();
    work(day, next(day), asPlanned);
    const second = next(day);
    const skill = second.do === 'rep' ? second.rep.legs[0]?.skill : undefined;
    work(day, second, missed);
    work(day, next(day), (leg, n) => (leg.skill === skill ? missed(leg, 0) : missed(leg, n + 1)));
    const after = next(day);
    expect(after.plan?.do).not.toBe('keep');
    expect(codes(after)).toContain('two-misses-end-this');
    for (let step = 0; step < 20; step++) {
      const answer = next(day);
      if (answer.do === 'end') return;
      if (answer.do === 'break') day.write('break-taken', { session: 'today', minutes: answer.minutes });
      else {
        expect(answer.rep.legs.map((leg) => leg.skill)).not.toContain(skill);
        work(day, answer, asPlanned);
      }
    }
    throw new Error(`expected the session of ${plan.reps.length} reps to end`);
  });

  it('goes to the finish when the time is up', () => {
    const { day, plan } = plannedDay();
    work(day, next(day), asPlanned);
    day.wait(18);
    const answer = next(day);
    expect(codes(answer)).toContain('long-enough');
    expect(answer.plan?.do).toBe('adapt');
    expect(answer.do === 'rep' && answer.rep.purpose).toBe('finish');
    expect(answer.do === 'rep' && answer.rep.planRep).toBe(plan.reps.length);
  });

  it('asks a planned rep easier when it has come out of reach, likelier than it was planned', () => {
    const day = trainedDog();
    const tooMuch = [{ skill: 'recall', ask: { distanceM: 380, distraction: 3, temptation: 'game' } }];
    day.wait(24 * 60).write('session-planned', {
      plan: 'p',
      dog: 'wren',
      minutes: 15,
      reps: [
        { purpose: 'check', legs: [{ skill: 'recall', ask: { distanceM: 20 } }] },
        { purpose: 'build', legs: tooMuch },
        { purpose: 'finish', legs: [{ skill: 'recall', ask: { distanceM: 20 } }] },
      ],
    });
    day.open('today', 'wren', { ground: 'home', plan: 'p' });
    work(day, next(day), asPlanned);
    const answer = next(day);
    if (answer.do !== 'rep') throw new Error('expected a rep');
    expect(answer.plan).toEqual({ do: 'adapt', done: 1, of: 3 });
    const [reason] = answer.reasons;
    expect(reason?.code).toBe('easier-than-planned');
    expect(reason?.chanceNow).toBeGreaterThan(reason?.chanceBefore ?? 1);
    expect(answer.rep.planRep).toBe(2);
  });

  it('chooses for itself where the plan is not on record', () => {
    const { day } = plannedDay();
    day.open('other', 'wren', { plan: 'never-made' });
    const kennel = createKennel();
    kennel.add(day.facts);
    const answer = kennel.next('other', day.atMs, 0);
    expect(answer?.do).toBe('rep');
    expect(answer?.plan).toBeUndefined();
  });

  it('says of a chain in hand whether it is worked as planned, whatever may come next', () => {
    const { day, plan } = plannedDay();
    const [first] = plan.reps;
    if (first === undefined) throw new Error('expected a rep');
    const begun = (change: (legs: readonly WrittenLeg[]) => readonly WrittenLeg[]) => {
      const kennel = createKennel();
      const chain = change(asksOf(first.legs));
      const legs = chain.slice(0, 1).map((leg) => ({ ...leg, grade: 'good' }));
      const body = { rep: 'in-hand', session: 'today', legs, chain, purpose: 'check', planRep: 1 };
      const at = new Date(day.atMs + 60_000).toISOString();
      kennel.add([...day.facts, { id: 'in-hand', kind: 'rep-recorded', at, body }]);
      return kennel.work('today', day.atMs + 120_000, 0)?.next.plan?.do;
    };
    expect(first.legs.length).toBeGreaterThan(1);
    expect(begun((legs) => legs)).toBe('keep');
    expect(begun((legs) => legs.map((leg) => ({ ...leg, ask: { ...leg.ask, cover: 1 } })))).toBe('adapt');
  });
});

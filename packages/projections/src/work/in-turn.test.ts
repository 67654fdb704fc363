import { describe, expect, it } from 'vitest';
import { createKennel } from '../kennel-of-facts.ts';
import { TrainingDay } from './training-day.fixture.ts';

const stop = { skill: 'stop', ask: { distanceM: 15, wayFraction: 0.5 } } as const;

/** Three dogs that each know a stop, then a class of the three. */
function classOfThree(): TrainingDay {
  const day = new TrainingDay('2026-03-01T08:00:00Z');
  for (const dog of ['wren', 'teal', 'snipe'])
    day.dog(dog).open(`${dog}-before`, dog).rep([stop]).rep([stop]);
  for (const dog of ['wren', 'teal', 'snipe']) day.open(`${dog}-class`, dog, { class: 'c' }).focus('stop');
  return day;
}

function kennelOf(day: TrainingDay) {
  const kennel = createKennel();
  kennel.add(day.facts);
  return kennel;
}

describe('dogs worked in turn', () => {
  it('are shown in the order in which their sessions were opened', () => {
    const day = classOfThree();
    const { inTurn } = kennelOf(day).work('teal-class', day.atMs, 0)!;
    expect(inTurn?.class).toBe('c');
    expect(inTurn?.dogs.map(({ name, reps, isOpen }) => [name, reps, isOpen])).toEqual([
      ['wren', 0, true],
      ['teal', 0, true],
      ['snipe', 0, true],
    ]);
    expect(kennelOf(day).work('teal-before', day.atMs, 0)?.inTurn).toBeNull();
  });

  it('are asked among the others that are still worked: two, then one', () => {
    const day = classOfThree();
    const crew = (d: TrainingDay) =>
      kennelOf(d)
        .work('wren-class', d.atMs, 0)!
        .asked!.legs.map(({ ask }) => ask.crew);
    expect(new Set(crew(day))).toEqual(new Set([2]));
    expect(new Set(crew(day.write('session-closed', { session: 'snipe-class' })))).toEqual(new Set([1]));
  });

  it('are asked what they know, for all the company: it is there, and nobody raised it', () => {
    const day = new TrainingDay('2026-03-01T08:00:00Z');
    for (const dog of ['wren', 'teal']) {
      day.dog(dog).open(`${dog}-before`, dog);
      for (let n = 0; n < 30; n++) day.rep([stop]);
    }
    for (const dog of ['wren', 'teal']) day.open(`${dog}-class`, dog, { class: 'c' }).focus('stop');
    const { next } = kennelOf(day).work('wren-class', day.atMs, 0)!;
    if (next.do !== 'rep') throw new Error('expected a rep');
    expect(next.reasons[0]?.code).toBe('known-first');
    // Well beyond the easy end of 5 m: the stop that went well thirty times, or one step from it.
    expect(next.rep.legs.find(({ skill }) => skill === 'stop')?.ask.distanceM).toBeGreaterThanOrEqual(10);
  });

  it('are asked with chances that know the company: more dogs about, no likelier', () => {
    const day = classOfThree();
    const chance = (session: string) =>
      kennelOf(day).judge(session, { legs: [stop], clean: false, purpose: null }, day.atMs).rep.legs[0]!
        .chance.good;
    const alone = new TrainingDay('2026-03-01T09:30:00Z');
    alone.facts.push(...day.facts);
    const opened = { id: 'alone', kind: 'session-opened', at: '2026-03-01T09:40:00Z' };
    alone.facts.push({ ...opened, body: { session: 'wren-alone', dog: 'wren' } });
    const lone = kennelOf(alone).judge('wren-alone', { legs: [stop], clean: false, purpose: null }, day.atMs);
    expect(chance('wren-class')).toBeLessThan(lone.rep.legs[0]!.chance.good);
    expect(lone.rep.legs[0]!.ask.crew).toBeUndefined();
  });

  it('count as their own a share of the minutes: of 30 among three dogs 10, so no end and no break is due yet', () => {
    const day = classOfThree().wait(27);
    expect(kennelOf(day).work('wren-class', day.atMs, 0)?.next.do).toBe('rep');
    const alone = new TrainingDay('2026-03-01T08:00:00Z').dog('wren').open('s', 'wren').rep([stop]).wait(27);
    expect(kennelOf(alone).work('s', alone.atMs, 0)?.next.reasons[0]?.code).toBe('long-enough');
  });

  it('keep their reps apart: what one does is in its own session alone', () => {
    const day = classOfThree();
    day.write('rep-recorded', { rep: 'x', session: 'teal-class', legs: [{ ...stop, grade: 'good' }] });
    const kennel = kennelOf(day);
    expect(kennel.work('teal-class', day.atMs, 0)?.done.map(({ rep }) => rep)).toEqual(['x']);
    expect(kennel.work('wren-class', day.atMs, 0)?.done).toEqual([]);
    expect(kennel.work('wren-class', day.atMs, 0)?.inTurn?.dogs.map(({ reps }) => reps)).toEqual([0, 1, 0]);
  });
});

import type { Fact } from '@sedgeline/journal';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chanceAnswer, nextAnswer, replayAnswer, standingAnswer } from '../answers/answers.ts';
import { factsKnownAt } from '../answers/known-at.ts';
import { createKennel } from '../kennel-of-facts.ts';
import { planFor } from '../plan/plan-answer.ts';
import { progressOfDog } from '../progress/progress-of-dog.ts';
import { whyInKennel } from '../why/why-of-rep.ts';
import { TrainingDay } from '../work/training-day.fixture.ts';

const day = () => new TrainingDay('2026-03-01T09:00:00Z').dog('wren').dog('teal');
const stop = (distanceM: number, grade: 'good' | 'fair' | 'missed' = 'good') => ({
  skill: 'stop' as const,
  ask: { distanceM },
  grade,
});
const tell = (written: TrainingDay, body: Readonly<Record<string, unknown>>) =>
  written.write('level-stated', { dog: 'wren', skill: 'stop', ...body });

function kennelOf(facts: readonly Fact[]) {
  const kennel = createKennel();
  kennel.add(facts);
  return kennel;
}
function chanceOf({ facts, atMs }: TrainingDay, distanceM = 30, dog = 'wren') {
  const asked = { dog, skill: 'stop', ask: { distanceM }, ground: null, atMs } as const;
  return chanceAnswer(kennelOf(facts), asked);
}
const standingOf = ({ facts, atMs }: TrainingDay) => standingAnswer(kennelOf(facts), 'wren', atMs);

describe('what is told of a new dog', () => {
  it('gives standing and chance a start, says that it was told, and is no leg', () => {
    const written = tell(day(), { farthestM: 60, ground: 'known' });
    expect(standingOf(day())?.skills).toEqual([]);
    const skills = standingOf(written)?.skills ?? [];
    expect(skills).toMatchObject([
      {
        skill: 'stop',
        legs: 0,
        known: false,
        lastWorked: null,
        told: { farthestM: 60, ground: 'known', left: 1 },
      },
    ]);
    const told = chanceOf(written);
    expect(told.chance.missed).toBeLessThan(chanceOf(day()).chance.missed);
    expect(told.legs).toBe(0);
    expect(told.because.map(({ factor }) => factor)).toContain('told');
    expect(chanceOf(written, 30, 'teal').chance).toEqual(chanceOf(day(), 30, 'teal').chance);
  });

  it('leaves an answer of a skill of which nothing is told without a word of it', () => {
    const [answer] =
      standingOf(
        day()
          .open('s', 'wren')
          .rep([stop(10)]),
      )?.skills ?? [];
    expect(Object.keys(answer ?? {}).sort()).toEqual(
      ['skill', 'legs', 'known', 'ability', 'asks', 'unproved', 'lastWorked'].sort(),
    );
  });

  it('told again, the last word counts; taken back, all is as if nothing had been told', () => {
    const once = tell(day(), { farthestM: 20 });
    const twice = tell(tell(day(), { farthestM: 300, ground: 'new' }), { farthestM: 20 });
    expect(chanceOf(twice).chance).toEqual(chanceOf(once).chance);
    const back = tell(
      tell(day(), { farthestM: 300 })
        .open('s', 'wren')
        .rep([stop(10)]),
      { withdrawn: true },
    );
    const silent = day()
      .wait(1)
      .open('s', 'wren')
      .rep([stop(10)])
      .wait(1);
    expect(chanceOf(back).chance).toEqual(chanceOf(silent).chance);
    expect(standingOf(back)?.skills[0]).not.toHaveProperty('told');
  });

  it('is outweighed by ten legs', () => {
    const written = tell(day(), { farthestM: 100, ground: 'new' }).open('s', 'wren');
    const silent = day().wait(1).open('s', 'wren');
    for (let n = 0; n < 10; n++) for (const one of [written, silent]) one.rep([stop(15, 'missed')]);
    expect(standingOf(written)?.skills[0]?.told?.left).toBeLessThan(0.5);
    // docs/told.md: a boast of 100 m is worth 2 in 100 by then.
    expect(Math.abs(chanceOf(written, 15).chance.missed - chanceOf(silent, 15).chance.missed)).toBeLessThan(
      0.03,
    );
  });

  it('speaks to the next rep, to the plan and to progress', () => {
    const asked = (written: TrainingDay) => {
      const { facts, atMs } = written
        .open('s', 'wren')
        .focus('stop')
        .rep([stop(10)]);
      const kennel = kennelOf(facts);
      const next = kennel.next('s', atMs, 0);
      const plan = planFor(kennel, { dog: 'wren', minutes: 15, skills: ['stop'] }, { atMs, seed: 1 });
      return {
        next: next === null ? null : nextAnswer(next, () => ''),
        plan: plan.reps.map(({ legs }) => legs.map(({ ask, chance }) => ({ ask, chance }))),
        points: progressOfDog(kennel.record, kennel.timeline(), 'wren', 'stop')?.points,
        usual: kennel.standing('wren', atMs)?.skills[0]?.asks.find(({ name }) => name === 'usual'),
      };
    };
    const told = asked(tell(day(), { farthestM: 0 }));
    const silent = asked(day().wait(1));
    expect(told.next).not.toEqual(silent.next);
    expect(told.plan).not.toEqual(silent.plan);
    expect(told.points?.[0]?.filtered.chance).toBeLessThan(silent.points?.[0]?.filtered.chance ?? 0);
    // Nothing but a minute since the last leg lies between them.
    expect(told.points?.[0]?.filtered.chance).toBeCloseTo(told.usual?.chance ?? 0, 4);
  });
});

describe('what is told counts from its time on', () => {
  const grade = fc.constantFrom('good' as const, 'fair' as const, 'missed' as const);
  const reps = fc.array(fc.record({ grade, distanceM: fc.integer({ min: 5, max: 80 }) }), { maxLength: 8 });
  const level = fc.record(
    { farthestM: fc.integer({ min: 0, max: 400 }), ground: fc.constantFrom('home', 'known', 'new') },
    { requiredKeys: [] },
  );

  it('changes no chance that replay states, and no why, of a leg before it', () => {
    fc.assert(
      fc.property(reps, reps, level, (earlier, later, told) => {
        const before = day().open('s', 'wren');
        for (const { distanceM, grade: was } of earlier) before.rep([stop(distanceM, was)]);
        const silent = replayAnswer(kennelOf(before.facts), 'wren').legs;
        tell(before, told);
        for (const { distanceM, grade: was } of later) before.rep([stop(distanceM, was)]);
        const kennel = kennelOf(before.facts);
        expect(replayAnswer(kennel, 'wren').legs.slice(0, earlier.length)).toEqual(silent);
        for (const { rep, chance } of replayAnswer(kennel, 'wren').legs)
          expect(whyInKennel(kennel, rep)?.legs[0]?.chanceBefore).toBe(chance.good);
      }),
      { numRuns: 60 },
    );
  });

  it('an answer for an earlier moment knows nothing of it', () => {
    const written = day()
      .open('s', 'wren')
      .rep([stop(20)]);
    const beforeMs = written.atMs;
    const silent = standingOf(written);
    tell(written.wait(60), { farthestM: 100 });
    const known = kennelOf(factsKnownAt(written.facts, beforeMs));
    expect(standingAnswer(known, 'wren', beforeMs)).toEqual(silent);
  });

  it('is set aside while no fact names its dog', () => {
    const facts: Fact[] = [
      { id: 'a', kind: 'level-stated', at: '2026-03-01T09:00:00Z', body: { dog: 'x', skill: 'stop' } },
    ];
    expect(kennelOf(facts).record).toMatchObject({ setAside: 1, unknown: 0, told: [] });
  });
});

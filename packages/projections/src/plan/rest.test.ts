import { describe, expect, it } from 'vitest';
import { createKennel } from '../kennel-of-facts.ts';
import type { TrainingDay } from '../work/training-day.fixture.ts';
import { planFor } from './plan-answer.ts';
import { DAY_MS, trainedDog } from './trained-dog.fixture.ts';

function planned(day: TrainingDay, days: number) {
  const kennel = createKennel();
  kennel.add(day.facts);
  const atMs = day.atMs + days * DAY_MS;
  const plan = planFor(kennel, { dog: 'wren', minutes: 15, ground: 'home' }, { atMs, seed: 1 });
  return { plan, codes: plan.cautions.map(({ code }) => code), row: kennel.dogs(atMs).dogs[0] };
}

const dayIn = (day: TrainingDay, days: number) =>
  new Date(day.atMs + days * DAY_MS).toISOString().slice(0, 10);

describe('a dog on rest', () => {
  it('gets no plan, and is told for how long', () => {
    const day = trainedDog();
    day.write('dog-rested', { dog: 'wren', until: dayIn(day, 12) });
    const { plan, codes, row } = planned(day, 2);
    expect(plan.reps).toEqual([]);
    expect(codes).toContain('on-rest');
    expect(codes).not.toContain('little-time');
    expect(plan.cautions.find(({ code }) => code === 'on-rest')?.count).toBeGreaterThanOrEqual(9);
    expect(row?.rest).not.toBeNull();
  });

  it('is worked again from the day on that was said, or when it is said to be over', () => {
    const dated = trainedDog();
    dated.write('dog-rested', { dog: 'wren', until: dayIn(dated, 3) });
    expect(planned(dated, 4).plan.reps.length).toBeGreaterThan(0);
    expect(planned(dated, 4).row?.rest).toBeNull();
    const open = trainedDog();
    open.write('dog-rested', { dog: 'wren' });
    expect(planned(open, 40).plan.reps).toEqual([]);
    expect(planned(open, 40).plan.cautions).toContainEqual({ code: 'on-rest', count: undefined });
    open.write('dog-rested', { dog: 'wren', over: true });
    expect(planned(open, 1).plan.reps.length).toBeGreaterThan(0);
  });
});

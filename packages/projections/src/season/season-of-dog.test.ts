import { SKILLS } from '@sedgeline/engine/ability';
import { describe, expect, it } from 'vitest';
import { createKennel } from '../kennel-of-facts.ts';
import { trainedDog } from '../plan/trained-dog.fixture.ts';
import { seasonOfDog } from './season-of-dog.ts';

describe('seasonOfDog', () => {
  const day = trainedDog();
  const goal = { goal: 'g', dog: 'wren', name: 'Stop', asks: [{ skill: 'stop', ask: {}, chance: 0.8 }] };
  const kennel = createKennel();
  kennel.add([
    ...day.facts,
    { id: 'goal-1', kind: 'goal-set', at: new Date(day.atMs).toISOString(), body: goal },
    {
      id: 'dog-2',
      kind: 'dog-added',
      at: new Date(day.atMs).toISOString(),
      body: { dog: 'teal', name: 'Teal' },
    },
  ]);
  const of = (dog: string) => seasonOfDog(kennel.record, kennel.timeline(), dog, day.atMs);

  it('offers every skill once, those that were worked first, with chances as its standing states them', () => {
    const season = of('wren');
    const skills = season?.skills ?? [];
    expect(skills.map(({ skill }) => skill).toSorted()).toEqual([...SKILLS].toSorted());
    const firstNew = skills.findIndex(({ legs }) => legs === 0);
    expect(skills.slice(firstNew).every(({ legs }) => legs === 0)).toBe(true);
    const standing = kennel.standing('wren', day.atMs);
    for (const { skill, asks } of standing?.skills ?? [])
      expect(skills.find((one) => one.skill === skill)?.asks).toEqual(asks);
  });

  it('has the goals of this dog alone, and none of a dog that is not there', () => {
    expect(of('wren')?.goals).toMatchObject([{ goal: 'g', name: 'Stop', by: null }]);
    expect(of('teal')).toMatchObject({ dogName: 'Teal', goals: [], sessions: 0 });
    expect(of('nobody')).toBeNull();
  });
});

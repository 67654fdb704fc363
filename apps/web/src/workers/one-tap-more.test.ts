import { beforeEach, describe, expect, it } from 'vitest';
import { type HostInHand, hostInHand, startSession } from './host-in-hand.ts';
import { placeBetween } from './memory-facts.ts';

const line = { skill: 'line', ask: { distanceM: 40 } } as const;
const stop = { skill: 'stop', ask: { distanceM: 20, wayFraction: 0.5 } } as const;
const cast = { skill: 'cast-left', ask: { distanceM: 20, wayFraction: 0.5, castM: 15 } } as const;
const chain = { legs: [line, stop, cast], clean: false, purpose: null };

let a: HostInHand;
beforeEach(async () => {
  a = hostInHand('a');
  await startSession(a);
  await a.tap({ do: 'choose', rep: chain });
});
const last = () => a.screen().view.done.at(-1);

describe('blown later or earlier than planned', () => {
  it('is what was done, and the plan is kept: a tenth of 20 m is 2 m', async () => {
    await a.tap({ do: 'rest-good' });
    await a.tap({ do: 'blew', when: 'later' });
    const legs = last()?.legs ?? [];
    expect(legs.map(({ ask }) => ask.distanceM)).toEqual([40, 22, 22]);
    expect(legs[1]).toMatchObject({ ask: { wayFraction: 0.55 }, planned: stop.ask, grade: 'good' });
    expect(legs[0]).not.toHaveProperty('planned');
  });

  it('is as planned again when it is said the other way', async () => {
    await a.tap({ do: 'rest-good' });
    await a.tap({ do: 'blew', when: 'earlier' });
    expect(last()?.legs[1]?.ask.distanceM).toBe(18);
    await a.tap({ do: 'blew', when: 'later' });
    expect(last()?.legs[1]?.ask).toEqual(stop.ask);
    expect(last()?.legs[1]).not.toHaveProperty('planned');
  });

  it('said in mid-chain is asked of the legs to come, and recorded with them', async () => {
    await a.tap({ do: 'grade', grade: 'good' });
    await a.tap({ do: 'blew', when: 'later' });
    await a.tap({ do: 'rest-good' });
    expect(last()?.legs.map(({ ask }) => ask.distanceM)).toEqual([40, 22, 22]);
    expect(last()?.legs[1]?.planned).toEqual(stop.ask);
  });

  it('is undone by one tap', async () => {
    await a.tap({ do: 'rest-good' });
    await a.tap({ do: 'blew', when: 'later' });
    await a.tap({ do: 'undo' });
    expect(last()?.legs[1]?.ask).toEqual(stop.ask);
  });

  it('is nothing where no stop was asked', async () => {
    await a.tap({ do: 'choose', rep: { ...chain, legs: [line] } });
    await a.tap({ do: 'rest-good' });
    expect(await a.tap({ do: 'blew', when: 'later' })).toEqual({ kind: 'nothing-that-way' });
  });

  it('is nothing after a line that was missed: no whistle was blown there', async () => {
    await a.tap({ do: 'grade', grade: 'missed' });
    expect(await a.tap({ do: 'blew', when: 'later' })).toEqual({ kind: 'nothing-that-way' });
    await a.tap({ do: 'ended' });
    expect(await a.tap({ do: 'blew', when: 'later' })).toEqual({ kind: 'nothing-that-way' });
    expect(last()?.legs).toMatchObject([{ skill: 'line', ask: line.ask, grade: 'missed' }]);
  });
});

describe('what a rep was paid with', () => {
  it('is kept, and a miss that paid too', async () => {
    await a.tap({ do: 'grade', grade: 'missed' });
    const rep = a.screen().view.inHand?.rep ?? '';
    await a.tap({ do: 'got-it', rep, got: true });
    expect(a.screen().after).toMatchObject({ about: 'cause' });
    await a.tap({ do: 'reward', rep, reward: ['food', 'play'] });
    await a.tap({ do: 'ended' });
    expect(last()).toMatchObject({ gotItAnyway: true, reward: ['food', 'play'] });
  });
});

describe('a rep taken out', () => {
  it('is brought back as it was', async () => {
    await a.tap({ do: 'rest-good' });
    const before = a.screen().view.done;
    await a.tap({ do: 'strike', rep: before[0]?.rep ?? '' });
    expect(a.screen().view.done).toEqual([]);
    expect(a.screen().view.struck).toHaveLength(1);
    await a.tap({ do: 'restore', rep: before[0]?.rep ?? '' });
    expect(a.screen().view.done).toEqual(before);
  });
});

describe('a rep from memory', () => {
  const legs = [{ ...stop, grade: 'fair' }] as const;

  it('stands in its place, marked, and undo takes it back first', async () => {
    await a.tap({ do: 'rest-good' });
    await a.tap({ do: 'rest-good' });
    const [first, second] = a.screen().view.done.map(({ rep }) => rep);
    await a.tap({ do: 'from-memory', after: first ?? '', legs });
    expect(a.screen().view.done.map(({ rep, fromMemory }) => (fromMemory ? 'memory' : rep))).toEqual([
      first,
      'memory',
      second,
    ]);
    await a.tap({ do: 'undo' });
    expect(a.screen().view.done.map(({ rep }) => rep)).toEqual([first, second]);
    expect(a.screen().view.struck).toEqual([]);
  });

  it('may be the first, or the last; a later tap is what undo takes back then', async () => {
    await a.tap({ do: 'rest-good' });
    const [only] = a.screen().view.done.map(({ rep }) => rep);
    await a.tap({ do: 'from-memory', after: null, legs });
    await a.tap({ do: 'from-memory', after: only ?? '', legs });
    expect(a.screen().view.done.map(({ fromMemory }) => fromMemory)).toEqual([true, false, true]);
    await a.tap({ do: 'note', note: 'rain' });
    await a.tap({ do: 'undo' });
    expect(a.screen().view.done).toHaveLength(3);
  });

  it('is let fall where it is said to come after a rep that is not there', async () => {
    expect(await a.tap({ do: 'from-memory', after: 'nowhere', legs })).toEqual({ kind: 'nothing-that-way' });
  });

  it('stands half way between two moments, or right behind the first', () => {
    expect(placeBetween({ ms: 1000, counter: 3 }, 3000)).toEqual({ ms: 2000, counter: 0 });
    expect(placeBetween({ ms: 1000, counter: 3 }, 1001)).toEqual({ ms: 1000, counter: 4 });
  });
});

describe('dogs worked in turn', () => {
  it('keep what is in hand each for itself, through a switch to the other and back', async () => {
    await a.host.calls.append([
      { kind: 'dog-added', body: { dog: 'e', name: 'Teal' } },
      { kind: 'session-opened', body: { session: 'sd', dog: 'd', class: 'c' } },
      { kind: 'session-opened', body: { session: 'se', dog: 'e', class: 'c' } },
    ]);
    await a.host.calls.watch({ session: 'sd' });
    await a.tap({ do: 'choose', rep: chain });
    await a.tap({ do: 'grade', grade: 'missed' });
    const left = a.screen();
    await a.host.calls.watch({ session: 'se' });
    expect(a.screen().view).toMatchObject({ dogName: 'Teal', done: [], inHand: null });
    await a.tap({ do: 'choose', rep: chain });
    await a.tap({ do: 'rest-good' });
    await a.host.calls.watch({ session: 'sd' });
    expect(a.screen().after).toEqual(left.after);
    expect(a.screen().view.inHand?.graded).toEqual(left.view.inHand?.graded);
    expect(a.screen().view.inTurn?.dogs.map(({ name, reps }) => [name, reps])).toEqual([
      ['Wren', 1],
      ['Teal', 1],
    ]);
  });
});

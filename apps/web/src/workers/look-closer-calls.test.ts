import { beforeEach, describe, expect, it } from 'vitest';
import { type HostInHand, hostInHand, startSession } from './host-in-hand.ts';

describe('progress and proofing, asked of the worker', () => {
  let inHand: HostInHand;
  let dog: string;
  beforeEach(async () => {
    inHand = hostInHand('p');
    await startSession(inHand);
    dog = inHand.screen().view.dog;
  });

  it('have what was just tapped', async () => {
    const skill = inHand.screen().view.asked?.legs[0]?.skill ?? 'stop';
    const before = await inHand.host.calls.progress({ dog, skill });
    expect(before).toMatchObject({ dog, name: 'Wren', points: [], legs: [] });
    await inHand.tap({ do: 'grade', grade: 'missed' });
    const after = await inHand.host.calls.progress({ dog, skill });
    expect(after?.legs.map(({ grade, cause }) => [grade, cause])).toEqual([['missed', 'dog']]);
    expect(after?.points).toHaveLength(1);
    const map = await inHand.host.calls.proofing({ dog, skill });
    expect(map?.legs).toBe(1);
    await inHand.tap({ do: 'cause', cause: 'handler' });
    expect((await inHand.host.calls.progress({ dog, skill }))?.points[0]?.counts).toEqual({
      good: 0,
      fair: 0,
      missed: 0,
      excused: 1,
    });
  });

  it('are null for a dog that is not there', async () => {
    expect(await inHand.host.calls.progress({ dog: 'nobody', skill: 'stop' })).toBeNull();
    expect(await inHand.host.calls.proofing({ dog: 'nobody', skill: 'stop' })).toBeNull();
  });
});

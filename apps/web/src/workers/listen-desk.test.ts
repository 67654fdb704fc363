import type { SoundHeard } from '@sedgeline/journal';
import { expect, it } from 'vitest';
import { hostInHand } from './host-in-hand.ts';

const heard: SoundHeard = {
  sound: 'n',
  session: 's',
  from: 'microphone',
  name: 'Microphone',
  lengthS: 60,
  whistles: [{ startS: 10, endS: 10.6, kind: 'long', pitchHz: 2900, sureness: 0.99 }],
  clicks: [],
};

it('joins what was heard, keeps it by facts, and knows the own whistle from then on', async () => {
  const { host } = hostInHand('l');
  const { calls } = host;
  await calls.open('mine');
  await calls.append([
    { kind: 'dog-added', body: { dog: 'd', name: 'Wren' } },
    { kind: 'session-opened', body: { session: 's', dog: 'd' } },
    {
      kind: 'rep-recorded',
      body: { rep: 'r', session: 's', legs: [{ skill: 'stop', ask: {}, grade: 'good' }] },
    },
  ]);
  const sound = { ...heard, starts: null };
  const proposal = await calls.joinSound({ session: 's', sound });
  expect(proposal?.joins.map(({ rep, candidates }) => [rep, candidates[0]?.startS])).toEqual([['r', 10]]);
  expect(await calls.joinSound({ session: 'none', sound })).toBeNull();
  expect(await calls.ownWhistle('s')).toBeNull();
  const facts = await calls.keepSoundFacts({ heard, joins: [{ rep: 'r', leg: 0, atS: 10, by: 'handler' }] });
  expect(await calls.soundsOf('s')).toEqual([]);
  await calls.append(facts);
  expect((await calls.soundsOf('s')).map((one) => one.sound)).toEqual(['n']);
  expect((await calls.ownWhistle('s'))?.pitchHz).toBeCloseTo(2900, 6);
});

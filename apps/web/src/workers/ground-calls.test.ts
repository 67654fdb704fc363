import { expect, it } from 'vitest';
import { hostInHand } from './host-in-hand.ts';

const HERE = { eastM: 0, northM: 0 };

it('knows every ground and every layout as it was drawn last, the latest first', async () => {
  const { host } = hostInHand('g');
  await host.calls.open('mine');
  await host.calls.append([
    { kind: 'ground-added', body: { ground: 'g', name: 'Long Acre', latDeg: 52, lonDeg: -1 } },
    { kind: 'layout-drawn', body: { layout: 'a', ground: 'g', name: 'Wall', handlerAt: HERE, things: [] } },
    { kind: 'layout-drawn', body: { layout: 'b', handlerAt: HERE, things: [] } },
  ]);
  const post = { thing: 'p', kind: 'post', eastM: 0, northM: 20, blind: true };
  const again = { layout: 'a', ground: 'g', name: 'Wall end', handlerAt: HERE, things: [post] };
  await host.calls.append([{ kind: 'layout-drawn', body: again }]);
  const view = await host.calls.grounds();
  expect(view.grounds).toEqual([
    { ground: 'g', name: 'Long Acre', at: { latDeg: 52, lonDeg: -1 }, note: null, isPutAway: false },
  ]);
  expect(view.layouts.map(({ layout, ground, name }) => [layout, ground, name])).toEqual([
    ['a', 'g', 'Wall end'],
    ['b', null, null],
  ]);
  expect(view.layouts[0]?.things).toEqual([post]);
});

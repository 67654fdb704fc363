import { describe, expect, it } from 'vitest';
import { createKennel } from '../kennel-of-facts.ts';
import { lastGround } from '../plan/plan-view.ts';
import { TrainingDay } from '../work/training-day.fixture.ts';

const day = () =>
  new TrainingDay('2026-03-01T09:00:00Z')
    .dog('wren')
    .write('ground-added', { ground: 'acre', name: 'Long Acre' })
    .write('layout-drawn', { layout: 'wall', ground: 'acre', handlerAt: { eastM: 0, northM: 0 }, things: [] })
    .open('s', 'wren', { ground: 'acre', layout: 'wall' })
    .rep([{ skill: 'stop', ask: { distanceM: 20 } }]);

function seen({ facts, atMs }: TrainingDay) {
  const kennel = createKennel();
  kennel.add(facts);
  const { grounds, layouts } = kennel.record;
  return {
    planned: lastGround(kennel, 'wren'),
    offered: kennel.dogs(atMs).grounds.map(({ name }) => name),
    ground: grounds.get('acre'),
    layout: layouts.get('wall'),
    session: kennel.work('s', atMs, 0)?.groundName,
    stated: kennel.timeline().stated.map(({ forecast }) => forecast.chance),
  };
}

describe('grounds and layouts that are put away', () => {
  it('are offered no more; what was worked there keeps name, drawing and chances', () => {
    const before = seen(day());
    const away = seen(
      day().write('ground-put-away', { ground: 'acre' }).write('layout-put-away', { layout: 'wall' }),
    );
    expect(before.offered).toEqual(['Long Acre']);
    expect(away.offered).toEqual([]);
    expect([before.planned, away.planned]).toEqual(['acre', null]);
    expect(away.ground).toEqual({ ...before.ground, isPutAway: true });
    expect(away.layout).toEqual({ ...before.layout, isPutAway: true });
    expect(away.session).toBe('Long Acre');
    expect(away.stated).toEqual(before.stated);
  });

  it('come back by one fact, and the latest word counts', () => {
    const back = day()
      .write('ground-put-away', { ground: 'acre' })
      .write('layout-put-away', { layout: 'wall' })
      .write('ground-put-away', { ground: 'acre', back: true })
      .write('layout-put-away', { layout: 'wall', back: true });
    expect(seen(back)).toEqual(seen(day()));
  });
});

import { beforeEach, describe, expect, it } from 'vitest';
import { type HostInHand, hostInHand, startSession } from './host-in-hand.ts';
import type { PlanWish } from './planning-desk.ts';

describe('the planning desk, asked of the worker', () => {
  let inHand: HostInHand;
  const wish: PlanWish = { dog: 'd', minutes: 12, where: { by: 'last' } };
  const planned = async (more: Partial<PlanWish> = {}, seed = 1) => {
    const view = await inHand.host.calls.plan({ wish: { ...wish, ...more }, seed, kept: [] });
    if (view === null) throw new Error('plan: expected one for a dog on record');
    return view;
  };
  beforeEach(async () => {
    inHand = hostInHand('p');
    await startSession(inHand);
    await inHand.host.calls.append([
      { kind: 'ground-added', body: { ground: 'g', name: 'Long bank' } },
      { kind: 'session-closed', body: { session: 's' } },
      { kind: 'session-opened', body: { session: 's2', dog: 'd', ground: 'g' } },
    ]);
  });

  it('plans where the dog was last, somewhere told, somewhere new, or nowhere told', async () => {
    expect(await planned()).toMatchObject({
      dogName: 'Wren',
      groundName: 'Long bank',
      request: { ground: 'g' },
    });
    expect((await planned({ where: { by: 'none' } })).request.ground).toBeUndefined();
    expect((await planned({ where: { by: 'known', ground: 'g' } })).groundName).toBe('Long bank');
    const unknown = await planned({ where: { by: 'new', name: 'Far wood' } });
    expect(unknown.groundName).toBeNull();
    expect(unknown.plan.cautions.map(({ code }) => code)).toContain('new-ground');
  });

  it('the same wish and seed give the same plan; shown again it is the same', async () => {
    const [once, again] = [await planned(), await planned()];
    expect(again.plan).toEqual(once.plan);
    const shown = await inHand.host.calls.showPlan(once);
    expect(shown).toEqual(once);
  });

  it('edits the plan that is handed in, and writes nothing', async () => {
    const facts = await inHand.host.calls.factsAsLines();
    const first = await planned();
    const edited = await inHand.host.calls.editPlan({ ...first, edit: { do: 'drop', n: 2 } });
    expect(edited?.cards).toHaveLength(first.cards.length - 1);
    expect(edited?.plan.rules).toHaveLength(first.plan.rules.length);
    const kept = [{ n: 1, legs: first.cards[0]?.rep.legs.map(({ skill, ask }) => ({ skill, ask })) ?? [] }];
    const other = await inHand.host.calls.plan({ wish, seed: 2, kept });
    const bare = other?.cards[0]?.rep.legs.map(({ skill, ask }) => ({ skill, ask }));
    expect(bare).toEqual(kept[0]?.legs);
    expect(await inHand.host.calls.factsAsLines()).toBe(facts);
  });

  it('a dog or a goal that is not there is null', async () => {
    expect(await inHand.host.calls.plan({ wish: { ...wish, dog: 'x' }, seed: 0, kept: [] })).toBeNull();
    expect(await inHand.host.calls.season('x')).toBeNull();
    expect(await inHand.host.calls.forecast({ goal: 'x', perWeek: null })).toBeNull();
  });

  it('a goal that is set is there, and says why it can’t be forecast yet', async () => {
    const goal = { goal: 'g1', dog: 'd', name: 'Stop', asks: [{ skill: 'stop', ask: {}, chance: 0.8 }] };
    await inHand.host.calls.append([{ kind: 'goal-set', body: goal }]);
    expect((await inHand.host.calls.season('d'))?.goals).toMatchObject([{ goal: 'g1' }]);
    const forecast = await inHand.host.calls.forecast({ goal: 'g1', perWeek: 2 });
    expect(forecast).toMatchObject({ kind: 'cant-say', why: 'no-session' });
  });
});

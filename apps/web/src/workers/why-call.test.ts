import { beforeEach, describe, expect, it } from 'vitest';
import { type HostInHand, hostInHand, startSession } from './host-in-hand.ts';

describe('why, asked of the worker', () => {
  let inHand: HostInHand;
  beforeEach(async () => {
    inHand = hostInHand('w');
    await startSession(inHand);
    await inHand.tap({ do: 'rest-good' });
    await inHand.tap({ do: 'grade', grade: 'missed' });
  });
  const lastRep = (): string =>
    inHand.screen().view.inHand?.rep ?? inHand.screen().view.done.at(-1)?.rep ?? '';

  it('answers for a rep that was just graded, and again when its cause is given', async () => {
    const rep = lastRep();
    const first = await inHand.host.calls.why(rep);
    expect(first).toMatchObject({ rep, dogName: 'Wren', repNumber: 2 });
    expect(first?.legs[0]).toMatchObject({ leg: 0, grade: 'missed', cause: 'dog' });
    await inHand.tap({ do: 'cause', cause: 'handler' });
    expect((await inHand.host.calls.why(rep))?.legs[0]?.verdict).toBe('handler');
  });

  it('leaves the screen as it was: the same rep suggested, the next tap recorded', async () => {
    const before = inHand.screen().view;
    await inHand.host.calls.why(lastRep());
    await inHand.host.calls.refresh();
    const { view } = inHand.screen();
    expect(view.done).toEqual(before.done);
    expect(view.asked?.legs.map(({ skill, ask }) => ({ skill, ask }))).toEqual(
      before.asked?.legs.map(({ skill, ask }) => ({ skill, ask })),
    );
    // The clock goes on a second with every look, and what was worked lapses by as much: under 1e-5 of a chance.
    view.asked?.legs.forEach(({ chance }, n) => {
      expect(chance.good).toBeCloseTo(before.asked?.legs[n]?.chance.good ?? -1, 5);
    });
    expect(await inHand.tap({ do: 'undo' })).toMatchObject({ kind: 'done', saved: true });
  });

  it('is null for a rep that was taken out, or is not there', async () => {
    const rep = lastRep();
    await inHand.tap({ do: 'strike', rep });
    expect(await inHand.host.calls.why(rep)).toBeNull();
    expect(await inHand.host.calls.why('never')).toBeNull();
  });
});

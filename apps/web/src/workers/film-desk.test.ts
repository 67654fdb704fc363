import { beforeEach, describe, expect, it } from 'vitest';
import { type HostInHand, hostInHand, startSession } from './host-in-hand.ts';

describe('the film bench, asked of the worker', () => {
  let inHand: HostInHand;
  let session: string;
  beforeEach(async () => {
    inHand = hostInHand('f');
    await startSession(inHand);
    session = inHand.screen().view.session;
  });

  it('has what was just marked, and what was just tapped', async () => {
    await inHand.tap({ do: 'rest-good' });
    const before = await inHand.host.calls.filmBench(session);
    expect(before).toMatchObject({ session, dogName: 'Wren', films: [], closedAtMs: null });
    const rep = before?.reps[0]?.rep ?? '';
    await inHand.host.calls.append([
      { kind: 'film-linked', body: { film: 'm', session, name: 'hedge.mp4', bytes: 900 } },
      { kind: 'film-marked', body: { mark: 'k', film: 'm', rep, what: 'sent', atS: 4, frameS: 0.04 } },
    ]);
    const after = await inHand.host.calls.filmBench(session);
    expect(after?.films).toMatchObject([{ film: 'm', marks: [{ mark: 'k', atS: 4 }], marked: [{ rep }] }]);
    expect(after?.reps.map((one) => one.rep)).toEqual([rep]);
  });

  it('takes no mark for a tap that could be undone on Work', async () => {
    await inHand.tap({ do: 'rest-good' });
    const rep = inHand.screen().view.done[0]?.rep ?? '';
    const undo = inHand.screen().view.undo;
    await inHand.host.calls.append([
      { kind: 'film-linked', body: { film: 'm', session, name: 'hedge.mp4', bytes: 900 } },
      { kind: 'film-marked', body: { mark: 'k', film: 'm', rep, what: 'sent', atS: 4, frameS: 0.04 } },
    ]);
    expect(inHand.screen().view.undo).toEqual(undo);
  });

  it('is null for a session that is not there', async () => {
    expect(await inHand.host.calls.filmBench('nowhere')).toBeNull();
  });
});

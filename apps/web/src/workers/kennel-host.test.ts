import { demoKennel } from '@sedgeline/demo';
import { beforeEach, describe, expect, it } from 'vitest';
import { type HostInHand, hostInHand, startSession } from './host-in-hand.ts';

/** Facts in the store, by kind: what is on disk, read past the program. */
function kindsOnDisk({ places }: HostInHand): string[] {
  return [...places.mine.lines.values()].map((line) => JSON.parse(line).kind);
}

describe('the kennel behind the screens', () => {
  let a: HostInHand;
  beforeEach(async () => {
    a = hostInHand('a');
    await startSession(a);
  });

  it('has a grade on disk before it answers, and shows it then', async () => {
    const answer = await a.tap({ do: 'grade', grade: 'good' });
    expect(answer).toMatchObject({ kind: 'recorded', repNumber: 1, saved: true });
    expect(kindsOnDisk(a).filter((kind) => kind === 'rep-recorded')).toHaveLength(1);
    expect(a.screen().view.inHand?.graded.map((leg) => leg.grade)).toEqual(['good']);
  });

  it('makes one rep of a chain: recorded at its first grade, amended at each further one', async () => {
    const legs = a.screen().view.asked?.legs.length ?? 0;
    expect(legs).toBeGreaterThan(1);
    for (let leg = 0; leg < legs; leg++) await a.tap({ do: 'grade', grade: 'good' });
    expect(kindsOnDisk(a).filter((kind) => kind === 'rep-recorded')).toHaveLength(1);
    expect(kindsOnDisk(a).filter((kind) => kind === 'rep-amended')).toHaveLength(legs - 1);
    expect(a.screen().view.inHand).toBeNull();
    expect(a.screen().view.repNumber).toBe(2);
  });

  it('lets a tap fall that was made on an older picture of the screen: a bounce of the thumb', async () => {
    const { turnCount } = a.screen();
    const both = await Promise.all([
      a.host.calls.tap({ session: 's', turnCount, tap: { do: 'rest-good' } }),
      a.host.calls.tap({ session: 's', turnCount, tap: { do: 'rest-good' } }),
    ]);
    expect(both.map(({ kind }) => kind)).toEqual(['recorded', 'stale']);
    expect(a.screen().view.done).toHaveLength(1);
  });

  it('keeps a miss without a cause as the dog’s, and amends it when the cause is said', async () => {
    await a.tap({ do: 'grade', grade: 'missed' });
    expect(a.screen().after).toMatchObject({ about: 'cause', leg: 0, cause: null });
    expect(a.screen().view.inHand?.graded[0]?.cause).toBe('dog');
    await a.tap({ do: 'cause', cause: 'handler' });
    expect(a.screen().after).toMatchObject({ about: 'cause', cause: 'handler' });
    expect(a.screen().view.inHand?.graded[0]?.cause).toBe('handler');
  });

  it('ends a chain where it was missed: what was not asked is not graded', async () => {
    await a.tap({ do: 'grade', grade: 'missed' });
    await a.tap({ do: 'ended' });
    const [rep] = a.screen().view.done;
    expect(rep?.legs).toHaveLength(1);
    expect(a.screen().view.inHand).toBeNull();
  });

  it('takes the last tap back, one at a time, until nothing is left', async () => {
    await a.tap({ do: 'grade', grade: 'good' });
    await a.tap({ do: 'rest-good' });
    expect(a.screen().view.done).toHaveLength(1);
    await a.tap({ do: 'undo' });
    expect(a.screen().view.inHand?.graded).toHaveLength(1);
    await a.tap({ do: 'undo' });
    expect(a.screen().view.inHand).toBeNull();
    expect(a.screen().view.done).toHaveLength(0);
    expect(await a.tap({ do: 'undo' })).toEqual({ kind: 'nothing-that-way' });
  });

  it('asks how a send that was run straight through was run', async () => {
    const asked = a.screen().view.asked;
    const line = { skill: 'line', ask: { distanceM: 20 } } as const;
    await a.tap({ do: 'choose', rep: { legs: [line], clean: true, purpose: 'clean' } });
    expect(a.screen().chosen?.rep.legs.map(({ skill }) => skill)).toEqual(['line']);
    await a.tap({ do: 'rest-good' });
    expect(a.screen().after).toMatchObject({ about: 'expectation' });
    await a.tap({ do: 'expectation', expectation: 'hangs-back' });
    expect(a.screen().view.done[0]).toMatchObject({ clean: true, expectation: 'hangs-back' });
    // The choice was for one rep; the next is the program's again.
    expect(a.screen().chosen).toBeNull();
    expect(asked).not.toBeNull();
  });

  it('keeps what was planned of a leg that is asked otherwise in mid-chain', async () => {
    await a.tap({ do: 'grade', grade: 'good' });
    const chain = a.screen().view.inHand?.chain ?? [];
    const planned = chain[1]?.ask;
    const later = chain.map((leg, i) => (i === 1 ? { ...leg, ask: { ...leg.ask, distanceM: 17 } } : leg));
    await a.tap({ do: 'choose', rep: { legs: later, clean: false, purpose: null } });
    await a.tap({ do: 'grade', grade: 'good' });
    await a.tap({
      do: 'amend-leg',
      rep: a.screen().view.done[0]?.rep ?? '',
      leg: 0,
      grade: 'fair',
      cause: 'unsure',
    });
    const last = [...a.places.mine.lines.values()].map((line) => JSON.parse(line)).at(-1);
    expect(last.body.legs[0]).toMatchObject({ grade: 'fair', cause: 'unsure' });
    expect(last.body.legs[1]).toMatchObject({ ask: { distanceM: 17 }, planned });
  });

  it('opens where it was: chain in hand, rep chosen by hand, what may still be said', async () => {
    const line = { skill: 'line', ask: { distanceM: 33 } } as const;
    const stop = { skill: 'stop', ask: { distanceM: 21, wayFraction: 0.6 } } as const;
    await a.tap({ do: 'choose', rep: { legs: [line, stop], clean: false, purpose: 'build' } });
    await a.tap({ do: 'grade', grade: 'fair' });
    const left = a.screen();
    const again = hostInHand('b', a.places);
    expect(await again.host.calls.open('mine')).toEqual({ openSession: 's' });
    expect(again.screen().view.inHand).toEqual(left.view.inHand);
    expect(again.screen().after).toEqual(left.after);
    expect(again.screen().view.asked?.legs.map(({ skill, ask }) => ({ skill, ask }))).toEqual([line, stop]);
  });

  it('shows the last views at once when it is opened again, marked as not yet true', async () => {
    a.idle();
    const again = hostInHand('b', a.places);
    await again.host.calls.open('mine');
    const first = again.pushes
      .slice(0, 2)
      .map((push) => ('rough' in push ? [push.view, push.rough] : [push.view]));
    expect(first).toEqual([
      ['dogs', true],
      ['work', true],
    ]);
    expect(again.pushes.find((push) => push.view === 'dogs' && !push.rough)).toBeDefined();
  });

  it('works on when the device refuses, says so, and saves everything at the next try', async () => {
    a.places.mine.beforeWrite = () => {
      throw new Error('no room (the test says so)');
    };
    const before = a.places.mine.lines.size;
    expect(await a.tap({ do: 'rest-good' })).toMatchObject({ kind: 'recorded', saved: false });
    expect(await a.tap({ do: 'rest-good' })).toMatchObject({ kind: 'recorded', saved: false });
    expect(a.screen().view.done).toHaveLength(2);
    expect(a.places.mine.lines.size).toBe(before);
    const told = a.pushes.findLast((push) => push.view === 'not-saved');
    expect(told).toMatchObject({ notSaved: { count: 2, failure: { code: 'STORE_BROKEN' } } });
    expect((await a.host.calls.notSavedAsLines()).trim().split('\n')).toHaveLength(2);
    a.places.mine.beforeWrite = undefined;
    expect(await a.host.calls.retry()).toEqual({ saved: true });
    expect(a.places.mine.lines.size).toBe(before + 2);
    expect(a.pushes.findLast((push) => push.view === 'not-saved')).toMatchObject({ notSaved: null });
  });

  it('takes in what another tab kept, and tells the others what it keeps', async () => {
    const b = hostInHand('b', a.places);
    await b.host.calls.open('mine');
    await a.tap({ do: 'rest-good' });
    const told = a.news.at(-1);
    if (told === undefined) throw new Error('expected the other tabs to be told');
    b.host.hearTab(told);
    expect(b.screen().view.done).toHaveLength(1);
    expect(b.screen().view).toEqual(expect.objectContaining({ repNumber: a.screen().view.repNumber }));
  });

  it('never mixes the invented record with one’s own, and leaves nothing of it behind', async () => {
    const mine = [...a.places.mine.lines];
    await a.host.calls.open('demo');
    const dogs = a.pushes.findLast((push) => push.view === 'dogs');
    expect(dogs?.view === 'dogs' && dogs.dogs.dogs.map(({ name }) => name)).toEqual(['Invented']);
    await a.host.calls.append([{ kind: 'dog-added', body: { dog: 'x', name: 'Also invented' } }]);
    expect([...a.places.mine.lines]).toEqual(mine);
    await a.host.calls.leaveDemo();
    expect(a.places.demo.lines.size).toBe(0);
    await a.host.calls.open('mine');
    expect((await a.host.calls.factsAsLines()).trim().split('\n')).toHaveLength(mine.length);
  });

  it('runs a break and takes it for as long as it lasted', async () => {
    await a.tap({ do: 'break', minutes: 3 });
    expect(a.screen().view.breakRunning).toMatchObject({ minutes: 3 });
    await a.tap({ do: 'break-over' });
    expect(a.screen().view.breakRunning).toBeNull();
    expect(kindsOnDisk(a)).toContain('break-taken');
  });

  it('closes a session and ends the chain in hand with it', async () => {
    await a.tap({ do: 'grade', grade: 'good' });
    await a.tap({ do: 'close' });
    expect(a.screen().view.closedAtMs).not.toBeNull();
    expect(a.screen().view.inHand).toBeNull();
    expect(kindsOnDisk(a).slice(-2)).toEqual(['rep-ended', 'session-closed']);
  });
});

describe('the kennel’s own priors', () => {
  /** A host on a record that holds the invented kennel: three dogs, hundreds of legs. */
  const busyHost = async (name: string, places?: HostInHand['places']): Promise<HostInHand> => {
    const host = hostInHand(name, places);
    if (places === undefined) {
      for (const fact of demoKennel(1)) host.places.mine.lines.set(fact.id, JSON.stringify(fact));
    }
    await host.host.calls.open('mine');
    return host;
  };
  const fitsKept = ({ places }: HostInHand) => JSON.parse(places.mine.notes.get('fits') ?? '[]');

  const usesFit = ({ places }: HostInHand) => places.mine.notes.get('walk')?.includes('"gainNats"') === true;

  it('are fitted while nothing else waits, kept, and found at the next opening', async () => {
    const first = await busyHost('f');
    expect(fitsKept(first)).toEqual([]);
    first.idle();
    await expect.poll(() => fitsKept(first).length, { timeout: 20_000 }).toBe(1);
    expect(fitsKept(first)[0][1]).toMatchObject({ kind: 'fitted', dogs: 3 });
    await expect.poll(() => usesFit(first), { timeout: 20_000 }).toBe(true);
    const second = await busyHost('g', first.places);
    second.idle();
    await new Promise((resolve) => setTimeout(resolve, 100));
    expect(fitsKept(second).length).toBe(1);
    expect(usesFit(second)).toBe(true);
  });

  it('are left when the record is', async () => {
    const host = await busyHost('h');
    host.idle();
    await host.host.calls.open('demo');
    await new Promise((resolve) => setTimeout(resolve, 200));
    expect(fitsKept(host)).toEqual([]);
  });
});

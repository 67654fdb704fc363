import { describe, expect, it } from 'vitest';
import { foldRecord } from '../record/record-builder.ts';
import { TrainingDay } from '../work/training-day.fixture.ts';
import { sessionBackView, sessionsView } from './look-back.ts';

/** Two sessions, counted by hand: the first with a rep that was struck, the second still open. */
function twoSessions() {
  const day = new TrainingDay('2026-03-01T08:00:00Z')
    .dog('wren')
    .write('ground-added', { ground: 'g', name: 'Long bank' })
    .open('first', 'wren', { ground: 'g' })
    .rep([{ skill: 'line' }, { skill: 'stop', grade: 'fair' }], { rep: 'a' })
    .rep([{ skill: 'stop', grade: 'missed', cause: 'handler' }], { rep: 'b' })
    .rep([{ skill: 'stop', grade: 'missed' }], { rep: 'c' })
    .write('rep-struck', { rep: 'c' })
    .write('session-closed', { session: 'first' })
    .open('second', 'wren')
    .rep([{ skill: 'recall' }], { rep: 'd' });
  return foldRecord(day.facts);
}

describe('sessions to look back on', () => {
  it('stand newest first, with what was done in them', () => {
    const [second, first] = sessionsView(twoSessions()).sessions;
    expect(second).toMatchObject({ session: 'second', groundName: null, closedAtMs: null, reps: 1 });
    expect(first).toMatchObject({ session: 'first', dogName: 'wren', groundName: 'Long bank', reps: 2 });
    expect(first?.legs).toEqual({ good: 1, fair: 1, missed: 1 });
    expect(first?.closedAtMs).not.toBeNull();
  });

  it('have their reps that stand, in order', () => {
    const view = sessionBackView(twoSessions(), 'first');
    expect(view?.done.map(({ rep }) => rep)).toEqual(['a', 'b']);
    expect(view?.done[0]?.legs.map(({ skill, grade }) => `${skill} ${grade}`)).toEqual([
      'line good',
      'stop fair',
    ]);
  });

  it('are null where no fact names them', () => {
    expect(sessionBackView(twoSessions(), 'third')).toBeNull();
  });
});

describe('the card of a session', () => {
  const line = (distanceM: number) => ({ skill: 'line', ask: { distanceM } }) as const;
  const stop = (distanceM: number) => ({ skill: 'stop', ask: { distanceM, wayFraction: 0.5 } }) as const;
  const left = { skill: 'cast-left', ask: { distanceM: 20, castM: 14 } } as const;
  const home = [
    { skill: 'pickup', ask: {} },
    { skill: 'delivery', ask: {} },
  ] as const;

  it('draws the rep with the most legs asked, of two alike the one farther away, in metres', () => {
    const day = new TrainingDay('2026-03-01T08:00:00Z')
      .dog('wren')
      .open('s', 'wren')
      .rep([line(60), ...home])
      .rep([line(30), stop(15), left, ...home])
      .rep([line(40), stop(20), left, ...home])
      .rep([line(40), stop(20), left, ...home]);
    const [row] = sessionsView(foldRecord(day.facts)).sessions;
    expect(row?.drawn?.repNumber).toBe(3);
    const stroke = row?.drawn?.picture.strokes.find(({ kind }) => kind === 'stop');
    expect(stroke).toMatchObject({ distanceM: 20 });
  });

  it('counts a chain that ended early by what was asked of it', () => {
    const day = new TrainingDay('2026-03-01T08:00:00Z')
      .dog('wren')
      .open('s', 'wren')
      .rep([line(40), ...home])
      .rep([{ ...line(20), grade: 'missed' }], { chain: [line(20), stop(10), left, ...home] });
    const record = foldRecord(day.facts);
    expect(sessionsView(record).sessions[0]?.drawn?.repNumber).toBe(2);
    const ended = sessionBackView(record, 's')?.done[1];
    expect(ended?.asked.map(({ skill }) => skill)).toEqual([
      'line',
      'stop',
      'cast-left',
      'pickup',
      'delivery',
    ]);
    expect(ended?.legs).toHaveLength(1);
    expect(ended?.picture.strokes.some(({ kind }) => kind === 'cast')).toBe(true);
  });

  it('tells what was asked, the most often first, from the nearest to the farthest', () => {
    const day = new TrainingDay('2026-03-01T08:00:00Z')
      .dog('wren')
      .open('s', 'wren')
      .rep([line(40), stop(20), left, ...home])
      .rep([stop(8)])
      .rep([{ skill: 'steady' }])
      .open('home', 'wren')
      .rep([...home]);
    const [second, first] = sessionsView(foldRecord(day.facts)).sessions;
    expect(first?.asked).toEqual([
      { skill: 'stop', times: 2, overM: { nearest: 8, farthest: 20 } },
      { skill: 'line', times: 1, overM: { nearest: 40, farthest: 40 } },
      { skill: 'cast-left', times: 1, overM: { nearest: 14, farthest: 14 } },
      { skill: 'steady', times: 1, overM: null },
    ]);
    expect(second?.asked.map(({ skill }) => skill)).toEqual(['pickup', 'delivery']);
  });

  it('draws nothing where no rep stands', () => {
    const day = new TrainingDay('2026-03-01T08:00:00Z').dog('wren').open('s', 'wren');
    expect(sessionsView(foldRecord(day.facts)).sessions[0]).toMatchObject({ drawn: null, asked: [] });
  });
});

describe('film and sound of a rep', () => {
  const heard = { from: 'microphone', name: 'Microphone', lengthS: 600, whistles: [], clicks: [] } as const;
  const day = () =>
    new TrainingDay('2026-03-01T08:00:00Z')
      .dog('wren')
      .open('s', 'wren')
      .rep([{ skill: 'stop' }], { rep: 'a' })
      .rep([{ skill: 'stop' }], { rep: 'b' });
  const back = (written: TrainingDay) => sessionBackView(foldRecord(written.facts), 's')?.done;

  it('are the first of what was joined to it, and whether the sound itself was kept', () => {
    const hash = 'a'.repeat(64);
    const done = back(
      day()
        .write('sound-heard', { sound: 'n', session: 's', ...heard, sha256: hash })
        .write('sound-joined', {
          sound: 'n',
          session: 's',
          joins: [
            { rep: 'a', leg: 0, atS: 161, by: 'program' },
            { rep: 'a', leg: 0, atS: 160, by: 'handler' },
          ],
        }),
    );
    expect(done?.map((rep) => rep.heard)).toEqual([
      [{ sound: 'n', name: 'Microphone', sha256: hash, atS: 160 }],
      [],
    ]);
  });

  it('are no more once the sound was taken out', () => {
    const done = back(
      day()
        .write('sound-heard', { sound: 'n', session: 's', ...heard })
        .write('sound-joined', { sound: 'n', session: 's', joins: [{ rep: 'a', atS: 160, by: 'handler' }] })
        .write('sound-dropped', { sound: 'n', session: 's' }),
    );
    expect(done?.map((rep) => rep.heard)).toEqual([[], []]);
  });

  it('lie on a film where a mark says so, three seconds before it', () => {
    const film = { film: 'f', session: 's', name: 'hedge.mp4', bytes: 900 };
    const mark = { mark: 'm', film: 'f', rep: 'b', what: 'sent', atS: 200, frameS: 0.04 };
    const linked = day().write('film-linked', film).write('film-marked', mark);
    const [a, b] = back(linked) ?? [];
    expect(b?.filmed).toEqual([{ film: 'f', name: 'hedge.mp4', atS: 197 }]);
    // The other was written down a minute before it: expected as much earlier, and looked for three seconds before that.
    expect(a?.filmed).toEqual([{ film: 'f', name: 'hedge.mp4', atS: 137 }]);
    expect(
      back(linked.write('film-unlinked', { film: 'f', session: 's' }))?.map((rep) => rep.filmed),
    ).toEqual([[], []]);
  });
});

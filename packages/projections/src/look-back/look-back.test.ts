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

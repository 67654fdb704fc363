import { describe, expect, it } from 'vitest';
import { createKennel } from '../kennel-of-facts.ts';
import { undoFacts } from '../taps.ts';
import { TrainingDay } from './training-day.fixture.ts';

const day = () => new TrainingDay('2026-03-01T09:00:00Z').dog('wren').open('s', 'wren');
const stop = { skill: 'stop', ask: { distanceM: 20 } } as const;

function workOf(facts: TrainingDay['facts']) {
  const kennel = createKennel();
  kennel.add(facts);
  const view = kennel.work('s', Date.parse('2026-03-01T10:00:00Z'), 0);
  if (view === null) throw new Error('expected the session to be there');
  return { kennel, view };
}

describe('what became of a rep', () => {
  it('says who, when and what it was before, step by step', () => {
    const written = day()
      .write('rep-recorded', { rep: 'r', session: 's', legs: [{ ...stop, grade: 'missed' }] })
      .write('rep-amended', { rep: 'r', legs: [{ ...stop, grade: 'missed', cause: 'handler' }] })
      .write('rep-amended', { rep: 'r', legs: [{ ...stop, grade: 'fair', cause: 'handler' }], note: 'late' });
    const facts = written.facts.map((fact, i) => (i === 4 ? { ...fact, by: 'Ada', device: 'phone' } : fact));
    const steps = workOf(facts).kennel.history('r')?.steps ?? [];
    expect(steps.map(({ what }) => what)).toEqual(['recorded', 'changed', 'changed']);
    expect(steps[0]?.changes).toEqual([{ of: 'leg-added', skill: 'stop', to: 'missed' }]);
    expect(steps[1]?.changes).toEqual([{ of: 'cause', skill: 'stop', from: 'dog', to: 'handler' }]);
    expect(steps[2]).toEqual({
      atMs: Date.parse('2026-03-01T09:05:00Z'),
      by: 'Ada',
      device: 'phone',
      what: 'changed',
      isUndo: false,
      changes: [
        { of: 'grade', skill: 'stop', from: 'missed', to: 'fair' },
        { of: 'note', from: '', to: 'late' },
      ],
    });
  });

  it('says how long the halt took, once that was kept', () => {
    const written = day()
      .write('rep-recorded', { rep: 'r', session: 's', legs: [{ ...stop, grade: 'good' }] })
      .write('rep-amended', { rep: 'r', legs: [{ ...stop, grade: 'good', latencyS: 0.84 }] })
      .write('rep-amended', { rep: 'r', legs: [{ ...stop, grade: 'good' }] });
    const steps = workOf(written.facts).kennel.history('r')?.steps ?? [];
    expect(steps.slice(1).map(({ changes }) => changes)).toEqual([
      [{ of: 'latency', skill: 'stop', fromS: null, toS: 0.84 }],
      [{ of: 'latency', skill: 'stop', fromS: 0.84, toS: null }],
    ]);
  });

  it('is nothing for a rep that no fact recorded', () => {
    expect(workOf(day().facts).kennel.history('nowhere')).toBeNull();
  });
});

describe('a rep taken out by hand', () => {
  const struck = () =>
    day()
      .write('rep-recorded', { rep: 'r', session: 's', legs: [{ ...stop, grade: 'good' }] })
      .write('rep-struck', { rep: 'r' });

  it('stands apart, and undo brings it back', () => {
    const written = struck();
    const { view } = workOf(written.facts);
    expect(view.done).toEqual([]);
    expect(view.struck.map(({ rep }) => rep)).toEqual(['r']);
    for (const { kind, body } of undoFacts(view)) written.write(kind, body);
    const back = workOf(written.facts).view;
    expect(back.done.map(({ rep }) => rep)).toEqual(['r']);
    expect(back.struck).toEqual([]);
    // What comes next to undo is the recording itself, not the bringing back.
    expect(undoFacts(back)).toMatchObject([{ kind: 'rep-struck', body: { rep: 'r', why: 'undone' } }]);
  });

  it('is out while one strike stands, whatever order the facts arrive in', () => {
    const written = struck().write('rep-struck', { rep: 'r' });
    const [first, second] = written.facts.slice(-2).map(({ id }) => id);
    written.write('rep-restored', { rep: 'r', undoes: second });
    expect(workOf(written.facts).view.struck[0]?.struckBy).toEqual([first]);
    written.write('rep-restored', { rep: 'r', undoes: first });
    expect(workOf(written.facts).view.done).toHaveLength(1);
    expect(workOf([...written.facts].reverse()).view.done).toHaveLength(1);
  });

  it('is not offered for bringing back where its recording was undone', () => {
    const written = day().write('rep-recorded', {
      rep: 'r',
      session: 's',
      legs: [{ ...stop, grade: 'good' }],
    });
    for (const { kind, body } of undoFacts(workOf(written.facts).view)) written.write(kind, body);
    expect(workOf(written.facts).view).toMatchObject({ done: [], struck: [], undo: null });
  });
});

describe('a rep put in from memory', () => {
  it('stands where its clock says, and is no tap to undo', () => {
    const written = day().rep([stop]).rep([stop]);
    const [first, second] = written.facts.slice(-2);
    const between = (Date.parse(first!.at) + Date.parse(second!.at)) / 2;
    const facts = [
      ...written.facts,
      {
        id: 'late',
        kind: 'rep-recorded',
        at: new Date(between).toISOString(),
        body: { rep: 'm', session: 's', legs: [{ ...stop, grade: 'fair' }], fromMemory: true },
      },
    ];
    const { view } = workOf(facts);
    expect(view.done.map(({ rep, fromMemory }) => [rep, fromMemory])).toEqual([
      [first!.body.rep, false],
      ['m', true],
      [second!.body.rep, false],
    ]);
    expect(view.undo?.rep).toBe(second!.body.rep);
  });
});

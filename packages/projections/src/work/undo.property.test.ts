import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createKennel } from '../kennel-of-facts.ts';
import { undoFacts } from '../taps.ts';
import type { WorkView } from '../views/views.ts';
import { TrainingDay } from './training-day.fixture.ts';

const CHAIN = [
  { skill: 'line', ask: { distanceM: 30 } },
  { skill: 'stop', ask: { distanceM: 15, wayFraction: 0.5 } },
  { skill: 'cast-left', ask: { distanceM: 15, castM: 10 } },
] as const;

type Tap = 'good' | 'missed' | 'ended' | 'note' | 'cause';

/** A session that is tapped through; `view` is what Work shows. */
class TappedSession {
  readonly day = new TrainingDay('2026-03-01T09:00:00Z').dog('dog').open('s', 'dog').focus('stop');
  #reps = 0;

  view(): WorkView {
    const kennel = createKennel();
    kennel.add(this.day.facts);
    const view = kennel.work('s', this.day.atMs, 0);
    if (view === null) throw new Error('expected the session to be there');
    return view;
  }

  /** True when the tap did something. */
  tap(tap: Tap): boolean {
    const { inHand, done } = this.view();
    const graded = (inHand?.graded ?? []).map(({ skill, ask, grade, cause }) => ({
      skill,
      ask,
      grade,
      ...(cause === null ? {} : { cause }),
    }));
    if (tap === 'good' || tap === 'missed') {
      const legs = [...graded, { ...CHAIN[graded.length]!, grade: tap }];
      if (inHand === null) {
        this.#reps += 1;
        this.day.write('rep-recorded', { rep: `r${this.#reps}`, session: 's', legs, chain: CHAIN });
      } else this.day.write('rep-amended', { rep: inHand.rep, legs });
      return true;
    }
    const rep = inHand?.rep ?? done.at(-1)?.rep;
    if (rep === undefined) return false;
    if (tap === 'note') this.day.write('rep-amended', { rep, note: `note ${this.day.facts.length}` });
    else if (inHand === null) return false;
    else if (tap === 'ended') this.day.write('rep-ended', { rep });
    else {
      if (graded.at(-1)?.grade !== 'missed') return false;
      const legs = graded.map((leg, n) => (n === graded.length - 1 ? { ...leg, cause: 'handler' } : leg));
      this.day.write('rep-amended', { rep, legs });
    }
    return true;
  }

  undo(): boolean {
    const facts = undoFacts(this.view());
    for (const { kind, body } of facts) this.day.write(kind, body);
    return facts.length > 0;
  }
}

/** What the handler sees of the record, without what tells of the taps themselves. */
function seen(session: TappedSession) {
  const { inHand, done, repNumber } = session.view();
  const reps = done.map(({ legs, clean, expectation }) => ({ legs, clean, expectation }));
  return JSON.stringify({
    reps,
    repNumber,
    inHand: inHand && { graded: inHand.graded, chain: inHand.chain },
  });
}

describe('undo', () => {
  it('takes tap after tap back, each to what was seen before it, and none is left over', () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom<Tap>('good', 'good', 'missed', 'ended', 'note', 'cause'), { maxLength: 12 }),
        (taps) => {
          const session = new TappedSession();
          const before: string[] = [];
          for (const tap of taps) {
            const was = seen(session);
            if (session.tap(tap)) before.push(was);
          }
          for (const was of before.reverse()) {
            expect(session.undo()).toBe(true);
            expect(seen(session)).toBe(was);
          }
          expect(session.undo()).toBe(false);
        },
      ),
      { numRuns: 25 },
    );
  });

  it('goes on rightly after an undo: grade, undo, grade again, undo, undo', () => {
    const session = new TappedSession();
    const start = seen(session);
    session.tap('missed');
    session.undo();
    session.tap('good');
    const good = seen(session);
    session.tap('missed');
    session.undo();
    expect(seen(session)).toBe(good);
    session.undo();
    expect(seen(session)).toBe(start);
    expect(session.view().undo).toBeNull();
  });

  it('keeps what was undone in the journal: nothing is removed, and a closed session has no undo', () => {
    const session = new TappedSession();
    session.tap('good');
    const { length } = session.day.facts;
    session.undo();
    expect(session.day.facts.length).toBe(length + 1);
    expect(session.day.facts.at(-1)).toMatchObject({ kind: 'rep-struck', body: { rep: 'r1' } });
    session.tap('good');
    session.day.write('session-closed', { session: 's' });
    expect(session.view().undo).toBeNull();
  });
});

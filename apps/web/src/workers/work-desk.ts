import type { AskedRep, JudgedRep, Kennel, LegRecord, TapFact, WorkView } from '@sedgeline/projections';
import { undoFacts } from '@sedgeline/projections';
import { askedOf, repInHand } from './asked-rep.ts';
import { blowFacts } from './blow-facts.ts';
import type { After, Tap, TapAnswer, WorkScreen } from './kennel-calls.ts';
import { memoryFacts } from './memory-facts.ts';
import { sessionSeed } from './session-seed.ts';
import { amendLegFacts, gradeFacts, type Recording } from './tap-facts.ts';

/** What the handler has in hand beside the record: a rep he chose, and what may still be said of the last one. */
export interface Hand {
  readonly session: string;
  readonly chosen: AskedRep | null;
  readonly after: After | null;
  /** A rep just put in from memory: what undo takes back first, since its place in the journal is not the last. */
  readonly added?: string | null;
}

/** The work desk: holds one session's hand, turns taps into facts and the record into the Work screen. */
export interface WorkDesk {
  readonly session: string;
  readonly hand: Hand;
  /** The screen as it stands; `null` where no fact names the session. */
  show(): WorkScreen | null;
  /** Looks at the record again: facts came from elsewhere, or time has passed. Taps on the old screen are let fall. */
  refresh(): void;
  /** `keep` puts facts on disk and into the kennel. */
  tap(turnCount: number, tap: Tap): Promise<TapAnswer>;
}

export interface DeskDoors {
  readonly kennel: Kennel;
  readonly nowMs: () => number;
  readonly newId: () => string;
  readonly keep: (facts: readonly TapFact[]) => Promise<boolean>;
}

const MINUTE_MS = 60_000;

/** Opens the desk of a session, with the hand as it was left. */
export function createWorkDesk(session: string, left: Hand | null, doors: DeskDoors): WorkDesk {
  const { kennel, nowMs, newId, keep } = doors;
  const seed = sessionSeed(session);
  let hand: Hand = left?.session === session ? left : { session, chosen: null, after: null };
  let turnCount = 0;

  /** What the handler has before him: made once, and kept until facts change it, so that no tap means another rep. */
  let seen: WorkView | null | undefined;
  const see = (): WorkView | null => {
    if (seen === undefined) seen = kennel.work(session, nowMs(), seed);
    return seen;
  };
  const putDown = async (facts: readonly TapFact[]): Promise<boolean> => {
    const saved = await keep(facts);
    seen = undefined;
    return saved;
  };
  const judged = (rep: AskedRep | null): JudgedRep | null =>
    rep === null ? null : kennel.judge(session, rep, nowMs());
  const put = (change: Partial<Hand>): void => {
    hand = { ...hand, ...change };
  };
  const choose = (rep: JudgedRep | null): TapAnswer => {
    if (rep === null) return { kind: 'nothing-that-way' };
    put({ chosen: askedOf(rep.rep), after: null });
    return { kind: 'done', saved: true };
  };
  const record = async (recording: Recording, more: readonly TapFact[] = []): Promise<TapAnswer> => {
    const saved = await putDown([...recording.facts, ...more]);
    put({ after: recording.after, chosen: see()?.inHand?.rep === recording.rep ? hand.chosen : null });
    const { rep, repNumber, legs } = recording;
    return { kind: 'recorded', rep, repNumber, legs, saved };
  };
  const plain = async (
    facts: readonly TapFact[],
    change: Partial<Hand> = { after: null },
  ): Promise<TapAnswer> => {
    if (facts.length === 0) return { kind: 'nothing-that-way' };
    const saved = await putDown(facts);
    put(change);
    return { kind: 'done', saved };
  };
  const legsOf = (view: WorkView, rep: string): readonly LegRecord[] =>
    (view.inHand?.rep === rep ? view.inHand.graded : view.done.find((one) => one.rep === rep)?.legs) ?? [];

  const sayCause = (view: WorkView, tap: Tap & { do: 'cause' }): Promise<TapAnswer> | TapAnswer => {
    const { after } = hand;
    if (after?.about !== 'cause') return { kind: 'nothing-that-way' };
    const { rep, repNumber, leg, grade, isRunThrough } = after;
    const next: After = isRunThrough
      ? { about: 'expectation', rep, repNumber, expectation: null }
      : { ...after, cause: tap.cause };
    return plain(amendLegFacts(rep, legsOf(view, rep), leg, grade, tap.cause), { after: next });
  };
  const sayExpectation = (tap: Tap & { do: 'expectation' }): Promise<TapAnswer> | TapAnswer => {
    const { after } = hand;
    if (after?.about !== 'expectation') return { kind: 'nothing-that-way' };
    const next = { after: { ...after, expectation: tap.expectation } };
    const body = { rep: after.rep, expectation: tap.expectation };
    return plain([{ kind: 'rep-amended', body }], next);
  };
  const breakOver = (view: WorkView): Promise<TapAnswer> | TapAnswer => {
    const running = view.breakRunning;
    if (running === null) return { kind: 'nothing-that-way' };
    const minutes = Math.max(0, Math.round(((nowMs() - running.startedAtMs) / MINUTE_MS) * 10) / 10);
    return plain([{ kind: 'break-taken', body: { session, minutes: Math.min(1440, minutes) } }]);
  };
  const grade = (
    view: WorkView,
    tap: Tap & { do: 'grade' | 'rest-good' },
  ): Promise<TapAnswer> | TapAnswer => {
    const asked = repInHand(view, hand.chosen);
    if (asked === null) return { kind: 'nothing-that-way' };
    const left = asked.legs.length - (view.inHand?.graded.length ?? 0);
    const grades = tap.do === 'grade' ? [tap.grade] : Array.from({ length: left }, () => 'good' as const);
    return record(gradeFacts(view, asked, grades, newId));
  };
  const endRep = (view: WorkView): Promise<TapAnswer> | TapAnswer => {
    const inHand = view.inHand;
    if (inHand === null) return { kind: 'nothing-that-way' };
    const isAsked = hand.after?.rep === inHand.rep;
    const change = { chosen: null, after: isAsked ? hand.after : null };
    return plain([{ kind: 'rep-ended', body: { rep: inHand.rep } }], change);
  };
  const note = (view: WorkView, text: string): Promise<TapAnswer> | TapAnswer => {
    const rep = view.inHand?.rep ?? view.done.at(-1)?.rep;
    return rep === undefined
      ? { kind: 'nothing-that-way' }
      : plain([{ kind: 'rep-amended', body: { rep, note: text } }], {});
  };
  const blew = (view: WorkView, tap: Tap & { do: 'blew' }): Promise<TapAnswer> | TapAnswer => {
    const blown = blowFacts(view, hand.chosen, tap.when);
    if (blown === null) return { kind: 'nothing-that-way' };
    if (blown.facts.length > 0) return plain(blown.facts, { chosen: blown.chosen });
    put({ chosen: blown.chosen });
    return { kind: 'done', saved: true };
  };
  const onRecord = () => kennel.record.sessions.find((one) => one.session === session);
  const fromMemory = (tap: Tap & { do: 'from-memory' }): Promise<TapAnswer> | TapAnswer => {
    const found = onRecord();
    if (found === undefined) return { kind: 'nothing-that-way' };
    const added = newId();
    return plain(memoryFacts(found, tap, nowMs(), added), { added });
  };
  const undo = (view: WorkView): Promise<TapAnswer> | TapAnswer => {
    const added =
      view.closedAtMs === null ? onRecord()?.reps.find(({ rep }) => rep === hand.added) : undefined;
    const facts =
      added === undefined
        ? undoFacts(view)
        : [{ kind: 'rep-struck', body: { rep: added.rep, why: 'undone', undoes: added.orderKey.id } }];
    return plain(facts, { after: null, chosen: null, added: null });
  };
  const close = (view: WorkView): Promise<TapAnswer> => {
    const ended = view.inHand === null ? [] : [{ kind: 'rep-ended', body: { rep: view.inHand.rep } }];
    return plain([...ended, { kind: 'session-closed', body: { session } }], { chosen: null, after: null });
  };

  const act = (view: WorkView, tap: Tap): Promise<TapAnswer> | TapAnswer => {
    const atMs = nowMs();
    switch (tap.do) {
      case 'grade':
      case 'rest-good':
        return grade(view, tap);
      case 'ended':
        return endRep(view);
      case 'cause':
        return sayCause(view, tap);
      case 'expectation':
        return sayExpectation(tap);
      case 'amend-leg':
        return plain(amendLegFacts(tap.rep, legsOf(view, tap.rep), tap.leg, tap.grade, tap.cause));
      case 'strike':
        return plain([{ kind: 'rep-struck', body: { rep: tap.rep } }]);
      case 'undo':
        return undo(view);
      case 'restore':
        return plain(
          (view.struck.find(({ rep }) => rep === tap.rep)?.struckBy ?? []).map((undoes) => ({
            kind: 'rep-restored',
            body: { rep: tap.rep, undoes },
          })),
        );
      case 'blew':
        return blew(view, tap);
      case 'reward':
        return plain([{ kind: 'rep-amended', body: { rep: tap.rep, reward: tap.reward } }], {});
      case 'got-it':
        return plain([{ kind: 'rep-amended', body: { rep: tap.rep, gotItAnyway: tap.got } }], {});
      case 'from-memory':
        return fromMemory(tap);
      case 'voice': {
        const { do: _, ...body } = tap;
        return plain([{ kind: 'voice-noted', body }], {});
      }
      case 'voice-drop':
        return plain([{ kind: 'voice-dropped', body: { rep: tap.rep, voice: tap.voice } }], {});
      case 'turn': {
        const asked = repInHand(view, hand.chosen);
        return choose(
          asked === null || view.inHand !== null ? null : kennel.turn(session, asked, tap.turn, atMs),
        );
      }
      case 'choose':
        put({ chosen: tap.rep });
        return { kind: 'done', saved: true };
      case 'skill':
        return choose(view.inHand !== null ? null : kennel.chainFor(session, tap.skill, atMs));
      case 'as-suggested':
        put({ chosen: null });
        return { kind: 'done', saved: true };
      case 'break':
        return plain([{ kind: 'break-started', body: { session, minutes: tap.minutes } }]);
      case 'break-over':
        return breakOver(view);
      case 'note':
        return note(view, tap.note);
      case 'close':
        return close(view);
    }
  };

  return {
    session,
    get hand() {
      return hand;
    },
    show: () => {
      const view = see();
      if (view === null) return null;
      const chosen = hand.chosen === null ? null : judged(repInHand(view, hand.chosen));
      return { view, chosen, after: hand.after, turnCount };
    },
    refresh: () => {
      seen = undefined;
      turnCount += 1;
    },
    tap: async (seenTurn, tap) => {
      if (seenTurn !== turnCount) return { kind: 'stale' };
      turnCount += 1;
      const view = see();
      if (view === null) return { kind: 'nothing-that-way' };
      const { added } = hand;
      const answer = await act(view, tap);
      // What was put in from memory is the last tap until another is made.
      if (added && hand.added === added) put({ added: null });
      return answer;
    },
  };
}

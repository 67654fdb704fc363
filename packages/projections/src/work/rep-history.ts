import { compareKeys, type Leg, type RepAmended, sameContent } from '@sedgeline/journal';
import type { Keyed } from '../record/keyed.ts';
import type { RepThread } from '../record/rep-thread.ts';
import type { RepChange, RepHistoryView, RepStep } from '../views/rep-history-view.ts';

/** What of a rep can be changed, as it stood at a moment. */
interface Standing {
  readonly legs: readonly Leg[];
  readonly clean: boolean;
  readonly expectation: NonNullable<RepAmended['expectation']>;
  readonly note: string;
  readonly reward: NonNullable<RepAmended['reward']>;
  readonly gotItAnyway: boolean;
}

const NOTHING: Standing = {
  legs: [],
  clean: false,
  expectation: 'none',
  note: '',
  reward: [],
  gotItAnyway: false,
};

/** Every step in the life of a rep, oldest first: who, when, and what it was before. Nothing is ever left out. */
export function repHistory(thread: RepThread): RepHistoryView | null {
  const { recorded } = thread;
  if (recorded === null) return null;
  const steps: RepStep[] = [];
  let now = after(NOTHING, recorded.body);
  const what = recorded.body.fromMemory === true ? 'from-memory' : 'recorded';
  steps.push(step(recorded, what, changesBetween(NOTHING, now)));
  const later = [...thread.amendments, ...thread.ends, ...thread.strikes, ...thread.restored].sort((a, b) =>
    compareKeys(a.key, b.key),
  );
  for (const fact of later) {
    switch (fact.fact.kind) {
      case 'rep-amended': {
        const next = after(now, fact.body as RepAmended);
        steps.push(step(fact, 'changed', changesBetween(now, next)));
        now = next;
        break;
      }
      case 'rep-ended':
        steps.push(step(fact, 'ended' in fact.body && fact.body.ended === false ? 'went-on' : 'ended', []));
        break;
      default:
        steps.push(step(fact, fact.fact.kind === 'rep-struck' ? 'struck' : 'restored', []));
    }
  }
  return { rep: recorded.body.rep, steps };
}

function step(fact: Keyed<object>, what: RepStep['what'], changes: readonly RepChange[]): RepStep {
  const { by, device } = fact.fact;
  const isUndo = what !== 'restored' && 'undoes' in fact.body && fact.body.undoes !== undefined;
  return { atMs: fact.atMs, by: by ?? null, device: device ?? null, what, isUndo, changes };
}

type Said = Pick<RepAmended, 'legs' | 'clean' | 'expectation' | 'note' | 'reward' | 'gotItAnyway'>;

function after(before: Standing, body: Said): Standing {
  return {
    legs: body.legs ?? before.legs,
    clean: body.clean ?? before.clean,
    expectation: body.expectation ?? before.expectation,
    note: body.note ?? before.note,
    reward: body.reward ?? before.reward,
    gotItAnyway: body.gotItAnyway ?? before.gotItAnyway,
  };
}

function changesBetween(was: Standing, now: Standing): RepChange[] {
  const changes: RepChange[] = [];
  for (let i = 0; i < Math.max(was.legs.length, now.legs.length); i++) {
    changes.push(...legChanges(was.legs[i], now.legs[i]));
  }
  if (was.clean !== now.clean) changes.push({ of: 'clean', to: now.clean });
  if (was.expectation !== now.expectation)
    changes.push({ of: 'expectation', from: was.expectation, to: now.expectation });
  if (was.note !== now.note) changes.push({ of: 'note', from: was.note, to: now.note });
  if (!sameContent(was.reward, now.reward)) changes.push({ of: 'reward', from: was.reward, to: now.reward });
  if (was.gotItAnyway !== now.gotItAnyway) changes.push({ of: 'got-it', to: now.gotItAnyway });
  return changes;
}

function legChanges(was: Leg | undefined, now: Leg | undefined): RepChange[] {
  if (now === undefined)
    return was === undefined ? [] : [{ of: 'leg-taken', skill: was.skill, from: was.grade }];
  const { skill } = now;
  if (was === undefined) return [{ of: 'leg-added', skill, to: now.grade }];
  const changes: RepChange[] = [];
  if (was.grade !== now.grade) changes.push({ of: 'grade', skill, from: was.grade, to: now.grade });
  const [from, to] = [causeOf(was), causeOf(now)];
  if (from !== to) changes.push({ of: 'cause', skill, from, to });
  if (!sameContent(was.ask, now.ask))
    changes.push({
      of: 'ask',
      skill,
      fromM: was.ask.distanceM ?? null,
      toM: now.ask.distanceM ?? null,
    });
  if (was.latencyS !== now.latencyS)
    changes.push({ of: 'latency', skill, fromS: was.latencyS ?? null, toS: now.latencyS ?? null });
  return changes;
}

/** Whose a leg was: nobody's where it went well, the dog's where nobody said. */
const causeOf = ({ grade, cause }: Leg) => (grade === 'good' ? null : (cause ?? 'dog'));

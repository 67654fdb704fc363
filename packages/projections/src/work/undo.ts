import { compareKeys, type RepAmended } from '@sedgeline/journal';
import type { Keyed } from '../record/keyed.ts';
import type { RepThread } from '../record/rep-thread.ts';
import type { WorkView } from '../views/views.ts';

interface Tap {
  readonly thread: RepThread;
  readonly fact: Keyed<object>;
}

/** The fact that a fact takes back, where it does. */
function undoneBy({ fact }: Tap): string | null {
  const { body } = fact;
  return 'undoes' in body && typeof body.undoes === 'string' ? body.undoes : null;
}

const AMENDED_FIELDS = ['legs', 'clean', 'expectation', 'note', 'reward', 'gotItAnyway'] as const;

/**
 * The last tap of a session that stands, and the facts that take it back. Facts are never removed: an undone tap and its
 * undoing both stay in the journal, and the next undo goes one tap further back.
 */
export function lastUndo(threads: readonly RepThread[]): WorkView['undo'] {
  const taps = standingTaps(threads);
  const last = taps.at(-1);
  if (last === undefined) return null;
  const { thread, fact } = last;
  const rep = thread.recorded?.body.rep;
  if (rep === undefined) return null;
  const undoes = fact.key.id;
  if (fact.fact.kind === 'rep-struck') {
    return { rep, fact: undoes, facts: [{ kind: 'rep-restored', body: { rep, undoes } }] };
  }
  if (fact === thread.recorded) {
    return { rep, fact: undoes, facts: [{ kind: 'rep-struck', body: { rep, why: 'undone', undoes } }] };
  }
  if (fact.fact.kind === 'rep-ended') {
    return { rep, fact: undoes, facts: [{ kind: 'rep-ended', body: { rep, ended: false, undoes } }] };
  }
  const before = fieldsBefore(thread, taps);
  const changed = AMENDED_FIELDS.filter((field) => (fact.body as RepAmended)[field] !== undefined);
  const body = Object.fromEntries(changed.map((field) => [field, before[field]]));
  return { rep, fact: undoes, facts: [{ kind: 'rep-amended', body: { rep, ...body, undoes } }] };
}

/**
 * Taps in order, without those that were undone, those of reps whose recording was undone, and recordings from memory: their
 * place in the order is not that of the tap. Of a rep taken out by hand only the taking out is left to undo.
 */
function standingTaps(threads: readonly RepThread[]): Tap[] {
  const all = threads
    .flatMap((thread): Tap[] => {
      const rep = thread.rep();
      if (rep === null) return [];
      if (rep.struck) {
        const byHand = thread.strikes.filter(({ key }) => rep.struckBy.includes(key.id));
        return byHand.map((fact) => ({ thread, fact }));
      }
      const ended = thread.ended?.body.ended === false ? null : thread.ended;
      const recorded = rep.fromMemory ? null : thread.recorded;
      return [recorded, ...thread.amendments, ended]
        .filter((fact) => fact !== null)
        .map((fact) => ({ thread, fact }));
    })
    .sort((a, b) => compareKeys(a.fact.key, b.fact.key));
  const undone = new Set(all.map(undoneBy));
  return all.filter((tap) => undoneBy(tap) === null && !undone.has(tap.fact.key.id));
}

/** The rep's amendable fields as they stood before its last standing tap. */
function fieldsBefore(
  thread: RepThread,
  taps: readonly Tap[],
): Record<(typeof AMENDED_FIELDS)[number], unknown> {
  const recorded = thread.recorded?.body;
  const fields: Record<(typeof AMENDED_FIELDS)[number], unknown> = {
    legs: recorded?.legs ?? [],
    clean: recorded?.clean ?? false,
    expectation: recorded?.expectation ?? 'none',
    note: recorded?.note ?? '',
    reward: recorded?.reward ?? [],
    gotItAnyway: recorded?.gotItAnyway ?? false,
  };
  const amended = taps
    .filter((tap) => tap.thread === thread && tap.fact.fact.kind === 'rep-amended')
    .slice(0, -1);
  for (const { fact } of amended) {
    for (const field of AMENDED_FIELDS) fields[field] = (fact.body as RepAmended)[field] ?? fields[field];
  }
  return fields;
}

import { type Fact, readJournal, readTime } from '@sedgeline/journal';
import { createKennel, factsKnownAt, type KennelOfFacts } from '@sedgeline/projections';
import { CliFailure, EXIT } from './cli-failure.ts';
import type { Terminal } from './terminal.ts';

/** A journal that was read: its kennel at the moment asked for, and what was passed over. */
export interface OpenJournal {
  readonly kennel: KennelOfFacts;
  /** The moment the answer is for: `--at`, or the journal's last fact. */
  readonly atMs: number;
  /** What is told beside the answer: lines passed over, facts set aside. */
  readonly beside: { readonly skipped?: number; readonly setAside?: number };
}

export interface JournalOptions {
  readonly keepGoing?: boolean | undefined;
  readonly at?: string | undefined;
}

/**
 * Reads a journal for an answer. With a bad line it refuses, naming the first and how many, unless told to keep going.
 * @throws CliFailure for an unreadable file (5), a bad line or no fact at all (3), a moment that is none (2)
 */
export function openJournal(terminal: Terminal, path: string, options: JournalOptions): OpenJournal {
  const reading = readJournal(terminal.readFile(path));
  const skipped = reading.badLines.length;
  const first = reading.errors[0];
  if (first !== undefined && options.keepGoing !== true) {
    const more = skipped > 1 ? ` (and ${skipped - 1} more bad ${skipped === 2 ? 'line' : 'lines'})` : '';
    const message = `${first.message}${more}; --keep-going answers from the good lines`;
    throw new CliFailure({ ...first, message, exit: EXIT.badInput, file: path });
  }
  const atMs = moment(options.at) ?? lastMoment(reading.facts);
  if (atMs === null) {
    const message =
      'there is no fact in it, so there is no moment to answer for; give --at or another journal';
    throw new CliFailure({ code: 'NOTHING_THERE', message, exit: EXIT.badInput, file: path });
  }
  const kennel = createKennel();
  kennel.add(options.at === undefined ? reading.facts : factsKnownAt(reading.facts, atMs));
  const { setAside } = kennel.record;
  return {
    kennel,
    atMs,
    beside: { ...(skipped > 0 ? { skipped } : {}), ...(setAside > 0 ? { setAside } : {}) },
  };
}

function moment(at: string | undefined): number | null {
  if (at === undefined) return null;
  const reading = readTime(at);
  if (reading.ok) return reading.ms;
  const message = `--at: expected a time such as 2026-03-01T09:00:00Z, years 1980 to 2200, got ${at}`;
  throw new CliFailure({ code: 'USAGE', message, exit: EXIT.usage, field: 'at' });
}

function lastMoment(facts: readonly Fact[]): number | null {
  return facts.reduce<number | null>((last, fact) => {
    const reading = readTime(fact.at);
    return reading.ok && (last === null || reading.ms > last) ? reading.ms : last;
  }, null);
}

/**
 * The id, if it is one of those that are there; facts set aside are told, since it may be among them.
 * @throws CliFailure (3) naming what there is
 */
export function known(
  what: 'dog' | 'session' | 'ground' | 'rep' | 'goal' | 'layout',
  id: string,
  there: Iterable<string>,
  file: string,
  setAside = 0,
): string {
  const ids = [...there];
  if (ids.includes(id)) return id;
  const shown = ids.slice(0, 12).join(', ');
  const rest = ids.length > 12 ? `, and ${ids.length - 12} more` : '';
  const have = ids.length === 0 ? `it names no ${what}` : `it has ${shown}${rest}`;
  const aside =
    setAside === 0 ? '' : `; ${setAside} of its facts ${setAside === 1 ? 'is' : 'are'} set aside, see check`;
  const code = `UNKNOWN_${what.toUpperCase()}` as const;
  throw new CliFailure({
    code,
    message: `no ${what} ${id}; ${have}${aside}`,
    exit: EXIT.badInput,
    file,
    field: what,
  });
}

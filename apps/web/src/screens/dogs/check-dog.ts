import type { FieldFault } from '@sedgeline/words';

/** What was typed into the form of a new dog. Empty text is "not said". */
export interface DogDraft {
  readonly name: string;
  readonly born: string;
  readonly sex: 'bitch' | 'dog' | 'unsaid';
  readonly breed: string;
}

/** A new dog, ready to be written down. */
export interface NewDog {
  readonly name: string;
  readonly born?: string;
  readonly sex?: 'bitch' | 'dog';
  readonly breed?: string;
}

export interface DogFaults {
  readonly name?: FieldFault;
  readonly born?: FieldFault;
}

export type CheckedDog =
  | { readonly ok: true; readonly dog: NewDog }
  | { readonly ok: false; readonly faults: DogFaults };

const LONGEST_NAME = 60;
/** No dog on record has lived longer than about 29 years; past 25 it is a mistyped year (our judgement, 2026). */
const OLDEST_MS = 25 * 365.25 * 86_400_000;

/** Checks a draft against the kennel's names and today's date (epoch ms). Says no field by field. */
export function checkDog(draft: DogDraft, taken: readonly string[], nowMs: number): CheckedDog {
  const name = draft.name.trim();
  const nameFault = checkName(name, taken);
  const bornFault = draft.born.trim() === '' ? null : checkBorn(draft.born.trim(), nowMs);
  if (nameFault || bornFault) {
    return {
      ok: false,
      faults: { ...(nameFault ? { name: nameFault } : {}), ...(bornFault ? { born: bornFault } : {}) },
    };
  }
  return {
    ok: true,
    dog: {
      name,
      ...(draft.born.trim() === '' ? {} : { born: draft.born.trim() }),
      ...(draft.sex === 'unsaid' ? {} : { sex: draft.sex }),
      ...(draft.breed.trim() === '' ? {} : { breed: draft.breed.trim() }),
    },
  };
}

function checkName(name: string, taken: readonly string[]): FieldFault | null {
  if (name === '') return 'name-empty';
  if ([...name].length > LONGEST_NAME) return 'name-long';
  const folded = name.toLocaleLowerCase();
  return taken.some((other) => other.trim().toLocaleLowerCase() === folded) ? 'name-taken' : null;
}

function checkBorn(born: string, nowMs: number): FieldFault | null {
  const bornMs = dateMs(born);
  if (bornMs === null) return 'born-unreadable';
  if (bornMs > nowMs) return 'born-in-future';
  return nowMs - bornMs > OLDEST_MS ? 'born-too-long-ago' : null;
}

/** Midnight UTC of a YYYY-MM-DD that is a day of the calendar, else `null`. */
function dateMs(text: string): number | null {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return null;
  const [year, month, day] = text.split('-').map(Number) as [number, number, number];
  const ms = Date.UTC(year, month - 1, day);
  const back = new Date(ms);
  return back.getUTCMonth() === month - 1 && back.getUTCDate() === day ? ms : null;
}

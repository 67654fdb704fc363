import type { GroundFault } from '@sedgeline/words';
import { typedNumber } from './editor/typed-number.ts';

/** What was typed into the form of a new ground. Empty text is "not said". */
export interface GroundDraft {
  readonly name: string;
  readonly lat: string;
  readonly lon: string;
  readonly note: string;
}

/** A new ground, ready to be written down. */
export interface NewGround {
  readonly name: string;
  readonly latDeg?: number;
  readonly lonDeg?: number;
  readonly note?: string;
}

export type GroundFaults = Partial<Record<'name' | 'lat' | 'lon', GroundFault>>;

const LONGEST_NAME = 60;

/** Checks a draft against the grounds there are. Says no field by field. */
export function checkGround(
  draft: GroundDraft,
  taken: readonly string[],
): { readonly ok: true; readonly ground: NewGround } | { readonly ok: false; readonly faults: GroundFaults } {
  const name = draft.name.trim();
  const nameFault = checkName(name, taken);
  const [lat, lon] = [checkAngle(draft.lat, 90), checkAngle(draft.lon, 180)];
  const isHalf = (lat === null) !== (lon === null);
  const latFault: GroundFault | null =
    lat === 'wrong' ? 'lat-range' : isHalf && lat === null ? 'half-place' : null;
  const lonFault: GroundFault | null =
    lon === 'wrong' ? 'lon-range' : isHalf && lon === null ? 'half-place' : null;
  if (nameFault || latFault || lonFault) {
    return {
      ok: false,
      faults: {
        ...(nameFault ? { name: nameFault } : {}),
        ...(latFault ? { lat: latFault } : {}),
        ...(lonFault ? { lon: lonFault } : {}),
      },
    };
  }
  const note = draft.note.trim();
  return {
    ok: true,
    ground: {
      name,
      ...(typeof lat === 'number' && typeof lon === 'number' && { latDeg: lat, lonDeg: lon }),
      ...(note !== '' && { note }),
    },
  };
}

function checkName(name: string, taken: readonly string[]): GroundFault | null {
  if (name === '') return 'name-empty';
  if ([...name].length > LONGEST_NAME) return 'name-long';
  const folded = name.toLocaleLowerCase();
  return taken.some((other) => other.trim().toLocaleLowerCase() === folded) ? 'name-taken' : null;
}

function checkAngle(text: string, most: number): number | 'wrong' | null {
  if (text.trim() === '') return null;
  const value = typedNumber(text);
  return value === null || Math.abs(value) > most ? 'wrong' : value;
}

import type { ToldGround } from '@sedgeline/engine/ability';
import type { Words } from '@sedgeline/words';

/** What was typed into the two questions; empty text and `unsaid` are "not said". */
export interface ToldDraft {
  readonly farthest: string;
  readonly ground: ToldGround | 'unsaid';
}

/** What may be wrong, by the catalogue's own codes. */
export type ToldFault = Parameters<Words['dog']['told']['fault']>[0];

export type ReadTold =
  | { readonly ok: true; readonly farthestM: number | null; readonly ground: ToldGround | null }
  | { readonly ok: false; readonly fault: ToldFault };

const FARTHEST_M = 400;

/** Reads a draft, its distance in units of `unitM` metres. Says no where a number is none or too great, and where nothing is said. */
export function readTold({ farthest, ground }: ToldDraft, unitM: number): ReadTold {
  const text = farthest.trim().replace(',', '.');
  const shown = Number(text);
  if (text !== '' && !(Number.isFinite(shown) && shown >= 0))
    return { ok: false, fault: 'distance-unreadable' };
  const farthestM = text === '' ? null : shown * unitM;
  if (farthestM !== null && farthestM > FARTHEST_M) return { ok: false, fault: 'distance-far' };
  if (farthestM === null && ground === 'unsaid') return { ok: false, fault: 'nothing-told' };
  return { ok: true, farthestM, ground: ground === 'unsaid' ? null : ground };
}

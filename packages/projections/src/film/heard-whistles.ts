import type { SoundRecord } from '../sound/sound-record.ts';
import type { FilmRecord } from './film-record.ts';

/** A whistle that was heard in the sound of a film and joined to a rep, and is not marked on the film. */
export interface HeardWhistle {
  readonly rep: string;
  readonly atS: number;
}

/** A sound that was listened to, as far as a film needs it. */
export type ListenedTo = Pick<SoundRecord, 'name' | 'bytes' | 'whistles' | 'joins'>;

/** Joins name a call by when it begins; clicks are joined too. */
const SAME_CALL_S = 0.001;

/** A whistle marked so near to one that was heard is that one: blasts follow one another more slowly (our judgement, 2026). */
const SAME_BLAST_S = 0.25;

/**
 * The whistles that could be marked on a film because they were heard in it: the joins of every sound of the same name and size as one
 * of its files, where no whistle of that rep is marked by then. By their time; nothing is marked by itself.
 */
export function heardWhistles(
  { files, name, bytes, marks }: Pick<FilmRecord, 'files' | 'name' | 'bytes' | 'marks'>,
  sounds: readonly ListenedTo[],
): readonly HeardWhistle[] {
  const own = [...files, { name, bytes }];
  return sounds
    .filter((sound) => own.some((file) => file.name === sound.name && file.bytes === sound.bytes))
    .flatMap(({ joins, whistles }) => joins.filter((join) => isWhistle(join, whistles)))
    .map(({ rep, atS }) => ({ rep, atS }))
    .filter(({ rep, atS }) => !marks.some((mark) => isThat(mark, rep, atS)))
    .toSorted((a, b) => a.atS - b.atS);
}

const isWhistle = ({ atS }: { readonly atS: number }, whistles: ListenedTo['whistles']): boolean =>
  whistles.some(({ startS }) => Math.abs(startS - atS) < SAME_CALL_S);

const isThat = (mark: FilmRecord['marks'][number], rep: string, atS: number): boolean =>
  mark.rep === rep && mark.what === 'whistle' && Math.abs(mark.atS - atS) <= SAME_BLAST_S;

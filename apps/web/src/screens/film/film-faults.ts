import type { FilmFault } from '@sedgeline/words';
import type { PlayerNow } from './film-player.ts';
import type { FilmFile } from './use-film-file.ts';

/** A film whose header promises so much more than its frames hold was cut, seconds (our judgement, 2026): sound may outlast the picture by less. */
const CUT_S = 1;

/** Everything that is wrong with a film, the worst first; of a film that shows no picture only that. */
export function filmFaults(
  index: FilmFile['index'],
  { picture, brokenAtS, lengthS }: Pick<PlayerNow, 'picture' | 'brokenAtS' | 'lengthS'>,
): readonly FilmFault[] {
  if (picture === 'none') {
    if (index === 'no-picture') return ['no-picture'];
    return [index === 'unreadable' ? 'not-a-film' : 'cannot-show'];
  }
  const faults: FilmFault[] = [];
  if (brokenAtS !== null) faults.push('breaks-off');
  if (index === 'unreadable' || index === 'no-picture') faults.push('no-index');
  if (typeof index === 'string') return faults;
  if (brokenAtS === null && lengthS !== null && lengthS > index.lengthS + CUT_S) faults.push('cut-short');
  if (!index.hasSound) faults.push('no-sound');
  return faults;
}

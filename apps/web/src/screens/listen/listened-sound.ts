import type { SoundHeard } from '@sedgeline/journal';
import { filmStart, type ListenedSound, type SessionBackView } from '@sedgeline/projections';
import type { EarNote, Listened } from '../../devices/ear.ts';
import { filmTakenAt } from '../../devices/film-taken-at.ts';
import type { ListenedDraft } from '../../state/listened-drafts.ts';

/** A sound that was listened to, as the result shows it and as it may be kept. */
export interface HeardSource {
  readonly listened: ListenedSound;
  readonly notes: readonly EarNote[];
  readonly body: SoundHeard;
  /** To be heard again, where it is at hand. */
  readonly playable: Blob | null;
  readonly isNotKept: boolean;
}

/** A microphone's own clock is the taps': within this, its buffers and a slow start (our judgement, 2026). */
const LIVE_WITHIN_S = 2;
/** A file says when it was begun or ended, by a camera's clock or the phone's (our judgement, 2026). */
const FILE_WITHIN_S = 300;

const heardBody = ({ whistles, clicks }: Pick<Listened, 'whistles' | 'clicks'>) => ({
  whistles: whistles.map(({ startS, endS, kind, pitchHz, sureness }) => ({
    startS,
    endS,
    kind,
    pitchHz,
    sureness,
  })),
  clicks: clicks.map(({ timeS, sureness }) => ({ timeS, sureness })),
});

/** A file that was listened to. When it began is told by its own times, as far as they fit the taps. */
export async function heardInFile(
  file: File,
  { lengthS, notes, ...heard }: Listened,
  { session, done }: SessionBackView,
  sound: string,
): Promise<HeardSource> {
  const times = { takenAtMs: await filmTakenAt(file).catch(() => null), writtenAtMs: file.lastModified };
  const atMs = filmStart(
    times,
    lengthS,
    done.filter((rep) => !rep.fromMemory).map((rep) => rep.atMs),
  );
  const body = heardBody(heard);
  return {
    listened: { lengthS, starts: atMs === null ? null : { atMs, withinS: FILE_WITHIN_S }, ...body },
    notes,
    body: {
      sound,
      session,
      from: 'file',
      name: file.name,
      lengthS,
      bytes: file.size,
      ...begins(atMs),
      ...body,
    },
    playable: file,
    isNotKept: false,
  };
}

/** What the microphone heard. */
export function heardByMicrophone(
  draft: ListenedDraft,
  { session }: SessionBackView,
  name: string,
  sound: string,
): HeardSource {
  const { lengthS, startsAtMs, notes, sound: kept, isNotKept } = draft;
  const body = heardBody(draft);
  return {
    listened: { lengthS, starts: { atMs: startsAtMs, withinS: LIVE_WITHIN_S }, ...body },
    notes,
    body: {
      sound: kept?.id ?? sound,
      session,
      from: 'microphone',
      name,
      lengthS,
      ...begins(startsAtMs),
      ...(kept === null ? {} : { bytes: kept.bytes, sha256: kept.sha256 }),
      ...body,
    },
    playable: null,
    isNotKept,
  };
}

const begins = (atMs: number | null) =>
  atMs === null ? {} : { startsAt: new Date(Math.round(atMs)).toISOString() };

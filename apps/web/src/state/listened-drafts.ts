import type { HeardSounds } from '@sedgeline/engine/sound';
import { create } from 'zustand';
import { createJSONStorage, persist } from 'zustand/middleware';
import type { EarNote } from '../devices/ear.ts';
import { pageStorage } from '../devices/page-storage.ts';
import type { RecordName } from '../workers/kennel-calls.ts';

/** What the microphone heard of a session and nobody has joined yet. */
export interface ListenedDraft {
  readonly lengthS: number;
  readonly startsAtMs: number;
  readonly whistles: HeardSounds['whistles'];
  readonly clicks: HeardSounds['clicks'];
  readonly notes: readonly EarNote[];
  /** The sound, where it is kept on the device. */
  readonly sound: { readonly id: string; readonly bytes: number; readonly sha256: string } | null;
  /** The sound was to be kept, and the device would not. */
  readonly isNotKept: boolean;
}

interface Drafts {
  readonly waiting: Readonly<Record<string, ListenedDraft>>;
}

/** Heard and not yet joined, session by session, kept on the device over a reload; none of it is in the record. */
const useDrafts = create<Drafts>()(
  persist((): Drafts => ({ waiting: {} }), {
    name: 'sedgeline.listened',
    version: 1,
    storage: createJSONStorage(() => pageStorage),
  }),
);

const keyOf = (record: RecordName, session: string): string => `${record} ${session}`;

export const useListenedDraft = (record: RecordName, session: string): ListenedDraft | null =>
  useDrafts((s) => s.waiting[keyOf(record, session)] ?? null);

/** Ids of the sounds that lie on the device for what waits. */
export const soundsWaiting = (): ReadonlySet<string> =>
  new Set(
    Object.values(useDrafts.getState().waiting).flatMap(({ sound }) => (sound === null ? [] : [sound.id])),
  );

export function leaveListened(record: RecordName, session: string, draft: ListenedDraft): void {
  useDrafts.setState(({ waiting }) => ({ waiting: { ...waiting, [keyOf(record, session)]: draft } }));
}

/** Its record is gone, and with it all that waited to be joined to it. */
export function dropListenedOf(record: RecordName): void {
  useDrafts.setState(({ waiting }) => ({
    waiting: Object.fromEntries(Object.entries(waiting).filter(([key]) => !key.startsWith(`${record} `))),
  }));
}

export function dropListened(record: RecordName, session: string): void {
  useDrafts.setState(({ waiting }) => {
    const { [keyOf(record, session)]: _, ...rest } = waiting;
    return { waiting: rest };
  });
}

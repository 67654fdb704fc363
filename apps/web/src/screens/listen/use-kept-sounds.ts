import type { SoundRecord } from '@sedgeline/projections';
import { listenDesk } from '../../state/kennel.ts';
import { useRecordView } from '../../state/use-record-view.ts';

/** Sounds of the session that stand in the record, and anew whenever facts were added. */
export function useKeptSounds(session: string): readonly SoundRecord[] {
  const sounds = useRecordView(keptSounds, session);
  return sounds === 'waiting' ? [] : sounds;
}

const keptSounds = (session: string) => listenDesk().soundsOf(session);

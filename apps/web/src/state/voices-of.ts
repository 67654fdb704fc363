import { VoiceStore } from '../devices/voice-store.ts';
import type { RecordName } from '../workers/kennel-calls.ts';

/** Sounds of a record: one's own and the invented one's never share a database. */
export const voicesOf = (record: RecordName): VoiceStore =>
  new VoiceStore(record === 'mine' ? 'sedgeline-voice' : 'sedgeline-demo-voice');

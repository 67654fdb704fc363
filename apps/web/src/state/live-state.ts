import { create } from 'zustand';
import type { MicrophoneState } from '../devices/microphone.ts';
import type { RecordName } from '../workers/kennel-calls.ts';

/** A microphone that listens, as every screen shows it. */
export interface LiveListening {
  readonly record: RecordName;
  readonly session: string;
  readonly doneS: number;
  readonly blasts: number;
  readonly clicks: number;
  readonly isSilent: boolean;
  readonly state: MicrophoneState;
  /** Bytes of the sound that is kept; `null` where only marks are. */
  readonly keptBytes: number | null;
  readonly stop: () => void;
}

interface Live {
  readonly running: LiveListening | null;
  /** The session whose listening was just stopped: what was heard waits to be seen. */
  readonly stopped: string | null;
}

/** Small, since every screen carries it: the listening itself is loaded when it begins. */
export const useLive = create<Live>()(() => ({ running: null, stopped: null }));

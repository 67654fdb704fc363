import type { HeardSounds, OwnWhistle } from '@sedgeline/engine/sound';
import type { Listened } from '../devices/ear.ts';
import type { SoundFileFault } from '../devices/sound-file.ts';

/** What the listening worker is told to do: one thing in its life. */
export type ListenOrder =
  | { readonly do: 'file'; readonly file: Blob; readonly own: OwnWhistle | null }
  | {
      readonly do: 'live';
      /** Batches of the microphone come by this, and never touch the screens' thread. */
      readonly port: MessagePort;
      readonly sampleRateHz: number;
      readonly own: OwnWhistle | null;
    }
  | { readonly do: 'finish' };

/** A batch of the microphone's samples, and when its last one was taken, epoch milliseconds. */
export interface MicrophoneBatch {
  readonly samples: Float32Array;
  readonly endsAtMs: number;
}

/** What the listening worker tells. */
export type ListenNews =
  | { readonly news: 'progress'; readonly doneS: number; readonly lengthS: number | null }
  | { readonly news: 'live'; readonly doneS: number; readonly isSilent: boolean; readonly heard: HeardSounds }
  | { readonly news: 'done'; readonly listened: Listened; readonly startsAtMs: number | null }
  | { readonly news: 'fault'; readonly fault: SoundFileFault };

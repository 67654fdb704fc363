import type { OwnWhistle } from '@sedgeline/engine/sound';
import type { ListenNews, ListenOrder } from '../workers/listen-calls.ts';
import type { Listened } from './ear.ts';
import type { SoundFileFault } from './sound-file.ts';

/** How far the listening to a file is. */
export type FileListening =
  | { readonly kind: 'working'; readonly share: number | null; readonly leftS: number | null }
  | { readonly kind: 'done'; readonly listened: Listened }
  | { readonly kind: 'failed'; readonly fault: SoundFileFault };

/** The time left is told once so much is done: before, it would only jump. */
const TELL_AFTER_S = 1;

/**
 * Hears a film or sound in a worker of its own, and tells how far it is; the file is read piece by piece and nothing of it is kept. Returns
 * what stops it at once.
 */
export function listenToFile(
  file: Blob,
  own: OwnWhistle | null,
  told: (state: FileListening) => void,
): () => void {
  const worker = new Worker(new URL('../workers/listen-worker.ts', import.meta.url), { type: 'module' });
  const startedMs = performance.now();
  const stop = (): void => worker.terminate();
  const end = (state: FileListening): void => {
    stop();
    told(state);
  };
  told({ kind: 'working', share: null, leftS: null });
  worker.addEventListener('error', () => end({ kind: 'failed', fault: { code: 'unreadable' } }));
  worker.addEventListener('message', ({ data }: MessageEvent<ListenNews>) => {
    if (data.news === 'progress') told(workingOf(data, (performance.now() - startedMs) / 1000));
    if (data.news === 'fault') end({ kind: 'failed', fault: data.fault });
    if (data.news === 'done') end({ kind: 'done', listened: data.listened });
  });
  worker.postMessage({ do: 'file', file, own } satisfies ListenOrder);
  return stop;
}

function workingOf(
  { doneS, lengthS }: { doneS: number; lengthS: number | null },
  tookS: number,
): FileListening {
  if (lengthS === null || !(lengthS > 0)) return { kind: 'working', share: null, leftS: null };
  const share = Math.min(1, doneS / lengthS);
  const leftS = tookS < TELL_AFTER_S || share === 0 ? null : (tookS / share) * (1 - share);
  return { kind: 'working', share, leftS };
}

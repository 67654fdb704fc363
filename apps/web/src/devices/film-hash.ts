/** What the worker tells: how far it is, or the fingerprint; `null` where the file could not be read to its end. */
export type HashNews = { readonly bytesDone: number } | { readonly contentHash: string | null };

/** How far the fingerprint of a film is. */
export type HashState =
  | { readonly kind: 'working'; readonly share: number; readonly leftS: number | null }
  | { readonly kind: 'done'; readonly contentHash: string }
  | { readonly kind: 'failed' | 'stopped' };

/** The time left is told once so much is done: before, it would only jump. */
const TELL_AFTER_S = 1;

/**
 * Works out the fingerprint of a film in a worker of its own, and tells how far it is. Returns what stops it; stopped or failed, the
 * film is known by its name and size.
 */
export function startFilmHash(film: Blob, told: (state: HashState) => void): () => void {
  const worker = new Worker(new URL('../workers/film-hash-worker.ts', import.meta.url), { type: 'module' });
  const startedMs = performance.now();
  const stop = (): void => worker.terminate();
  told({ kind: 'working', share: 0, leftS: null });
  worker.addEventListener('error', () => {
    stop();
    told({ kind: 'failed' });
  });
  worker.addEventListener('message', ({ data }: MessageEvent<HashNews>) => {
    if ('bytesDone' in data) {
      const share = data.bytesDone / film.size;
      const tookS = (performance.now() - startedMs) / 1000;
      const leftS = tookS < TELL_AFTER_S ? null : (tookS / share) * (1 - share);
      told({ kind: 'working', share, leftS });
      return;
    }
    stop();
    const { contentHash } = data;
    told(contentHash === null ? { kind: 'failed' } : { kind: 'done', contentHash });
  });
  worker.postMessage(film);
  return stop;
}

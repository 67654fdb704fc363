import type { HashNews } from '../devices/film-hash.ts';
import { contentHashOf } from '../devices/hash-blob.ts';

/** Works out a film's fingerprint beside the screens, and tells how far it is. */
const port = globalThis as unknown as Pick<Worker, 'postMessage' | 'addEventListener'>;
const tell = (news: HashNews): void => port.postMessage(news);

port.addEventListener('message', ({ data }: MessageEvent<Blob>) => {
  void contentHashOf(data, (bytesDone) => tell({ bytesDone })).then(
    (contentHash) => tell({ contentHash }),
    () => tell({ contentHash: null }),
  );
});

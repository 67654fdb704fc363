import type { HashNews } from '../devices/film-hash.ts';
import { sha256OfBlob } from '../devices/hash-blob.ts';

/** Works out a film's fingerprint beside the screens, and tells how far it is. */
const port = globalThis as unknown as Pick<Worker, 'postMessage' | 'addEventListener'>;
const tell = (news: HashNews): void => port.postMessage(news);

port.addEventListener('message', ({ data }: MessageEvent<Blob>) => {
  void sha256OfBlob(data, (bytesDone) => tell({ bytesDone })).then(
    (contentHash) => tell({ contentHash }),
    () => tell({ contentHash: null }),
  );
});

import type { OwnWhistle } from '@sedgeline/engine/sound';
import { createEar, type Ear } from '../devices/ear.ts';
import { openSoundFile } from '../devices/sound-file.ts';
import type { ListenNews, ListenOrder, MicrophoneBatch } from './listen-calls.ts';

/** How often it is told how far a file is heard, milliseconds: a bar that moves. The microphone's clock is told second by second. */
const TELL_EVERY_MS = 200;
/** The microphone was away when its samples are this far behind the clock: the phone was locked, or another program had it. */
const AWAY_S = 1;

const port = globalThis as unknown as Pick<Worker, 'postMessage' | 'addEventListener'>;
const tell = (news: ListenNews): void => port.postMessage(news);

/** Decodes and hears a film or sound from first to last; the pieces are let go of as they are heard. */
async function hearFile(file: Blob, own: OwnWhistle | null): Promise<void> {
  const opened = await openSoundFile(file);
  if ('code' in opened) return tell({ news: 'fault', fault: opened });
  const { sampleRateHz, lengthS } = opened;
  const ear = createEar(sampleRateHz, own);
  let breaksOff = false;
  let toldMs = 0;
  for await (const piece of opened.pieces(() => {
    breaksOff = true;
  })) {
    ear.push(piece);
    const nowMs = performance.now();
    if (nowMs - toldMs < TELL_EVERY_MS) continue;
    toldMs = nowMs;
    tell({ news: 'progress', doneS: ear.lengthS, lengthS });
  }
  opened.close();
  if (ear.lengthS === 0)
    return tell({ news: 'fault', fault: { code: breaksOff ? 'unreadable' : 'no-sound' } });
  // A file that promises more than it holds ends without a word of it.
  const isShort = lengthS !== null && ear.lengthS < lengthS - AWAY_S;
  tell({ news: 'done', listened: ear.finish(breaksOff || isShort), startsAtMs: null });
}

/** Hears the microphone until it is told to finish. What was missed while it was away is silence, so that times stay the clock's. */
function hearMicrophone(microphone: MessagePort, sampleRateHz: number, own: OwnWhistle | null): () => void {
  const ear: Ear = createEar(sampleRateHz, own);
  let startsAtMs: number | null = null;
  let toldS = -1;
  let heard: Extract<ListenNews, { news: 'live' }>['heard'] = { whistles: [], clicks: [] };
  const push = (samples: Float32Array) => {
    const { whistles, clicks } = ear.push(samples);
    heard = { whistles: [...heard.whistles, ...whistles], clicks: [...heard.clicks, ...clicks] };
  };
  microphone.onmessage = ({ data }: MessageEvent<MicrophoneBatch>) => {
    const { samples, endsAtMs } = data;
    startsAtMs ??= endsAtMs - (1000 * samples.length) / sampleRateHz;
    const missingS = (endsAtMs - startsAtMs) / 1000 - ear.lengthS - samples.length / sampleRateHz;
    if (missingS > AWAY_S) {
      for (let left = missingS; left > 0; left -= 1)
        push(new Float32Array(Math.round(Math.min(1, left) * sampleRateHz)));
    }
    push(samples);
    if (Math.floor(ear.lengthS) === toldS) return;
    toldS = Math.floor(ear.lengthS);
    tell({ news: 'live', doneS: ear.lengthS, isSilent: ear.isSilent, heard });
    heard = { whistles: [], clicks: [] };
  };
  return () => tell({ news: 'done', listened: ear.finish(false), startsAtMs });
}

let finish: () => void = () => undefined;

port.addEventListener('message', ({ data }: MessageEvent<ListenOrder>) => {
  if (data.do === 'file') {
    void hearFile(data.file, data.own).catch(() => tell({ news: 'fault', fault: { code: 'unreadable' } }));
  } else if (data.do === 'live') finish = hearMicrophone(data.port, data.sampleRateHz, data.own);
  else finish();
});

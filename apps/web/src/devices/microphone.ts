import type { HeardSounds, OwnWhistle } from '@sedgeline/engine/sound';
import type { ListenNews, ListenOrder } from '../workers/listen-calls.ts';
import type { Listened } from './ear.ts';
import workletUrl from './microphone-worklet.ts?worker&url';
import type { MicrophoneFault } from './voice-recorder.ts';

/** How the microphone fares while it listens. */
export interface LiveNews {
  readonly doneS: number;
  /** Not one sound so far. */
  readonly isSilent: boolean;
  readonly heard: HeardSounds;
}

export type MicrophoneState =
  | 'on'
  /** The device or the system gives nothing for now. */
  | 'muted'
  /** The browser took it away: the phone was locked, or another program has it. */
  | 'away'
  /** It was pulled out, or taken for good. */
  | 'ended';

/** What was heard, and the sound itself where it was to be kept. */
export interface LiveHeard {
  readonly listened: Listened;
  /** `null` where not one batch came. */
  readonly startsAtMs: number | null;
  readonly sound: Blob | null;
}

/** A microphone that listens. */
export interface RunningMicrophone {
  /** Bytes of the sound that is kept, so far; 0 where none is. */
  readonly keptBytes: () => number;
  readonly stop: () => Promise<LiveHeard>;
}

/** Without the browser's own ideas of speech: they take whistles for noise. */
const AS_IT_IS: MediaTrackConstraints = {
  echoCancellation: false,
  noiseSuppression: false,
  autoGainControl: false,
};
/** Nothing is played: the browser may take the sound in bigger pieces, and wakes its thread less often. */
const IN_NO_HURRY: AudioContextOptions = { latencyHint: 'playback' };
/** All channels come as their middle, mixed by the browser. */
const ONE_CHANNEL: AudioWorkletNodeOptions = {
  numberOfOutputs: 0,
  channelCount: 1,
  channelCountMode: 'explicit',
};
/** A sound's thread that was put to sleep with the phone does not answer: what it last gathered is let go of. */
const LAST_BATCH_WITHIN_MS = 300;
/** Bits a second of a sound that is kept: a whistle is plain at this, and an hour is some 29 MB (our judgement, 2026). */
const KEPT_BITS_PER_S = 64_000;

/** Opens the microphone and hears in a worker; only marks are made, unless the sound is to be kept. */
export async function openMicrophone(
  own: OwnWhistle | null,
  keepSound: boolean,
  told: { readonly news: (news: LiveNews) => void; readonly state: (state: MicrophoneState) => void },
): Promise<RunningMicrophone | MicrophoneFault> {
  if (!navigator.mediaDevices?.getUserMedia || typeof AudioWorkletNode === 'undefined') return 'cannot';
  let stream: MediaStream;
  try {
    stream = await navigator.mediaDevices.getUserMedia({ audio: AS_IT_IS });
  } catch (error) {
    const name = error instanceof DOMException ? error.name : '';
    if (name === 'NotFoundError' || name === 'OverconstrainedError') return 'no-microphone';
    return name === 'NotAllowedError' || name === 'SecurityError' ? 'refused' : 'cannot';
  }
  const context = new AudioContext(IN_NO_HURRY);
  const letGo = () => {
    for (const track of stream.getTracks()) track.stop();
    void context.close();
  };
  try {
    await context.audioWorklet.addModule(workletUrl);
  } catch {
    letGo();
    return 'cannot';
  }
  const worker = new Worker(new URL('../workers/listen-worker.ts', import.meta.url), { type: 'module' });
  const { port1, port2 } = new MessageChannel();
  const tap = new AudioWorkletNode(context, 'microphone-tap', ONE_CHANNEL);
  tap.port.postMessage(port1, [port1]);
  const order: ListenOrder = { do: 'live', port: port2, sampleRateHz: Math.round(context.sampleRate), own };
  worker.postMessage(order, [port2]);
  context.createMediaStreamSource(stream).connect(tap);
  void context.resume();
  followState(stream, context, told.state);
  const kept = keepSound ? keepOf(stream) : null;
  const done = new Promise<LiveHeard>((resolve) => {
    worker.addEventListener('message', ({ data }: MessageEvent<ListenNews>) => {
      if (data.news === 'live') told.news(data);
      if (data.news !== 'done') return;
      worker.terminate();
      void Promise.resolve(kept?.stop() ?? null).then((sound) => {
        letGo();
        resolve({ listened: data.listened, startsAtMs: data.startsAtMs, sound });
      });
    });
  });
  return {
    keptBytes: () => kept?.bytes() ?? 0,
    stop: async () => {
      await lastBatch(tap.port);
      worker.postMessage({ do: 'finish' } satisfies ListenOrder);
      return done;
    },
  };
}

/** Has the sound's thread hand on what it has gathered. */
function lastBatch(tap: MessagePort): Promise<void> {
  return new Promise((resolve) => {
    setTimeout(resolve, LAST_BATCH_WITHIN_MS);
    tap.onmessage = () => resolve();
    tap.postMessage(null);
  });
}

function followState(
  stream: MediaStream,
  context: AudioContext,
  told: (state: MicrophoneState) => void,
): void {
  const [track] = stream.getAudioTracks();
  const look = () => {
    if (track?.readyState !== 'live') told('ended');
    else if (context.state !== 'running') told('away');
    else told(track.muted ? 'muted' : 'on');
  };
  /** The phone is unlocked, or the page looked at again: goes on where the browser lets it. */
  const goOn = () => {
    if (document.visibilityState === 'visible' && context.state !== 'running') void context.resume();
  };
  for (const event of ['mute', 'unmute', 'ended'] as const) track?.addEventListener(event, look);
  context.addEventListener('statechange', () => {
    look();
    if (context.state === 'closed') document.removeEventListener('visibilitychange', goOn);
  });
  document.addEventListener('visibilitychange', goOn);
}

/** Records the sound beside the listening, in the browser's own coding. */
function keepOf(stream: MediaStream) {
  if (typeof MediaRecorder === 'undefined') return null;
  const recorder = new MediaRecorder(stream, { audioBitsPerSecond: KEPT_BITS_PER_S });
  const heard: Blob[] = [];
  recorder.addEventListener('dataavailable', ({ data }) => {
    if (data.size > 0) heard.push(data);
  });
  recorder.start(1000);
  const whole = () => (heard.length === 0 ? null : new Blob(heard, { type: recorder.mimeType }));
  return {
    bytes: () => heard.reduce((sum, { size }) => sum + size, 0),
    stop: (): Promise<Blob | null> =>
      new Promise((resolve) => {
        if (recorder.state === 'inactive') return resolve(whole());
        recorder.addEventListener('stop', () => resolve(whole()), { once: true });
        recorder.stop();
      }),
  };
}

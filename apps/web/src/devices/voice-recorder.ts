/** Why nothing can be recorded: the handler (or the device) said no, there is nothing to hear with, or no way to record. */
export type MicrophoneFault = 'refused' | 'no-microphone' | 'cannot';

/** A recording that is running. */
export interface RunningVoice {
  /** Ends it and gives what was heard; `null` where nothing was. */
  readonly stop: () => Promise<{ readonly sound: Blob; readonly lengthS: number } | null>;
  /** Ends it and lets it go. */
  readonly drop: () => void;
}

/** Bits a second: speech is plain at this, and a minute is some 180 kB (our judgement, 2026). */
const SPEECH_BITS_PER_S = 24_000;

/** Starts to record speech; the microphone is asked for, and let go of at the end. */
export async function recordVoice(): Promise<RunningVoice | MicrophoneFault> {
  if (!navigator.mediaDevices?.getUserMedia || typeof MediaRecorder === 'undefined') return 'cannot';
  let stream: MediaStream;
  try {
    stream = await navigator.mediaDevices.getUserMedia({ audio: { echoCancellation: true } });
  } catch (error) {
    const name = error instanceof DOMException ? error.name : '';
    if (name === 'NotFoundError' || name === 'OverconstrainedError') return 'no-microphone';
    return name === 'NotAllowedError' || name === 'SecurityError' ? 'refused' : 'cannot';
  }
  const letGo = () => {
    for (const track of stream.getTracks()) track.stop();
  };
  const recorder = new MediaRecorder(stream, { audioBitsPerSecond: SPEECH_BITS_PER_S });
  const heard: Blob[] = [];
  recorder.addEventListener('dataavailable', ({ data }) => {
    if (data.size > 0) heard.push(data);
  });
  recorder.start(1000);
  const startedMs = performance.now();
  return {
    stop: () =>
      new Promise((resolve) => {
        const lengthS = (performance.now() - startedMs) / 1000;
        const done = () => {
          letGo();
          const sound = new Blob(heard, { type: recorder.mimeType });
          resolve(sound.size === 0 ? null : { sound, lengthS });
        };
        if (recorder.state === 'inactive') done();
        else {
          recorder.addEventListener('stop', done, { once: true });
          recorder.stop();
        }
      }),
    drop: () => {
      if (recorder.state !== 'inactive') recorder.stop();
      letGo();
    },
  };
}

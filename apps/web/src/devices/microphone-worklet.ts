/** Runs on the sound's own thread: gathers the microphone's samples and hands them on with the time at which they were taken. */

/** Samples are handed on so many at a time: some tenth of a second. */
const BATCH = 4096;

/** What the worklet's scope holds of its own; the libraries of types do not know it. */
declare class AudioWorkletProcessor {
  readonly port: MessagePort;
}
declare function registerProcessor(name: string, processor: new () => AudioWorkletProcessor): void;

class MicrophoneTap extends AudioWorkletProcessor {
  #out: MessagePort | null = null;
  #batch = new Float32Array(BATCH);
  #filled = 0;

  constructor() {
    super();
    this.port.onmessage = ({ data }: MessageEvent<MessagePort>) => {
      this.#out = data;
    };
  }

  process([channels]: readonly (readonly Float32Array[])[]): boolean {
    const [first] = channels ?? [];
    if (first === undefined || channels === undefined) return true;
    for (let n = 0; n < first.length; n++) {
      let sum = 0;
      for (const channel of channels) sum += channel[n] ?? 0;
      this.#batch[this.#filled] = sum / channels.length;
      this.#filled += 1;
      if (this.#filled === BATCH) this.#handOn();
    }
    return true;
  }

  #handOn(): void {
    const samples = this.#batch;
    this.#batch = new Float32Array(BATCH);
    this.#filled = 0;
    this.#out?.postMessage({ samples, endsAtMs: Date.now() }, [samples.buffer]);
  }
}

registerProcessor('microphone-tap', MicrophoneTap);

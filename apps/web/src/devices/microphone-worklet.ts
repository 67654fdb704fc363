/** Runs on the sound's own thread: gathers the microphone's samples (one channel) and hands them on with the time at which they were taken. */

/** Samples are handed on so many at a time, some quarter of a second: each time another thread is woken. */
const BATCH = 12_288;

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
    // First comes the way on for the samples; then, at the end, nothing: what is gathered goes on, and that is answered.
    this.port.onmessage = ({ data }: MessageEvent<MessagePort | null>) => {
      if (data !== null) this.#out = data;
      else {
        this.#handOn();
        this.port.postMessage(null);
      }
    };
  }

  process([channels]: readonly (readonly Float32Array[])[]): boolean {
    const block = channels?.[0];
    if (block === undefined) return true;
    this.#batch.set(block, this.#filled);
    this.#filled += block.length;
    if (this.#filled + block.length > BATCH) this.#handOn();
    return true;
  }

  #handOn(): void {
    if (this.#filled === 0) return;
    const samples = this.#filled === BATCH ? this.#batch : this.#batch.slice(0, this.#filled);
    this.#batch = new Float32Array(BATCH);
    this.#filled = 0;
    this.#out?.postMessage({ samples, endsAtMs: Date.now() }, [samples.buffer]);
  }
}

registerProcessor('microphone-tap', MicrophoneTap);

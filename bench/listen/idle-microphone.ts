import type { Page } from '@playwright/test';

const IDLE = `registerProcessor('idle-tap', class extends AudioWorkletProcessor { process() { return true; } });`;

/** Opens a page's microphone into a sound's thread that does nothing: what the browser takes for itself. The answer closes it. */
export async function openIdleMicrophone(page: Page): Promise<() => Promise<void>> {
  const running = await page.evaluateHandle(
    async (module) => {
      const stream = await navigator.mediaDevices.getUserMedia({
        audio: { echoCancellation: false, noiseSuppression: false, autoGainControl: false },
      });
      const context = new AudioContext({ latencyHint: 'playback' });
      await context.audioWorklet.addModule(module);
      const tap = new AudioWorkletNode(context, 'idle-tap', {
        numberOfOutputs: 0,
        channelCount: 1,
        channelCountMode: 'explicit',
      });
      const source = context.createMediaStreamSource(stream);
      source.connect(tap);
      await context.resume();
      return { stream, context, source, tap };
    },
    `data:text/javascript,${encodeURIComponent(IDLE)}`,
  );
  return async () => {
    await running.evaluate(async ({ stream, context }) => {
      for (const track of stream.getTracks()) track.stop();
      await context.close();
    });
    await running.dispose();
  };
}

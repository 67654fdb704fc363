/** Two soft notes a third apart; low enough not to sound like a whistle (our judgement, 2026). */
const NOTES_HZ = [440, 554.4] as const;
const NOTE_S = 0.5;
const LOUDNESS = 0.25;

let sound: AudioContext | null = null;

/** Browsers let a page sound only after a touch: called at the tap that starts a break. */
export function readyTone(): void {
  sound ??= new AudioContext();
  void sound.resume();
}

/**
 * Plays the tone after so many seconds, by the clock of the sound itself: that goes on where a page that is out of sight is
 * no longer woken in time. What comes back takes the tone back. Silent where the page may not sound.
 */
export function playTone(afterS = 0): () => void {
  if (sound === null) return () => undefined;
  const context = sound;
  const startS = context.currentTime + Math.max(0.05, afterS);
  const notes = NOTES_HZ.map((pitchHz, i) => {
    const atS = startS + i * NOTE_S;
    const gain = new GainNode(context, { gain: 0 });
    gain.gain.setValueAtTime(0, atS);
    gain.gain.linearRampToValueAtTime(LOUDNESS, atS + 0.04);
    gain.gain.exponentialRampToValueAtTime(0.001, atS + NOTE_S);
    const note = new OscillatorNode(context, { type: 'sine', frequency: pitchHz });
    note.connect(gain).connect(context.destination);
    note.start(atS);
    note.stop(atS + NOTE_S);
    return note;
  });
  return () => {
    for (const note of notes) note.disconnect();
  };
}

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

/** Plays the tone; silent where the page may not sound. */
export function playTone(): void {
  if (sound === null) return;
  const startS = sound.currentTime + 0.05;
  NOTES_HZ.forEach((pitchHz, i) => {
    const context = sound as AudioContext;
    const atS = startS + i * NOTE_S;
    const gain = new GainNode(context, { gain: 0 });
    gain.gain.linearRampToValueAtTime(0, atS);
    gain.gain.linearRampToValueAtTime(LOUDNESS, atS + 0.04);
    gain.gain.exponentialRampToValueAtTime(0.001, atS + NOTE_S);
    const note = new OscillatorNode(context, { type: 'sine', frequency: pitchHz });
    note.connect(gain).connect(context.destination);
    note.start(atS);
    note.stop(atS + NOTE_S);
  });
}

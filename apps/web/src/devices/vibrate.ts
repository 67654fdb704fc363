/** Pulses in milliseconds: felt through a glove, told apart in the pocket (our judgement, 2026). */
const PATTERNS = { recorded: [18], undone: [18, 60, 18], 'break-over': [300, 150, 300, 150, 300] } as const;

/** Lets the hand feel that something happened, where the device can. */
export function vibrate(what: keyof typeof PATTERNS): void {
  if ('vibrate' in navigator) navigator.vibrate([...PATTERNS[what]]);
}

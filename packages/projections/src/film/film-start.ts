/** Times that a file carries: when it says it was made, and when it was last written. */
export interface FileTimes {
  readonly takenAtMs: number | null;
  readonly writtenAtMs: number | null;
}

/**
 * When a film's first frame was taken, as far as its file tells; `null` where it tells nothing that fits. Cameras put into the file when they
 * began or when they stopped, and the time of the last writing is that of the stop, or of a copy made much later. Of these
 * guesses the first is taken under which most taps of the session fall into the film; under none of which any falls, nothing is known.
 */
export function filmStart(file: FileTimes, lengthS: number, tapsMs: readonly number[]): number | null {
  const lengthMs = lengthS * 1000;
  const guesses = [
    file.takenAtMs,
    ...[file.takenAtMs, file.writtenAtMs].map((ms) => (ms === null ? null : ms - lengthMs)),
  ];
  let best: number | null = null;
  let most = 0;
  for (const startMs of guesses) {
    if (startMs === null) continue;
    const within = tapsMs.filter((ms) => ms >= startMs && ms <= startMs + lengthMs).length;
    if (within > most) [best, most] = [startMs, within];
  }
  return best;
}

import { describe, expect, it } from 'vitest';
import { filmStart } from './film-start.ts';

const NINE_MS = Date.parse('2026-03-01T09:00:00Z');
const MINUTE_MS = 60_000;
/** Taps at 9:02, 9:05 and 9:08. */
const TAPS = [2, 5, 8].map((minute) => NINE_MS + minute * MINUTE_MS);

describe('when a film began, by its file', () => {
  it('a camera that writes when it began', () => {
    expect(filmStart({ takenAtMs: NINE_MS, writtenAtMs: null }, 600, TAPS)).toBe(NINE_MS);
  });

  it('a camera that writes when it stopped, ten minutes later', () => {
    const stoppedMs = NINE_MS + 10 * MINUTE_MS;
    expect(filmStart({ takenAtMs: stoppedMs, writtenAtMs: null }, 600, TAPS)).toBe(NINE_MS);
    expect(filmStart({ takenAtMs: null, writtenAtMs: stoppedMs }, 600, TAPS)).toBe(NINE_MS);
  });

  it('a file copied the day after tells nothing, and neither does one with no time', () => {
    expect(filmStart({ takenAtMs: null, writtenAtMs: NINE_MS + 86_400_000 }, 600, TAPS)).toBeNull();
    expect(filmStart({ takenAtMs: null, writtenAtMs: null }, 600, TAPS)).toBeNull();
    expect(filmStart({ takenAtMs: NINE_MS, writtenAtMs: NINE_MS }, 600, [])).toBeNull();
  });
});

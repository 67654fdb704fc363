import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Clock, clockText, newClock, readClock, receiveClock, tickClock } from './clock.ts';
import { compareFacts } from './order.ts';

const HOUR_MS = 3_600_000;
const START_MS = 1772355600000;

/** What happens to three devices: each event is a tick of one, or its tick sent to another; wall clocks jump about. */
const events = fc.array(
  fc.record({
    from: fc.integer({ min: 0, max: 2 }),
    to: fc.integer({ min: 0, max: 2 }),
    wallMs: fc.integer({ min: START_MS - 6 * HOUR_MS, max: START_MS + 6 * HOUR_MS }),
  }),
  { maxLength: 40 },
);
const asFact = (clock: Clock, id: string) => ({
  id,
  kind: 'k',
  at: '2026-03-01T09:00:00Z',
  body: {},
  clock: clockText(clock),
});

describe('hybrid logical clock', () => {
  it('never runs backwards on a device and stands after all that the device has seen, whatever the wall clocks do', () => {
    fc.assert(
      fc.property(events, (happenings) => {
        const clocks = ['a', 'b', 'c'].map(newClock);
        const seen: Clock[][] = [[], [], []];
        for (const { from, to, wallMs } of happenings) {
          const ticked = tickClock(clocks[from]!, wallMs);
          for (const earlier of seen[from]!) {
            expect(compareFacts(asFact(earlier, 'z'), asFact(ticked, 'a'))).toBeLessThan(0);
          }
          clocks[from] = ticked;
          seen[from]!.push(ticked);
          clocks[to] = receiveClock(clocks[to]!, ticked, wallMs);
          seen[to]!.push(ticked);
        }
      }),
    );
  });

  it('reads back what it writes, and its texts of one device sort as its moments do', () => {
    const clock = fc.record({
      ms: fc.integer({ min: 315532800000, max: 7289654399999 }),
      counter: fc.integer({ min: 0, max: 0xffff }),
      device: fc.constant('phone'),
    });
    fc.assert(
      fc.property(clock, clock, (a, b) => {
        expect(readClock(clockText(a))).toEqual({ ok: true, clock: a });
        const byMoment = a.ms - b.ms || a.counter - b.counter;
        const byText = clockText(a) < clockText(b) ? -1 : clockText(a) > clockText(b) ? 1 : 0;
        expect(Math.sign(byMoment)).toBe(byText);
      }),
    );
  });
});

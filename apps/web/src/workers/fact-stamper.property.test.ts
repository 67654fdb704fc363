import { compareFacts, type Fact } from '@sedgeline/journal';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createFactStamper } from './fact-stamper.ts';

const START_MS = Date.UTC(2026, 2, 1, 9);
const YEAR_MS = 365 * 86_400_000;
/** What the device's clock says at each tap, set to anything between taps; and whether the program was opened afresh before it. */
const taps = fc.array(
  fc.record({
    wallMs: fc.oneof(
      fc.integer({ min: START_MS - 3_600_000, max: START_MS + 3_600_000 }),
      fc.integer({ min: START_MS - 10 * YEAR_MS, max: START_MS + 10 * YEAR_MS }),
    ),
    isReopened: fc.boolean(),
  }),
  { minLength: 2, maxLength: 30 },
);

describe('facts are stamped in the order in which they are made', () => {
  it('however the clock is set, and whenever the program is opened afresh', () => {
    fc.assert(
      fc.property(taps, (made) => {
        let wallMs = START_MS;
        let ids = 0;
        const open = () =>
          createFactStamper(
            'phone',
            () => wallMs,
            () => {
              ids += 1;
              // Ids that fall: were two clocks the same, the id would put them the wrong way round.
              return String(1000 - ids);
            },
          );
        let stamper = open();
        const facts: Fact[] = [];
        for (const tap of made) {
          wallMs = tap.wallMs;
          if (tap.isReopened) {
            stamper = open();
            stamper.see(facts);
          }
          facts.push(...stamper.stamp([{ kind: 'mark', body: {} }]));
        }
        expect(facts.toSorted(compareFacts).map(({ id }) => id)).toEqual(facts.map(({ id }) => id));
      }),
    );
  });

  it('says how far the clock was set back, and nothing while it goes on', () => {
    let wallMs = START_MS;
    const stamper = createFactStamper(
      'phone',
      () => wallMs,
      () => 'id',
    );
    stamper.stamp([{ kind: 'mark', body: {} }]);
    expect(stamper.behindMs()).toBe(0);
    wallMs += 1000;
    expect(stamper.behindMs()).toBe(0);
    wallMs -= 3_601_000;
    expect(stamper.behindMs()).toBe(3_600_000);
  });
});

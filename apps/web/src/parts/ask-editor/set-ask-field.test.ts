import type { AskedLeg } from '@sedgeline/projections';
import { describe, expect, it } from 'vitest';
import { setAskField } from './set-ask-field.ts';

/** Hand-worked: a send of 40 m, stopped half-way at 20 m and cast left from there. */
const chain: readonly AskedLeg[] = [
  { skill: 'line', ask: { distanceM: 40 } },
  { skill: 'stop', ask: { distanceM: 20, wayFraction: 0.5 } },
  { skill: 'cast-left', ask: { distanceM: 20, wayFraction: 0.5, castM: 15 } },
  { skill: 'pickup', ask: {} },
];

describe('setAskField', () => {
  it('moves a stop on its own line: 35 of 40 m is 0.875 of the way, and the cast goes along', () => {
    const [line, stop, cast] = setAskField(chain, 1, 'distanceM', 35);
    expect(line!.ask.distanceM).toBe(40);
    expect(stop!.ask).toMatchObject({ distanceM: 35, wayFraction: 0.875 });
    expect(cast!.ask).toMatchObject({ distanceM: 35, wayFraction: 0.875, castM: 15 });
  });

  it('lengthens the send where the stop would lie beyond its end', () => {
    const [line, stop] = setAskField(chain, 1, 'distanceM', 50);
    expect(line!.ask.distanceM).toBe(50);
    expect(stop!.ask).toMatchObject({ distanceM: 50, wayFraction: 1 });
  });

  it('takes the distance from the share of the way: a quarter of 40 m is 10 m', () => {
    const [, stop, cast] = setAskField(chain, 1, 'wayFraction', 0.25);
    expect(stop!.ask).toMatchObject({ distanceM: 10, wayFraction: 0.25 });
    expect(cast!.ask.distanceM).toBe(10);
  });

  it('keeps the cue where it is when the line grows: 20 of 50 m is 0.4 of the way', () => {
    const [, stop] = setAskField(chain, 0, 'distanceM', 50);
    expect(stop!.ask).toMatchObject({ distanceM: 20, wayFraction: 0.4 });
  });

  it('draws the cue in when the line ends before it', () => {
    const [, stop] = setAskField(chain, 0, 'distanceM', 15);
    expect(stop!.ask).toMatchObject({ distanceM: 15, wayFraction: 1 });
  });

  it('keeps a line that is run to its stop at the stop', () => {
    const toStop: readonly AskedLeg[] = [
      { skill: 'line', ask: { distanceM: 18 } },
      { skill: 'stop', ask: { distanceM: 18, wayFraction: 0.6 } },
    ];
    expect(setAskField(toStop, 1, 'distanceM', 24)[0]!.ask.distanceM).toBe(24);
  });

  it('leaves other legs alone for a field that is the leg’s own', () => {
    const changed = setAskField(chain, 2, 'castM', 25);
    expect(changed[2]!.ask.castM).toBe(25);
    expect(changed.filter((_, i) => i !== 2)).toEqual(chain.filter((_, i) => i !== 2));
  });

  it('refuses a leg that is not there', () => {
    expect(() => setAskField(chain, 4, 'castM', 5)).toThrow(RangeError);
  });
});

import { describe, expect, it } from 'vitest';
import { diceNamed } from '../careers/dice.ts';
import { type Flue, jetDriven, madeFor, triedOut } from './jet-drive.ts';

const RATE_HZ = 96_000;
const PLAIN: Flue = {
  resonanceHz: 3000,
  modes: [{ ratio: 1, q: 20, share: 1 }],
  crossPeriods: 0.5,
  grows: 4,
  aside: 0,
  turbulent: 0.01,
  bare: 0,
  hiss: 0,
};

const blown = (flue: Flue, pressure: (s: number) => number) =>
  jetDriven(
    flue,
    { steps: 0.2 * RATE_HZ, pressure: (i) => pressure(i / RATE_HZ), bend: () => 1, open: () => 1 },
    RATE_HZ,
    diceNamed('jet'),
  );

describe('a jet across a mouth', () => {
  it('sounds by itself only where what it grows outweighs the losses', () => {
    // At half a period of delay the growth is grows / (1 + (0.5 / 0.85)^4) = grows / 1.12, and one mode of share one loses all of it.
    expect(blown({ ...PLAIN, grows: 0.9 }, () => 1).height.at(-1)).toBeLessThan(0.1);
    expect(blown({ ...PLAIN, grows: 1.6 }, () => 1).height.at(-1)).toBeGreaterThan(0.5);
  });

  it('saturates: no swing is higher than the first partial of a square wave', () => {
    const heights = blown({ ...PLAIN, grows: 8 }, () => 1).height.slice(0.1 * RATE_HZ);
    // 4 / π of the drive; the other partials pass the resonance by some hundredths.
    expect(Math.max(...heights)).toBeLessThan(1.05 * (4 / Math.PI));
    expect(Math.min(...heights)).toBeGreaterThan(0.9 * (4 / Math.PI));
  });

  it('sharpens as it is blown harder', () => {
    const at = (crossPeriods: number) =>
      triedOut({ ...PLAIN, crossPeriods }, RATE_HZ, diceNamed('hard')).pitchHz;
    expect(at(0.42)).toBeGreaterThan(at(0.5));
    expect(at(0.5)).toBeGreaterThan(at(0.58));
    // Where the delay is half a period, the chamber sounds at its own pitch: half a step of 96 kHz is a hundredth of the delay.
    expect(Math.abs(at(0.5) / 3000 - 1)).toBeLessThan(0.01);
  });

  it('rings down by the losses of the chamber when the breath stops', () => {
    const { height } = blown(PLAIN, (s) => (s < 0.1 ? 1 : 0));
    const [from, to] = [height[0.101 * RATE_HZ]!, height[0.104 * RATE_HZ]!];
    // exp(-w t / 2Q): 3 ms of 3 kHz at Q 20.
    expect(Math.log(from / to)).toBeCloseTo((2 * Math.PI * 3000 * 0.003) / 40, 2);
  });

  it('is made for the pitch that is asked for', () => {
    const odd = {
      ...PLAIN,
      crossPeriods: 0.43,
      aside: 0.6,
      modes: [...PLAIN.modes, { ratio: 2.8, q: 15, share: 0.15 }],
    };
    for (const hz of [2100, 3700, 5400]) {
      const made = madeFor(hz, { ...odd, resonanceHz: hz }, RATE_HZ, diceNamed(`made ${hz}`));
      // Turbulence moves a twentieth of a second's mean by less than this.
      expect(Math.abs(triedOut(made, RATE_HZ, diceNamed('tried')).pitchHz / hz - 1)).toBeLessThan(0.003);
    }
  });
});

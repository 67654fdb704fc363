import type { Dice } from '../careers/dice.ts';

/** A pea in its chamber, lengths in radii of the room that its middle has. */
export interface Ball {
  /** Speed of the air at the wall at the usual pressure, radii a second, and how soon the ball goes with it. */
  swirlPerS: number;
  takenAlongS: number;
  /** How strongly eddies toss it, as a share of the swirl's speed. */
  tossed: number;
  /** What of its speed a bounce leaves, and how far the wall's roughness turns it, rad. */
  bounces: number;
  scatters: number;
  /** Its weight: g over a radius of some millimetres, 1/s². */
  fallsPerS2: number;
  /** How near the mouth it must be to be in the way, radii, and how much of the mouth it then shuts and the chamber's opening takes. */
  reach: number;
  shuts: number;
  lowers: number;
}

/** Cork and plastic peas: our judgement, 2026. They come round some twenty to sixty times a second. */
export const drawBall = (dice: Dice): Ball => ({
  swirlPerS: dice.between(130, 400),
  takenAlongS: dice.between(0.004, 0.02),
  tossed: dice.between(0.05, 0.5),
  bounces: dice.between(0.25, 0.75),
  scatters: dice.between(0.05, 0.6),
  fallsPerS2: 9.8 / dice.between(0.004, 0.008),
  reach: dice.between(0.35, 0.75),
  shuts: dice.between(0.25, 0.75),
  lowers: dice.between(0.01, 0.09),
});

/**
 * How near the ball is to the mouth, 0 to 1, step by step: carried round by the air's swirl, which goes with the root of the pressure, tossed
 * by eddies, pulled down by its weight, thrown back by the wall at a chance angle. The mouth is at the top of the chamber, at (0, 1).
 */
export function ballNearMouth(ball: Ball, pressure: Float64Array, rateHz: number, dice: Dice): Float64Array {
  const { swirlPerS, takenAlongS, tossed, bounces, scatters, fallsPerS2, reach } = ball;
  let [x, y] = [dice.between(-0.4, 0.4), -0.9];
  let [vx, vy] = [0, 0];
  // So much a step that a free ball strays by `tossed` of the swirl's speed.
  const toss = tossed * Math.sqrt(2 / (takenAlongS * rateHz));
  return pressure.map((p) => {
    const swirl = swirlPerS * Math.sqrt(p);
    // The air turns as a solid body does: quickest at the wall.
    vx += (-swirl * y - vx) / (takenAlongS * rateHz) + toss * swirl * dice.normal();
    vy += (swirl * x - vy) / (takenAlongS * rateHz) + toss * swirl * dice.normal() - fallsPerS2 / rateHz;
    x += vx / rateHz;
    y += vy / rateHz;
    const out = Math.hypot(x, y);
    if (out > 1) {
      [x, y] = [x / out, y / out];
      const outward = vx * x + vy * y;
      const along = vy * x - vx * y;
      if (outward > 0) {
        const turned = outward > 20 ? scatters * dice.normal() : 0;
        const [back, on] = [-bounces * outward, along];
        const [c, s] = [Math.cos(turned), Math.sin(turned)];
        const inward = Math.min(0, back * c - on * s);
        const onward = back * s + on * c;
        vx = inward * x - onward * y;
        vy = inward * y + onward * x;
      }
    }
    return Math.exp(-((x * x + (y - 1) ** 2) / (reach * reach)));
  });
}

import type { Dice } from '../careers/dice.ts';

/** What drives a self-sounding tone, sample by sample. */
export interface Drive {
  samples: number;
  /** Pressure over what it takes to sound at all: below nought the tone dies. */
  over: (i: number) => number;
  pitchHz: (i: number) => number;
  /** How quickly the tone builds up and dies, 1/s at one unit of pressure. */
  quickness: number;
  /** Strength of the random kicks, in units of the tone. */
  kicks: number;
}

/**
 * A tone that sounds by itself, as air makes a membrane or a jet swing: z' = (q p + i w) z - q |z|^2 z, the normal form of an oscillation that
 * sets in at a threshold (Hopf). Unlike a tone under a drawn envelope its rise, its fall and its unsteadiness come from the pressure: it grows
 * out of the kicks of the air at a rate that the pressure sets. Gives the swing's two parts; its height settles at the root of the pressure.
 */
export function selfSounding(
  { samples, over, pitchHz, quickness, kicks }: Drive,
  rateHz: number,
  dice: Dice,
) {
  const re = new Float64Array(samples);
  const im = new Float64Array(samples);
  let [x, y] = [1e-3, 0];
  // As strong in a second whatever the number of samples in it.
  const kick = kicks * Math.sqrt(48_000 / rateHz);
  for (let i = 0; i < samples; i++) {
    const grown = Math.exp((quickness * (over(i) - x * x - y * y)) / rateHz);
    const turn = (2 * Math.PI * pitchHz(i)) / rateHz;
    const [c, s] = [grown * Math.cos(turn), grown * Math.sin(turn)];
    [x, y] = [x * c - y * s + kick * dice.normal(), x * s + y * c + kick * dice.normal()];
    re[i] = x;
    im[i] = y;
  }
  return { re, im };
}

/** Sound of a swing: itself and its square, which has twice the pitch, at `second` of the first; silent where it would pass 0.47 of the rate. */
export function swingSound(
  { re, im }: { re: Float64Array; im: Float64Array },
  pitchHz: (i: number) => number,
  second: number,
  rateHz: number,
): Float64Array {
  return re.map((x, i) => {
    const hz = pitchHz(i);
    if (hz > 0.47 * rateHz) return 0;
    const y = im[i]!;
    return x + (2 * hz > 0.47 * rateHz ? 0 : (second * (x * x - y * y)) / (Math.hypot(x, y) + 1e-9));
  });
}

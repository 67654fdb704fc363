import type { Dice } from '../careers/dice.ts';
import type { SongGesture } from './normal-form-syrinx.ts';

/** A pull on the membranes along one note. */
export type Pull = (u: number) => number;

/** A breath that opens and closes over shares of a note drawn for it; from a little below what sounds to a full one. */
export function breathed(dice: Dice, opens: readonly [number, number] = [0.06, 0.4]): (u: number) => number {
  const [rise, fall] = [dice.between(...opens), dice.between(0.08, 0.5)];
  const full = dice.between(0.5, 1);
  return (u) => full * Math.min(1, 1.25 * Math.min(u / rise, (1 - u) / fall) - 0.25);
}

/** One note. */
export const sung = (dice: Dice, atS: number, lastsS: number, pitchHz: Pull): SongGesture => ({
  atS,
  lastsS,
  pitchHz,
  breath: breathed(dice),
});

/** From one pitch to another by equal shares in equal times, or ever quicker or slower. */
export const slid =
  (fromHz: number, toHz: number, power = 1): Pull =>
  (u) =>
    fromHz * (toHz / fromHz) ** (u ** power);

/** A pitch held, but for a bend of some hundredths that a muscle cannot help. */
export const held = (hz: number, bend: number): Pull => slid(hz * (1 - bend / 2), hz * (1 + bend / 2));

/** Up to a top part of the way along and down again. */
export const arched =
  (fromHz: number, topHz: number, toHz: number, top: number): Pull =>
  (u) =>
    u < top
      ? fromHz * (topHz / fromHz) ** Math.sin((Math.PI * u) / (2 * top))
      : toHz * (topHz / toHz) ** Math.cos((Math.PI * (u - top)) / (2 * (1 - top)));

/** The same phrase `times` over, with a rest between. */
export function again(phrase: readonly SongGesture[], times: number, restS: number): SongGesture[] {
  const wholeS = Math.max(...phrase.map(({ atS, lastsS }) => atS + lastsS)) + restS;
  return Array.from({ length: times }, (_, k) =>
    phrase.map((one) => ({ ...one, atS: one.atS + k * wholeS })),
  ).flat();
}

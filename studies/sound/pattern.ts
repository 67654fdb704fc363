import type { Dice } from '../careers/dice.ts';
import { fromDb } from './noise.ts';
import type { Scene } from './scene.ts';

/** One blast of a pattern: how long it is meant to last, the silence after it, how loud it is blown. */
interface Meant {
  lastsS: number;
  gapS: number;
  gain: number;
}

/** A long one, one to five pips, or pips and then a long one, each length and silence drawn for itself. */
function evenPattern({ longS, pipS, pipGapS }: Scene, dice: Dice): Meant[] {
  const pips = Array.from({ length: 1 + dice.below(5) }, () => 'pip' as const);
  const way = dice.uniform();
  const kinds =
    way < 0.45 ? (['long'] as const) : way < 0.88 ? pips : ([...pips.slice(0, 2), 'long'] as const);
  return kinds.map((kind) => ({
    lastsS: dice.between(...(kind === 'long' ? longS : pipS)),
    gapS: dice.between(...pipGapS),
    gain: fromDb(dice.between(-2, 0)),
  }));
}

/** A trill of pips: the tongue goes as quickly as it can (six to nine a second), so they are shorter than pips that are meant one by one. */
const TRILL_PERIOD_S = [0.11, 0.17] as const;

/** The same length and silence again and again, as a mouth in its rhythm blows them, with what strays. */
function inRhythm(count: number, lastsS: number, gapS: number, dice: Dice): Meant[] {
  return Array.from({ length: count }, () => ({
    lastsS: lastsS * dice.between(0.85, 1.15),
    gapS: gapS * dice.between(0.85, 1.15),
    gain: fromDb(dice.between(-3, 0)),
  }));
}

/**
 * What handlers blow (common practice, no source; the shares are our judgement, 2026): a long blast to stop; two to five pips to call in; a trill
 * of pips, to call in or to hunt close; one pip or two short ones to turn; and a long blast with pips after it.
 */
function workingPattern({ longS, pipS, pipGapS }: Scene, dice: Dice): Meant[] {
  const long = {
    lastsS: dice.between(...longS),
    gapS: dice.between(0.15, 0.6),
    gain: fromDb(dice.between(-2, 0)),
  };
  const called = (least: number, most: number) =>
    inRhythm(least + dice.below(most - least + 1), dice.between(...pipS), dice.between(...pipGapS), dice);
  const way = dice.uniform();
  if (way < 0.42) return [long];
  if (way < 0.72) return called(2, 5);
  if (way < 0.84) {
    const everyS = dice.between(...TRILL_PERIOD_S);
    return inRhythm(4 + dice.below(5), 0.55 * everyS, 0.45 * everyS, dice);
  }
  if (way < 0.92) return called(1, 2);
  return [long, ...called(2, 4)];
}

/** Lengths of the blasts of one pattern and the silences between. */
export const drawPattern = (scene: Scene, dice: Dice): Meant[] =>
  scene.patterns === 'even' ? evenPattern(scene, dice) : workingPattern(scene, dice);

import { CONTEXT_FEATURES } from '../../packages/engine/src/sound/blast-context.ts';
import { BLAST_FEATURES } from '../../packages/engine/src/sound/blast-features.ts';
import type { Dice } from '../careers/dice.ts';
import type { Labelled } from './gather-candidates.ts';

const at = (name: (typeof BLAST_FEATURES)[number]) => BLAST_FEATURES.indexOf(name);
const [LENGTH, SLOPE, BEND, WOBBLE] = [at('length'), at('slope'), at('bend'), at('wobble')];
const [LINE, SIDE, NARROW, BEAT] = [at('line'), at('side'), at('narrow'), at('beat')];
const [FLAT, RIVALS, RISE, FALL] = [at('flat'), at('rivals'), at('rise'), at('fall')];
const inContext = (name: (typeof CONTEXT_FEATURES)[number]) =>
  BLAST_FEATURES.length + CONTEXT_FEATURES.indexOf(name);
const [OTHERS, COMPANY] = [inContext('otherNotes'), inContext('company')];

/** The same blast as if its pitch were moved on purpose, by 2 to 15 % from end to end (our judgement of what handlers do, 2026). */
function slid(figures: Float64Array, dice: Dice): Float64Array {
  const moved = figures.slice();
  const slope = dice.between(0.02, 0.15);
  const lastsS = 0.2 * Math.exp(figures[LENGTH]!);
  moved[SLOPE] = Math.min(3, slope / 0.04);
  moved[BEND] = Math.min(3, slope / Math.max(0.05, lastsS) / 0.3);
  // A line of 64 ms grows as wide as the pitch moves meanwhile; at 3.5 kHz five of its bins are 78 Hz.
  moved[LINE] = figures[LINE]! / Math.max(1, ((slope / lastsS) * 0.064 * 3500) / 78);
  return moved;
}

/** The same blast as if it came from a whistle of two chambers: a second line beside the first, the two beating. */
function twoChambered(figures: Float64Array, dice: Dice): Float64Array {
  const double = figures.slice();
  double[SIDE] = dice.between(-0.8, 0);
  double[LINE] = figures[LINE]! * dice.between(0.4, 0.85);
  double[NARROW] = Math.max(-3, figures[NARROW]! - dice.between(0, 1.2));
  double[BEAT] = Math.max(figures[BEAT]!, dice.between(0.2, 3));
  double[WOBBLE] = Math.max(figures[WOBBLE]!, dice.between(0, 2.5));
  double[FLAT] = figures[FLAT]! * dice.between(0.4, 1);
  if (dice.chance(0.4)) double[RIVALS] = dice.between(-0.7, 0);
  return double;
}

/** The same note of no whistle as if it were sung slower: longer, softer at its ends, bending less quickly, with other company. */
function slower(figures: Float64Array, dice: Dice): Float64Array {
  const slow = figures.slice();
  const times = dice.between(1.3, 5);
  slow[LENGTH] = figures[LENGTH]! + Math.log(times);
  slow[BEND] = figures[BEND]! / times;
  slow[RISE] = Math.min(3, figures[RISE]! * times);
  slow[FALL] = Math.min(3, figures[FALL]! * times);
  slow[OTHERS] = figures[OTHERS]! * dice.uniform();
  slow[COMPANY] = Math.max(figures[COMPANY]!, dice.below(4) / 2);
  return slow;
}

/** A note stands out as one line; what does not is no note. */
const LINE_FROM = 0.3;

/**
 * Candidates with each real blast there twice more, its figures changed as a slide or a second chamber would change them. The set `tune` holds
 * neither kind of whistle, handlers blow both, and without these the score learns that a blast is one level line.
 * Each note that is none is there once more, slower: there are more birds than the set has.
 */
export const variedBlasts = (rows: readonly Labelled[], dice: Dice): Labelled[] =>
  rows.flatMap((row) =>
    row.isReal
      ? [row, ...[slid, twoChambered].map((vary) => ({ figures: vary(row.figures, dice), isReal: true }))]
      : row.figures[LINE]! > LINE_FROM
        ? [row, { figures: slower(row.figures, dice), isReal: false }]
        : [row],
  );

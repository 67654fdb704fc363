import type { Random } from '../../numeric/index.ts';

/** Least span of the places with three stops and more, as part of the way (common practice, no source). */
const LEAST_SPAN = 0.25;
/** What is aimed at where reach allows, so that rounding a place to 0.01 or walking it out keeps the span (our judgement, 2026). */
const WANTED_SPAN = 0.3;
const STOPS_TO_SPREAD = 3;

export interface StopPlaces {
  /** Part of the way already run at each stop, in the order in which they come. */
  readonly wayFractions: readonly number[];
  /** Largest less smallest. */
  readonly span: number;
  /** Whether the span is 0.25 or more; `too-few`: one or two stops need not be; `out-of-reach`: the reach itself is narrower. */
  readonly spread: 'kept' | 'too-few' | 'out-of-reach';
}

/**
 * Where on the way each stop comes: the reach is cut into as many equal parts as there are stops, each part has one place,
 * uniform in it, and the places are shuffled. With three stops and more the outer two keep the ends near enough for a span
 * of 0.25 wherever the reach allows it.
 * @param stops whole number from 0
 * @param least easiest part of the way to stop at, 0..1
 * @param most hardest part within reach, `least`..1
 * @throws RangeError outside these
 */
export function stopPlaces(input: {
  readonly stops: number;
  readonly least: number;
  readonly most: number;
  readonly random: Random;
}): StopPlaces {
  const { stops, least, most, random } = input;
  if (!Number.isInteger(stops) || stops < 0)
    throw new RangeError(`stops: expected a whole number >= 0, got ${stops}`);
  if (!(least >= 0 && least <= 1)) throw new RangeError(`least: expected 0..1, got ${least}`);
  if (!(most >= least && most <= 1))
    throw new RangeError(`most: expected ${least}..1, got ${most}; give the easier end as least`);
  const part = (most - least) / Math.max(1, stops);
  const tooFew = stops < STOPS_TO_SPREAD;
  const slack = tooFew ? part : Math.min(part, Math.max(0, most - least - WANTED_SPAN) / 2);
  const wayFractions = Array.from({ length: stops }, (_, n) => {
    const from = n === stops - 1 ? most - slack : least + n * part;
    const width = n === 0 || n === stops - 1 ? slack : part;
    return Math.min(most, from + random.uniform() * width);
  });
  shuffle(wayFractions, random);
  const span = stops === 0 ? 0 : Math.max(...wayFractions) - Math.min(...wayFractions);
  // A billionth: the ends come back from sums of fractions.
  const spread = tooFew ? 'too-few' : span >= LEAST_SPAN - 1e-9 ? 'kept' : 'out-of-reach';
  return { wayFractions, span, spread };
}

/** Fisher and Yates (Durstenfeld1964), in place: every order equally likely. */
function shuffle(values: number[], random: Random): void {
  for (let last = values.length - 1; last > 0; last--) {
    const other = random.below(last + 1);
    [values[last], values[other]] = [values[other]!, values[last]!];
  }
}

import type { LegRecord } from '../record/training-record.ts';
import type { FilmMark } from './film-record.ts';
import { type SpeedBetween, speedBetween, type TimeBetween, timeBetween } from './mark-times.ts';

/** A halt that was marked: how long after the whistle, and which leg it belongs to. */
export interface FilmedHalt {
  /** The mark of the halt. */
  readonly mark: string;
  /** Number of the stop's leg in the rep, from 0; `null` where the marks don't tell which. */
  readonly leg: number | null;
  /** From the first whistle since the send, cast or halt before it; `null` where no whistle was marked. */
  readonly latency: TimeBetween | null;
  /** Blasts marked between: more than one where it was blown again. */
  readonly blasts: number;
  /** From the halt to the cast, where one was marked: how long it was held. */
  readonly held: TimeBetween | null;
}

/** What the marks of one rep on one film come to. */
export interface RepFigures {
  readonly marks: number;
  readonly halts: readonly FilmedHalt[];
  /** From the send to the first pick-up, whatever came between. */
  readonly out: TimeBetween | null;
  /** From the last pick-up to the delivery. */
  readonly back: TimeBetween | null;
  /** From the send to the first whistle. */
  readonly untilWhistle: TimeBetween | null;
  /** Straight out, with no halt and no cast marked, over the distance of the line or mark. */
  readonly speedOut: SpeedBetween | null;
  /** From the send to the first halt, over the distance of the stop. */
  readonly speedToHalt: SpeedBetween | null;
  /** Back, over the distance of the delivery or recall. */
  readonly speedBack: SpeedBetween | null;
}

/**
 * What the marks of a rep come to. Expects marks of one rep on one film, by their time. A halt belongs to the stop of the same number;
 * where there are as many halts as stops that were not missed, to those; else to none, and nothing is guessed.
 */
export function repFigures(marks: readonly FilmMark[], legs: readonly LegRecord[]): RepFigures {
  const first = (what: FilmMark['what']) => marks.find((mark) => mark.what === what);
  const sent = first('sent');
  const pickUp = first('pick-up');
  const lastPickUp = marks.findLast((mark) => mark.what === 'pick-up');
  const delivered = marks.find(({ what, atS }) => what === 'delivery' && atS >= (lastPickUp?.atS ?? 0));
  const out = timeBetween(sent, pickUp);
  const back = timeBetween(lastPickUp, delivered);
  const halts = marks.filter(({ what }) => what === 'halt');
  const isStraight = halts.length === 0 && first('cast') === undefined;
  const distanceOf = (...skills: readonly LegRecord['skill'][]): number | undefined =>
    legs.find(({ skill }) => skills.includes(skill))?.ask.distanceM;
  return {
    marks: marks.length,
    halts: filmedHalts(marks, halts, legs),
    out,
    back,
    untilWhistle: timeBetween(sent, first('whistle')),
    speedOut: isStraight ? speedBetween(out, distanceOf('line', 'mark')) : null,
    speedToHalt: speedBetween(timeBetween(sent, halts[0]), distanceOf('stop')),
    speedBack: speedBetween(back, distanceOf('delivery', 'recall')),
  };
}

function filmedHalts(
  marks: readonly FilmMark[],
  halts: readonly FilmMark[],
  legs: readonly LegRecord[],
): FilmedHalt[] {
  const legOf = stopLegs(halts.length, legs);
  return halts.map((halt, n) => {
    const before = marks.slice(0, marks.indexOf(halt));
    const begun = before.findLastIndex(({ what }) => what === 'sent' || what === 'halt' || what === 'cast');
    const blasts = before.slice(begun + 1).filter(({ what }) => what === 'whistle');
    const until = halts[n + 1]?.atS ?? Number.POSITIVE_INFINITY;
    const cast = marks.find(({ what, atS }) => what === 'cast' && atS >= halt.atS && atS < until);
    return {
      mark: halt.mark,
      leg: legOf[n] ?? null,
      latency: timeBetween(blasts[0], halt),
      blasts: blasts.length,
      held: timeBetween(halt, cast),
    };
  });
}

/** The legs that so many halts belong to, in order; none where the number fits neither all stops nor those that were kept. */
function stopLegs(halts: number, legs: readonly LegRecord[]): readonly number[] {
  const stops = legs.flatMap((leg, n) => (leg.skill === 'stop' ? [{ leg, n }] : []));
  const kept = stops.filter(({ leg }) => leg.grade !== 'missed');
  const found = [kept, stops].find((some) => some.length === halts);
  return found?.map(({ n }) => n) ?? [];
}

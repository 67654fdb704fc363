import type { Heard, Truth } from './recording.ts';
import type { Span } from './scene.ts';

/** A detection counts for a blast or click when it is within this of it: 50 ms, the usual ± of onset judging (MIREX onset task pages). */
export const WITHIN_S = 0.05;

/** Whom each found time is paired with. */
export interface Pairing {
  /** Index of truth and of what was heard. */
  pairs: [truth: number, heard: number][];
  strayHeard: number[];
}

/**
 * Pairs times one to one within `WITHIN_S`: as many pairs as can be, and among those the least sum of errors. Both lists rise, and then some best
 * pairing crosses nowhere, so a table over the two prefixes finds it.
 */
export function pairTimes(truthS: readonly number[], heardS: readonly number[]): Pairing {
  const width = heardS.length + 1;
  const best: { pairs: number; errorS: number }[] = [];
  const at = (t: number, h: number) => best[t * width + h]!;
  for (let t = 0; t <= truthS.length; t++) {
    for (let h = 0; h < width; h++) {
      // The way back compares by identity: an equal entry must be the very same one.
      let one = t > 0 ? at(t - 1, h) : h > 0 ? at(t, h - 1) : { pairs: 0, errorS: 0 };
      if (t > 0 && h > 0) one = better(one, at(t, h - 1));
      if (t > 0 && h > 0) {
        const errorS = Math.abs(truthS[t - 1]! - heardS[h - 1]!);
        const before = at(t - 1, h - 1);
        if (errorS <= WITHIN_S)
          one = better(one, { pairs: before.pairs + 1, errorS: before.errorS + errorS });
      }
      best.push(one);
    }
  }
  const pairs: Pairing['pairs'] = [];
  const isStray = heardS.map(() => true);
  for (let t = truthS.length, h = heardS.length; t > 0 && h > 0; ) {
    if (at(t, h) === at(t - 1, h)) t--;
    else if (at(t, h) === at(t, h - 1)) h--;
    else {
      t--;
      h--;
      pairs.unshift([t, h]);
      isStray[h] = false;
    }
  }
  return { pairs, strayHeard: heardS.flatMap((_, h) => (isStray[h] ? [h] : [])) };
}

type Sum = { pairs: number; errorS: number };
const better = (a: Sum, b: Sum) =>
  b.pairs > a.pairs || (b.pairs === a.pairs && b.errorS < a.errorS) ? b : a;

/** What was counted in one recording or in several. */
export interface Counts {
  lastsS: number;
  whistles: {
    truth: number;
    found: number;
    foundWithKind: number;
    stray: number;
    onsetErrorsS: number[];
    endErrorsS: number[];
  };
  clicks: { truth: number; found: number; stray: number; errorsS: number[] };
  /** Blasts and clicks outside the judged ratios: a detection on one is dropped, a silence too. */
  ungraded: number;
}

export const noCounts = (): Counts => ({
  lastsS: 0,
  whistles: { truth: 0, found: 0, foundWithKind: 0, stray: 0, onsetErrorsS: [], endErrorsS: [] },
  clicks: { truth: 0, found: 0, stray: 0, errorsS: [] },
  ungraded: 0,
});

/**
 * Adds what a detector heard in one recording to the counts. Every whistle counts, whoever blew it. Blasts and clicks whose ratio lies outside
 * `judgedDb` are not asked for; what is heard from 50 ms before one to 50 ms after its end is dropped unless it pairs with one that is.
 */
export function count(into: Counts, truth: Truth, heard: Heard, lastsS: number, [lowDb, highDb]: Span): void {
  const isJudged = (db: number) => db >= lowDb && db <= highDb;
  const near = (s: number, fromS: number, toS: number) => s >= fromS - WITHIN_S && s <= toS + WITHIN_S;
  const byStart = [...heard.whistles].sort((a, b) => a.startS - b.startS);
  const asked = truth.whistles.filter(({ inBandSnrDb }) => isJudged(inBandSnrDb));
  const unasked = truth.whistles.filter(({ inBandSnrDb }) => !isJudged(inBandSnrDb));
  const blasts = pairTimes(
    asked.map(({ startS }) => startS),
    byStart.map(({ startS }) => startS),
  );
  const { whistles, clicks } = into;
  for (const [t, h] of blasts.pairs) {
    const [real, said] = [asked[t]!, byStart[h]!];
    whistles.found++;
    if (real.kind === said.kind) whistles.foundWithKind++;
    whistles.onsetErrorsS.push(said.startS - real.startS);
    whistles.endErrorsS.push(said.endS - real.endS);
  }
  whistles.truth += asked.length;
  whistles.stray += blasts.strayHeard.filter(
    (h) => !unasked.some(({ startS, endS }) => near(byStart[h]!.startS, startS, endS)),
  ).length;

  const heardS = heard.clicks.map(({ timeS }) => timeS).sort((a, b) => a - b);
  const askedClicks = truth.clicks.filter(({ snrDb }) => isJudged(snrDb));
  const unaskedClicks = truth.clicks.filter(({ snrDb }) => !isJudged(snrDb));
  const presses = pairTimes(
    askedClicks.map(({ timeS }) => timeS),
    heardS,
  );
  for (const [t, h] of presses.pairs) clicks.errorsS.push(heardS[h]! - askedClicks[t]!.timeS);
  clicks.truth += askedClicks.length;
  clicks.found += presses.pairs.length;
  // A release comes up to 0.3 s after its press: of a press that is not asked for, that is dropped too.
  clicks.stray += presses.strayHeard.filter(
    (h) => !unaskedClicks.some(({ timeS }) => near(heardS[h]!, timeS, timeS + 0.3)),
  ).length;
  into.ungraded += unasked.length + unaskedClicks.length;
  into.lastsS += lastsS;
}

/** F = 2 TP / (2 TP + FP + FN); null when there was neither truth nor anything heard. */
export const fMeasure = (right: number, truth: number, heard: number): number | null =>
  truth + heard === 0 ? null : (2 * right) / (truth + heard);

/** The value below which `share` of the list lies, between neighbours in a straight line; null for an empty list. */
export function quantile(values: readonly number[], share: number): number | null {
  if (values.length === 0) return null;
  const sorted = [...values].sort((a, b) => a - b);
  const place = share * (sorted.length - 1);
  const low = Math.floor(place);
  return sorted[low]! + (place - low) * ((sorted[low + 1] ?? sorted[low]!) - sorted[low]!);
}

/** The figures that are asked of a detector; null where the recordings cannot say. */
export interface Figures {
  whistleF: number | null;
  whistleKindF: number | null;
  clickF: number | null;
  falseWhistlesPerHour: number;
  falseClicksPerHour: number;
  onsetMedianS: number | null;
  onsetP95S: number | null;
  endMedianS: number | null;
}

/** Figures from counts; errors of time are of what was found, without sign. */
export function figures({ whistles, clicks, lastsS }: Counts): Figures {
  const heard = whistles.found + whistles.stray;
  const sizes = (errors: readonly number[]) => errors.map(Math.abs);
  return {
    whistleF: fMeasure(whistles.found, whistles.truth, heard),
    whistleKindF: fMeasure(whistles.foundWithKind, whistles.truth, heard),
    clickF: fMeasure(clicks.found, clicks.truth, clicks.found + clicks.stray),
    falseWhistlesPerHour: (3600 * whistles.stray) / lastsS,
    falseClicksPerHour: (3600 * clicks.stray) / lastsS,
    onsetMedianS: quantile(sizes(whistles.onsetErrorsS), 0.5),
    onsetP95S: quantile(sizes(whistles.onsetErrorsS), 0.95),
    endMedianS: quantile(sizes(whistles.endErrorsS), 0.5),
  };
}

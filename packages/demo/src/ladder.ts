import type { Ask } from '@sedgeline/journal';

/** The lines of work that an invented handler builds up, each on its own ladder. */
export const WORKS = ['line', 'stop', 'cast', 'mark', 'hunt', 'recall', 'heel'] as const;
export type Work = (typeof WORKS)[number];

/** Each step raises one thing over the step before: the trade's first rule (common practice, no source). */
const STEPS: Readonly<Record<Work, readonly Ask[]>> = {
  line: [
    { distanceM: 12, temptation: 'post', handlerPlace: 'beside' },
    { distanceM: 20 },
    { temptation: 'placed-dummy' },
    { distanceM: 30 },
    { cover: 1 },
    { distanceM: 40 },
    { otherDummies: 1, gapDeg: 90 },
    { distanceM: 55 },
    { blind: true },
    { distanceM: 70 },
    { gapDeg: 50 },
    { distanceM: 90 },
    { obstacle: 1 },
    { distanceM: 110 },
  ],
  stop: [
    { distanceM: 6, wayFraction: 0.25 },
    { distanceM: 10, wayFraction: 0.35 },
    { temptation: 'post' },
    { distanceM: 18, wayFraction: 0.45 },
    { handlerPlace: 'beside' },
    { temptation: 'placed-dummy' },
    { distanceM: 26, wayFraction: 0.5 },
    { handlerPlace: 'apart' },
    { distanceM: 36, wayFraction: 0.6 },
    { distraction: 1 },
    { temptation: 'thrown-dummy' },
    { distanceM: 48, wayFraction: 0.65 },
    { distraction: 2 },
    { distanceM: 62, wayFraction: 0.7 },
  ],
  cast: [
    { distanceM: 8, castM: 8 },
    { castM: 14 },
    { distanceM: 15 },
    { temptation: 'placed-dummy' },
    { castM: 22 },
    { otherDummies: 1, gapDeg: 90 },
    { distanceM: 25 },
    { castM: 30 },
    { blind: true },
    { distanceM: 40 },
    { cover: 1 },
    { castM: 40 },
    { distanceM: 55 },
  ],
  mark: [
    { distanceM: 15, temptation: 'thrown-dummy', handlerPlace: 'beside' },
    { distanceM: 25 },
    { cover: 1 },
    { distanceM: 40 },
    { waitS: 10 },
    { distanceM: 55 },
    { cover: 2 },
    { distanceM: 75 },
    { temptation: 'shot-and-dummy' },
    { distanceM: 95 },
  ],
  hunt: [
    { distanceM: 10, cover: 1, handlerPlace: 'beside' },
    { distanceM: 20 },
    { cover: 1.5 },
    { distanceM: 30 },
    { cover: 2 },
    { distanceM: 45 },
    { windAcrossMPerS: 4 },
    { distanceM: 60 },
  ],
  recall: [
    { distanceM: 15 },
    { distanceM: 30 },
    { distraction: 1 },
    { distanceM: 50 },
    { temptation: 'placed-dummy' },
    { distanceM: 70 },
    { distraction: 2 },
  ],
  heel: [
    { temptation: 'none' },
    { distraction: 1 },
    { temptation: 'placed-dummy' },
    { waitS: 20 },
    { temptation: 'thrown-dummy' },
    { distraction: 2 },
  ],
};

const climbed = (steps: readonly Ask[]): readonly Ask[] =>
  steps.map((_step, rung) => Object.assign({}, ...steps.slice(0, rung + 1)));
const RUNGS: Readonly<Record<Work, readonly Ask[]>> = {
  line: climbed(STEPS.line),
  stop: climbed(STEPS.stop),
  cast: climbed(STEPS.cast),
  mark: climbed(STEPS.mark),
  hunt: climbed(STEPS.hunt),
  recall: climbed(STEPS.recall),
  heel: climbed(STEPS.heel),
};

/** The ask of a rung; below the first is the first, above the last is the last. */
export function askAt(work: Work, rung: number): Ask {
  const rungs = RUNGS[work];
  const ask = rungs[Math.min(Math.max(rung, 0), rungs.length - 1)];
  if (ask === undefined) throw new RangeError(`work: expected a ladder with rungs, got none for ${work}`);
  return ask;
}

/** What the handler takes from a leg: it went well, so-so, it was missed, or missed through no fault of the dog. */
export type Outcome = 'well' | 'so-so' | 'missed' | 'excused';

/** Where a dog stands on each ladder, and how the last reps there went. */
export interface Ladder {
  rungOf(work: Work): number;
  /** Two that went well in a row: one up. A miss that was the dog's: one down. An excused miss: the same again. */
  note(work: Work, outcome: Outcome): void;
}

/** A ladder that starts all works at `startRung` and never goes above `topRung` (what this handler dares to ask). */
export function ladderFrom(startRung: number, topRung: number): Ladder {
  const rungs = new Map<Work, number>();
  const wells = new Map<Work, number>();
  const rungOf = (work: Work) => rungs.get(work) ?? Math.min(startRung, RUNGS[work].length - 1);
  return {
    rungOf,
    note(work, outcome) {
      if (outcome === 'excused') return;
      const running = outcome === 'well' ? (wells.get(work) ?? 0) + 1 : 0;
      wells.set(work, running % 2);
      const top = Math.min(topRung, RUNGS[work].length - 1);
      if (running >= 2) rungs.set(work, Math.min(rungOf(work) + 1, top));
      if (outcome === 'missed') rungs.set(work, Math.max(rungOf(work) - 1, 0));
    },
  };
}

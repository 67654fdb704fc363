import type { AskWords } from '../ask.ts';
import type { ChanceWords } from '../chances.ts';
import type { TimeWords } from '../time.ts';
import type { Tongue } from '../tongue.ts';
import type { Ask, Skill } from '../vocabulary.ts';

interface Chance {
  readonly chance: number;
  readonly interval90: readonly [number, number];
}

/** Legs by grade, those not held against the dog apart. */
export interface CountedLegs {
  readonly good: number;
  readonly fair: number;
  readonly missed: number;
  readonly excused: number;
}

interface ToldProgress {
  readonly name: string;
  readonly skill: Skill;
  readonly ask: Ask;
  readonly points: readonly { readonly atMs: number; readonly smoothed: Chance }[];
  readonly legs: readonly unknown[];
}

/** Legs counted in words: "9 good, 1 fair, 2 missed"; grades that did not come are left out. */
export function countedLegs(t: Tongue, { good, fair, missed, excused }: CountedLegs): string {
  const part = (n: number, word: string): string[] => (n === 0 ? [] : [`${t.number(n)} ${word}`]);
  const held = [...part(good, 'good'), ...part(fair, 'fair'), ...part(missed, 'missed')];
  return [...held, ...part(excused, 'not held against the dog')].join(', ');
}

/** Words of how a dog came on at a skill. */
export function progressWords(t: Tongue, ask: AskWords, chances: ChanceWords, time: TimeWords) {
  return {
    open: 'Over time',
    openFor: (skill: string): string => `${skill}: over time`,
    /** The picture in words: where it began, where it is, over how many sessions. */
    said: ({ name, skill, ask: usual, points, legs }: ToldProgress): string => {
      const [first, last] = [points[0], points.at(-1)];
      if (first === undefined || last === undefined) return `${name} has not been worked at this yet.`;
      const at = `Chance of good at the usual ask (${ask.figures(skill, usual)})`;
      const now = chances.withInterval(last.smoothed.chance, last.smoothed.interval90);
      const worked = `${t.count(points.length, 'session', 'sessions')}, ${t.count(legs.length, 'leg', 'legs')}`;
      const day = time.date(last.atMs);
      if (points.length === 1) return `${at}: ${now}, as of ${day}. ${worked}.`;
      const then = `${chances.plain(first.smoothed.chance)} on ${time.date(first.atMs)}`;
      return `${at}: ${then}; ${now}, by ${day}. ${worked}.`;
    },
    key: {
      line: 'The line is each session as we know it now, looking back; the band is what it may be, 90 in 100.',
      marks: 'Each mark is a leg, as high as the chance we gave it before it was asked.',
      fresh: 'Stated as if asked fresh that day, on ground the dog knows, at the age it was.',
    },
    few: (legs: number): string =>
      `Only ${t.count(legs, 'leg', 'legs')} so far: the line is more guess than record.`,
    table: 'Every session as a table',
    columns: {
      day: 'Day',
      legs: 'Legs',
      lookingBack: 'As we know it now, in 100',
      thatDay: 'As known that day',
    },
    counts: (counts: CountedLegs): string => countedLegs(t, counts),
    waiting: 'Going through the record.',
    failed: 'That could not be worked out. The record is as it was; close this and try again.',
    /** The scale at the side, in 100. */
    scale: (chance: number): string => t.number(100 * chance),
    /** What a chance may be, for a table: "72 to 92". */
    range: ([low, high]: readonly [number, number]): string =>
      `${chances.inHundred(low)} to ${chances.inHundred(high)}`,
  };
}

export type ProgressWords = ReturnType<typeof progressWords>;

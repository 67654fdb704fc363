import type { DogAdded, GoalSet, GroundAdded, HandlerAdded } from '@sedgeline/journal';
import { CAREFUL_YOUNG, KEEN, OLD_HAND, type Temperament } from './temperament.ts';

/** Who and what is in the invented kennel. Every name is made up, and says so wherever a person first meets it. */

export interface DemoDog {
  readonly added: DogAdded;
  readonly handler: string;
  readonly temperament: Temperament;
  /** Rungs where its ladders start and where its handler stops asking for more. */
  readonly startRung: number;
  readonly topRung: number;
  /** Out of ten sessions of the kennel, how many are this dog's. */
  readonly turns: number;
  /** Share of clean sends, by week from 0. */
  readonly cleanShare: (week: number) => number;
  /** Lines of work in this dog's sessions, the likelier the more often they are named. */
  readonly works: readonly ('send' | 'cast' | 'mark' | 'hunt' | 'recall' | 'heel')[];
  /** Days away, first and last, and why. */
  readonly layOffs: readonly { readonly from: string; readonly to: string; readonly why: string }[];
}

export interface DemoHandler {
  readonly added: HandlerAdded;
  /** Chance that a whistle comes late. */
  readonly lateWhistle: number;
}

export const HANDLERS: readonly DemoHandler[] = [
  { added: { handler: 'ada', name: 'Ada (an invented handler)', reactionS: 0.3 }, lateWhistle: 0.05 },
  { added: { handler: 'ben', name: 'Ben (an invented handler)', reactionS: 0.38 }, lateWhistle: 0.16 },
];

/** The week from which the keen dog's handler lets it run clean more often. */
export const MORE_CLEAN_FROM_WEEK = 22;

export const DOGS: readonly DemoDog[] = [
  {
    added: {
      dog: 'tansy',
      name: 'Tansy',
      born: '2025-01-12',
      sex: 'bitch',
      breed: 'retriever',
      weightKg: 25,
      runSpeedMPerS: 6.2,
    },
    handler: 'ada',
    temperament: CAREFUL_YOUNG,
    startRung: 0,
    topRung: 11,
    turns: 5,
    cleanShare: () => 0.4,
    works: ['send', 'send', 'send', 'cast', 'cast', 'mark', 'recall', 'heel'],
    layOffs: [{ from: '2026-09-07', to: '2026-09-27', why: 'in season' }],
  },
  {
    added: {
      dog: 'rook',
      name: 'Rook',
      born: '2023-05-30',
      sex: 'dog',
      breed: 'retriever',
      weightKg: 33,
      runSpeedMPerS: 7.4,
    },
    handler: 'ben',
    temperament: KEEN,
    startRung: 3,
    topRung: 12,
    turns: 3,
    cleanShare: (week) => (week < 4 ? 0.4 : week < MORE_CLEAN_FROM_WEEK ? 0.15 : 0.5),
    works: ['send', 'send', 'send', 'send', 'send', 'send', 'cast', 'mark'],
    layOffs: [{ from: '2026-07-06', to: '2026-07-24', why: 'cut pad' }],
  },
  {
    added: {
      dog: 'moss',
      name: 'Moss',
      born: '2018-04-02',
      sex: 'dog',
      breed: 'retriever',
      weightKg: 31,
      runSpeedMPerS: 5.8,
    },
    handler: 'ada',
    temperament: OLD_HAND,
    startRung: 8,
    topRung: 13,
    turns: 2,
    cleanShare: () => 0.4,
    works: ['send', 'send', 'cast', 'cast', 'mark', 'hunt'],
    layOffs: [],
  },
];

export interface DemoGround {
  readonly added: GroundAdded;
  /** The first week in which anyone trains there. */
  readonly fromWeek: number;
  /** Out of ten sessions once it is in use, how many are here. */
  readonly turns: number;
  readonly cover: number;
  readonly distraction: number;
}

/** Round figures in open farmland: they point at no training ground. */
export const GROUNDS: readonly DemoGround[] = [
  {
    added: {
      ground: 'paddock',
      name: 'Home paddock',
      latDeg: 52.3,
      lonDeg: -0.9,
      note: 'Invented for the demo. Mown grass, level, a hedge on the north side.',
    },
    fromWeek: 0,
    turns: 5,
    cover: 0,
    distraction: 0,
  },
  {
    added: {
      ground: 'meadow',
      name: 'Long meadow',
      latDeg: 52.4,
      lonDeg: -0.8,
      note: 'Invented for the demo. Ankle-high grass, a ditch across the far end, walkers on the path.',
    },
    fromWeek: 5,
    turns: 3,
    cover: 1,
    distraction: 0.5,
  },
  {
    added: {
      ground: 'heath',
      name: 'Heath edge',
      latDeg: 52.5,
      lonDeg: -0.7,
      note: 'Invented for the demo. Heather to the knee, rabbits, the ground falls away to the west.',
    },
    fromWeek: 14,
    turns: 3,
    cover: 1,
    distraction: 1,
  },
];

/** What the kennel works for; the dates lie after the last session, so that there is something to forecast. */
export const GOALS: readonly { readonly onDate: string; readonly body: GoalSet }[] = [
  {
    onDate: '2026-05-02',
    body: {
      goal: 'tansy-winter',
      dog: 'tansy',
      name: 'Stop and cast at forty metres (an invented winter test)',
      by: '2027-02-20',
      asks: [
        { skill: 'line', ask: { distanceM: 60, temptation: 'placed-dummy', cover: 1 }, chance: 0.8 },
        { skill: 'stop', ask: { distanceM: 40, wayFraction: 0.6, temptation: 'placed-dummy' }, chance: 0.75 },
        { skill: 'cast-right', ask: { distanceM: 40, castM: 25, temptation: 'placed-dummy' }, chance: 0.7 },
        { skill: 'delivery', ask: {}, chance: 0.85 },
      ],
    },
  },
  {
    onDate: '2026-06-13',
    body: {
      goal: 'rook-steady',
      dog: 'rook',
      name: 'One whistle with a thrown dummy ahead (an invented aim)',
      by: '2027-01-30',
      asks: [
        { skill: 'stop', ask: { distanceM: 50, wayFraction: 0.6, temptation: 'thrown-dummy' }, chance: 0.8 },
        { skill: 'cast-back', ask: { distanceM: 50, castM: 30 }, chance: 0.8 },
      ],
    },
  },
];

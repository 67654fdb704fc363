import type { Layout, PlanePoint, Thing } from '../layout.ts';

/** What a layout is a first picture of; the words stand in the catalogue. */
export const STARTING_LAYOUT_CODES = [
  'fence-line',
  'memory-by-wall',
  'angled-cast-off-track',
  'diversion-mark',
  'blind-in-cover',
  'strip-to-cross',
  'water-edge',
  'post-grid',
] as const;
export type StartingLayoutCode = (typeof STARTING_LAYOUT_CODES)[number];

/** What a marker of a starting layout marks; markers of one feature are joined in the drawing. */
export const FEATURE_CODES = [
  'fence',
  'wall',
  'track',
  'cover',
  'strip',
  'strip-far',
  'water',
  'steep-bank',
] as const;
export type FeatureCode = (typeof FEATURE_CODES)[number];

/** A layout to begin from: the dog is sent from the origin, out is north, lengths are metres. Labels are `FeatureCode`s. */
export interface StartingLayout {
  readonly code: StartingLayoutCode;
  readonly layout: Layout;
}

const HERE: PlanePoint = { eastM: 0, northM: 0 };
type At = readonly [eastM: number, northM: number];

const dummy = (thing: string, [eastM, northM]: At, more: Partial<Thing> = {}): Thing => ({
  thing,
  kind: 'dummy',
  eastM,
  northM,
  how: 'placed',
  ...more,
});
const post = (thing: string, [eastM, northM]: At): Thing => ({ thing, kind: 'post', eastM, northM });
const hazard = (label: FeatureCode, [eastM, northM]: At): Thing => ({
  thing: label,
  kind: 'hazard',
  eastM,
  northM,
  label,
});
/** A wall, a track, an edge of something: markers in a row, joined where they are drawn. */
const along = (label: FeatureCode, ...places: readonly At[]): Thing[] =>
  places.map(([eastM, northM], i) => ({ thing: `${label}-${i + 1}`, kind: 'other', eastM, northM, label }));

/**
 * Sensible first pictures by terrain and purpose (our judgement, 2026, common practice, no source): lines of 15 to 50 m,
 * dummies 30 degrees and more apart where two lie out, nothing in another's way by `layoutWarnings`, which the test holds
 * them to.
 */
export const STARTING_LAYOUTS: readonly StartingLayout[] = [
  {
    code: 'fence-line',
    layout: { handlerAt: HERE, things: [dummy('a', [0, 40]), ...along('fence', [4, -4], [4, 48])] },
  },
  {
    code: 'memory-by-wall',
    layout: {
      handlerAt: HERE,
      things: [dummy('a', [0, 34]), dummy('b', [-24, 34]), ...along('wall', [-36, 36], [14, 36])],
    },
  },
  {
    code: 'angled-cast-off-track',
    layout: {
      handlerAt: HERE,
      things: [
        post('a', [0, 40]),
        dummy('b', [18, 32], { blind: true }),
        dummy('c', [-18, 32], { blind: true }),
        ...along('track', [2, -5], [2, 48]),
      ],
    },
  },
  {
    code: 'diversion-mark',
    layout: {
      handlerAt: HERE,
      things: [dummy('a', [-4, 45], { blind: true }), dummy('b', [22, 24], { how: 'thrown' })],
    },
  },
  {
    code: 'blind-in-cover',
    layout: {
      handlerAt: HERE,
      things: [
        dummy('a', [4, 46], { blind: true }),
        ...along('cover', [-24, 40], [-10, 37], [8, 38], [26, 35]),
      ],
      windFromDeg: 280,
      windMPerS: 3,
    },
  },
  {
    code: 'strip-to-cross',
    layout: {
      handlerAt: HERE,
      things: [
        dummy('a', [0, 36]),
        dummy('b', [-22, 33]),
        ...along('strip', [-30, 19], [14, 19]),
        ...along('strip-far', [-30, 24], [14, 24]),
      ],
    },
  },
  {
    code: 'water-edge',
    layout: {
      handlerAt: HERE,
      things: [
        dummy('a', [-2, 18]),
        dummy('b', [17, 17]),
        hazard('steep-bank', [-20, 21]),
        ...along('water', [-28, 22], [-12, 21], [4, 20], [20, 19], [32, 22]),
      ],
    },
  },
  {
    code: 'post-grid',
    layout: {
      handlerAt: HERE,
      things: [
        post('a', [-13, 15]),
        post('b', [13, 15]),
        post('c', [-10, 30]),
        post('d', [0, 30]),
        post('e', [10, 30]),
        ...along('fence', [-20, -5], [-20, 36], [20, 36], [20, -5]),
      ],
    },
  },
];

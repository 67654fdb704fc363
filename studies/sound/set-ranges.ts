import type { BirdKind } from './birds.ts';
import { DRAWN_KINDS, type DrawnKind } from './drawn-songs.ts';
import { FIELD_BIRDS, type FieldBirdKind } from './field-songs.ts';
import type { DisturbanceKind, GainControl, Scene, Span } from './scene.ts';
import type { SyrinxKind } from './syrinx.ts';
import type { VoiceKind } from './voices.ts';

/**
 * All but `unmet` teach, with their recordings from 100 up: `held-out` since it had been looked at four times, `unheard` three; `wide` has songs and
 * whistles drawn from wide ranges, `rhythms` whistles and birds of the others in the rhythms of the work, `apart` the same far apart in places that are
 * often still, `broad` whatever the others have in any company. `unmet` is kept away: its birds, its whistles, its gusts, places and gains come of
 * other mechanisms. How often it was looked at is told in docs/listening.md.
 */
export type SetName = 'tune' | 'held-out' | 'wide' | 'unheard' | 'rhythms' | 'apart' | 'broad' | 'unmet';

type SongKind = BirdKind | DrawnKind | SyrinxKind | FieldBirdKind;

/** In what the sets differ, but for their seeds. */
export interface Ranges {
  whistles: readonly VoiceKind[];
  pitchHz: Span;
  longS: Span;
  pipS: Span;
  pipGapS: Span;
  clickModesHz: Span;
  releaseGapS: Span;
  treesS: Span;
  birds: readonly SongKind[];
  /** Of these, some few sing in any one place. */
  someBirdsOf?: { kinds: readonly SongKind[]; count: number };
  others: readonly DisturbanceKind[];
  /** Of these, some few are about in any one place; a kind that stands here twice is about twice as often. */
  someOf?: { kinds: readonly DisturbanceKind[]; count: number };
  sampleRatesHz: readonly number[];
  gains: readonly GainControl[];
  gusts: Scene['gusts'];
  wallS: Span | null;
  patterns: Scene['patterns'];
  /** How long places ring; null: all are open. */
  ringsS: Span | null;
  /** Silence between one pattern or press and the next. */
  betweenS: Span;
  /** Length of every recording. */
  lastsS: number;
  /** How far whistles and mouths differ. */
  breadth?: Scene['breadth'];
  /** Each phone hears three bands of its own louder or softer by up to this; nought: all alike. */
  tintDb?: number;
  /** Places are quieter by a figure from this span, and fewer sounds are about in them; null: as they come. */
  quieterDb: Span | null;
}

/** What is about wherever dogs are worked. */
export const COMMON: readonly DisturbanceKind[] = [
  'speech',
  'barks',
  'shot',
  'clank',
  'shutter',
  'zip',
  'footsteps',
  'rustle',
  'car',
];

/** Half a minute in which something comes every other second: much to learn and to judge from in little time. */
const FULL = { betweenS: [0.8, 3], lastsS: 30, quieterDb: null } as const;

/** Gain, gusts, walls and patterns of the first sets. */
const FIRST_FIELD = {
  ...FULL,
  gains: ['none', 'slow', 'fast'],
  gusts: 'wandering',
  wallS: null,
  patterns: 'even',
  ringsS: null,
} as const;

/**
 * What else is about where `unmet` is worked: engines, clothes, rain, children and insects two or three times as often as what beeps, rings and
 * squeaks (our judgement, 2026). Six of them at once keep the field as full as that of `unheard`.
 */
const ABOUT_WORK: readonly DisturbanceKind[] = [
  'tractor',
  'tractor',
  'tractor',
  'jacket',
  'jacket',
  'jacket',
  'rainOnHood',
  'rainOnHood',
  'children',
  'children',
  'fileInsect',
  'fileInsect',
  'reversing',
  'ring',
  'swing',
  'brakes',
  'bowl',
];

/** Every way of singing that teaches. */
const SONGS: readonly SongKind[] = [
  ...DRAWN_KINDS,
  'chirps',
  'warble',
  'piping',
  'seesaw',
  'rise',
  'aloft',
  'buzz',
  'rattle',
  'twoVoiced',
  'jumper',
  'pipes',
  'bouncing',
  'cry',
  'flutter',
];

/** Whistles of all mechanisms that teach, in the rhythms of the work. */
const WORKED = {
  ...FIRST_FIELD,
  whistles: ['plain', 'plain', 'plain', 'pea', 'pea', 'twoTone', 'slide', 'jet', 'jet', 'cork', 'fingers'],
  pitchHz: [2000, 6000],
  longS: [0.38, 2.4],
  pipS: [0.07, 0.28],
  pipGapS: [0.07, 0.4],
  clickModesHz: [1900, 8000],
  releaseGapS: [0.05, 0.3],
  treesS: [0.03, 0.4],
  sampleRatesHz: [16000, 22050, 44100, 48000],
  gains: ['none', 'slow', 'fast', 'limiter', 'gate'],
  wallS: [0.06, 0.45],
  patterns: 'working',
} as const;

export const RANGES: Record<SetName, Ranges> = {
  tune: {
    whistles: ['plain', 'plain', 'pea'],
    pitchHz: [2400, 5600],
    longS: [0.4, 1.8],
    pipS: [0.09, 0.28],
    pipGapS: [0.09, 0.3],
    clickModesHz: [2200, 7000],
    releaseGapS: [0.06, 0.25],
    treesS: [0.05, 0.25],
    birds: ['chirps', 'warble', 'seesaw', 'rattle'],
    others: COMMON,
    sampleRatesHz: [16000, 44100, 48000],
    ...FIRST_FIELD,
  },
  'held-out': {
    whistles: ['plain', 'pea', 'twoTone', 'slide'],
    pitchHz: [2050, 6000],
    longS: [0.37, 2.2],
    pipS: [0.08, 0.3],
    pipGapS: [0.08, 0.4],
    clickModesHz: [2000, 8000],
    releaseGapS: [0.05, 0.3],
    treesS: [0.03, 0.4],
    birds: ['chirps', 'warble', 'seesaw', 'rattle', 'piping', 'rise', 'aloft', 'buzz'],
    others: [...COMMON, 'whine', 'squeal', 'twig', 'crickets'],
    sampleRatesHz: [16000, 22050, 32000, 44100, 48000],
    ...FIRST_FIELD,
  },
  wide: {
    whistles: ['plain', 'plain', 'pea', 'pea', 'twoTone', 'slide'],
    pitchHz: [1950, 6100],
    longS: [0.37, 2.8],
    pipS: [0.07, 0.31],
    pipGapS: [0.07, 0.5],
    clickModesHz: [1900, 8000],
    releaseGapS: [0.05, 0.3],
    treesS: [0.03, 0.4],
    // Twice, as there is more to learn from a field full of song.
    birds: [...DRAWN_KINDS, ...DRAWN_KINDS],
    others: [...COMMON, 'whine', 'squeal', 'twig', 'crickets'],
    sampleRatesHz: [16000, 16000, 22050, 48000],
    ...FIRST_FIELD,
    breadth: 'wide',
  },
  unheard: {
    whistles: ['jet', 'jet', 'cork', 'fingers', 'overblown', 'twoTone'],
    pitchHz: [2000, 5800],
    longS: [0.38, 2.6],
    pipS: [0.07, 0.26],
    pipGapS: [0.07, 0.5],
    clickModesHz: [1900, 7600],
    releaseGapS: [0.05, 0.28],
    treesS: [0.03, 0.35],
    birds: ['twoVoiced', 'jumper', 'flutter', 'pipes', 'bouncing', 'cry', 'chirps', 'warble'],
    others: [...COMMON, 'whine', 'beeps', 'wire', 'bell', 'grasshopper', 'gateSwing'],
    sampleRatesHz: [16000, 24000, 32000, 44100, 48000],
    gains: ['none', 'limiter', 'gate'],
    gusts: 'fronts',
    wallS: [0.06, 0.45],
    patterns: 'even',
    ringsS: null,
    ...FULL,
  },
  rhythms: {
    ...WORKED,
    birds: ['chirps', 'warble', 'piping', 'seesaw', 'level', 'stairs', 'pipes', 'bouncing'],
    others: [...COMMON, 'whine', 'squeal', 'beeps'],
  },
  // A session's whistles come tens of seconds apart, and many a field is still.
  apart: {
    ...WORKED,
    whistles: [...WORKED.whistles, 'overblown'],
    birds: SONGS,
    others: [...COMMON, 'whine', 'squeal', 'twig', 'crickets', 'beeps', 'bell'],
    betweenS: [2, 25],
    lastsS: 60,
    quieterDb: [0, 30],
  },
  // Whatever the sets above have, in any company, by any mouth, through phones that hear this and that better.
  broad: {
    ...WORKED,
    whistles: [...WORKED.whistles.slice(1), 'overblown'],
    pitchHz: [1950, 6100],
    longS: [0.37, 2.8],
    pipS: [0.06, 0.3],
    pipGapS: [0.06, 0.5],
    birds: [],
    someBirdsOf: { kinds: SONGS, count: 7 },
    others: ['speech', 'barks', 'footsteps', 'car'],
    someOf: {
      kinds: [
        ...COMMON,
        'whine',
        'squeal',
        'twig',
        'crickets',
        'beeps',
        'wire',
        'bell',
        'grasshopper',
        'gateSwing',
      ],
      count: 7,
    },
    wallS: [0.05, 0.5],
    betweenS: [0.8, 8],
    breadth: 'wide',
    tintDb: 10,
    quieterDb: [0, 15],
  },
  // Most handlers of working retrievers blow a plain whistle of plastic or horn, some one with a pea, a few two chambers or their fingers.
  unmet: {
    whistles: [
      'flue',
      'flue',
      'flue',
      'flue',
      'flue',
      'flue',
      'ballFlue',
      'ballFlue',
      'twinFlue',
      'handFlue',
    ],
    pitchHz: [2100, 5400],
    longS: [0.4, 2.4],
    pipS: [0.08, 0.25],
    pipGapS: [0.08, 0.35],
    clickModesHz: [1900, 7600],
    releaseGapS: [0.05, 0.28],
    treesS: [0.03, 0.4],
    // Thrushes twice: of all that sing they are heard most.
    birds: ['thrushlike', ...FIELD_BIRDS],
    others: [...COMMON, 'whine'],
    someOf: { kinds: ABOUT_WORK, count: 6 },
    sampleRatesHz: [16000, 32000, 44100, 48000, 48000],
    gains: ['none', 'pump', 'suppressor'],
    gusts: 'cascade',
    wallS: null,
    patterns: 'working',
    ringsS: [0.25, 1.1],
    ...FULL,
  },
};

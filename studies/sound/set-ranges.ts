import type { BirdKind } from './birds.ts';
import { DRAWN_KINDS, type DrawnKind } from './drawn-songs.ts';
import { FIELD_BIRDS, type FieldBirdKind } from './field-songs.ts';
import type { DisturbanceKind, GainControl, Scene, Span } from './scene.ts';
import type { SyrinxKind } from './syrinx.ts';
import type { VoiceKind } from './voices.ts';

/**
 * `tune`, `held-out` and `wide` teach: `held-out` was kept away until it had been looked at four times, `wide` has songs and whistles drawn from
 * wide ranges. `unheard` and `unmet` are kept away: their birds, their whistles, their gusts, echoes and gains come of other mechanisms than those
 * that teach, and those of `unmet` of others again. `rhythms` has whistles and birds of the other sets in the rhythms of the work. How often they
 * were looked at is told in docs/listening.md.
 */
export type SetName = 'tune' | 'held-out' | 'wide' | 'unheard' | 'rhythms' | 'unmet';

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
  birds: readonly (BirdKind | DrawnKind | SyrinxKind | FieldBirdKind)[];
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

/** Gain, gusts, walls and patterns of the first sets. */
const FIRST_FIELD = {
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
  },
  rhythms: {
    whistles: ['plain', 'plain', 'plain', 'pea', 'pea', 'twoTone', 'slide', 'jet', 'jet', 'cork', 'fingers'],
    pitchHz: [2000, 6000],
    longS: [0.38, 2.4],
    pipS: [0.07, 0.28],
    pipGapS: [0.07, 0.4],
    clickModesHz: [1900, 8000],
    releaseGapS: [0.05, 0.3],
    treesS: [0.03, 0.4],
    birds: ['chirps', 'warble', 'piping', 'seesaw', 'level', 'stairs', 'pipes', 'bouncing'],
    others: [...COMMON, 'whine', 'squeal', 'beeps'],
    sampleRatesHz: [16000, 22050, 44100, 48000],
    ...FIRST_FIELD,
    gains: ['none', 'slow', 'fast', 'limiter', 'gate'],
    wallS: [0.06, 0.45],
    patterns: 'working',
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
  },
};

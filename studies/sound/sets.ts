import { diceNamed } from '../careers/dice.ts';
import type { BirdKind } from './birds.ts';
import { DRAWN_KINDS, type DrawnKind } from './drawn-songs.ts';
import type { Disturbance, DisturbanceKind, GainControl, Scene, Span } from './scene.ts';
import type { SyrinxKind } from './syrinx.ts';
import type { VoiceKind } from './voices.ts';

/**
 * `tune`, `held-out` and `wide` teach: `held-out` was kept away until it had been looked at four times, `wide` has songs and whistles drawn from
 * wide ranges. `unheard` is kept away: its birds, its whistles,
 * its gusts, walls and gains come of other mechanisms. How often it was looked at is told in docs/listening.md.
 */
export type SetName = 'tune' | 'held-out' | 'wide' | 'unheard';

/** What the recordings of a set stand for; the coded ones are fair and field recordings, turn about, through a coder. */
export type Condition = 'fair' | 'field' | 'weak' | 'nothing' | 'coded-aac' | 'coded-opus';

/** In what the two sets differ, but for their seeds. */
interface Ranges {
  whistles: readonly VoiceKind[];
  pitchHz: Span;
  longS: Span;
  pipS: Span;
  pipGapS: Span;
  clickModesHz: Span;
  releaseGapS: Span;
  treesS: Span;
  birds: readonly (BirdKind | DrawnKind | SyrinxKind)[];
  others: readonly DisturbanceKind[];
  sampleRatesHz: readonly number[];
  gains: readonly GainControl[];
  gusts: Scene['gusts'];
  wallS: Span | null;
}

const COMMON: readonly DisturbanceKind[] = [
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

/** Gain, gusts and walls of the first two sets. */
const FIRST_FIELD = { gains: ['none', 'slow', 'fast'], gusts: 'wandering', wallS: null } as const;

const RANGES: Record<SetName, Ranges> = {
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
  },
};

/** Length of every recording. */
const LASTS_S = 30;

/**
 * The scene of one recording. In-band ratio (defined in `band-ratio.ts`): fair 20 dB and above, field 9 dB and above, weak 3 to 9 dB; a blast
 * or click that a bird or a gust pushes below its set's floor counts neither way. Fair: light air, a few birds and words, near; field: wind,
 * distance, trees, gain control, clipping, everything else; nothing: the field without whistle or click.
 */
export function sceneOf(set: SetName, condition: Condition, index: number): Scene {
  const name = `${set} ${condition} ${index}`;
  const dice = diceNamed(name);
  const range = RANGES[set];
  const isCoded = condition.startsWith('coded');
  const isFair = condition === 'fair' || (isCoded && index % 2 === 0);
  const busy =
    (perMinute: number, loudDb: Span) =>
    (kind: DisturbanceKind): Disturbance => ({
      kind,
      perMinute: dice.uniform() < 0.5 ? 0 : dice.between(0, 2 * perMinute),
      loudDb,
    });
  const disturbances = isFair
    ? [...range.birds.map(busy(1.5, [-10, 12])), ...COMMON.map(busy(0.7, [-5, 25]))]
    : [...range.birds.map(busy(3, [-8, 28])), ...range.others.map(busy(1.5, [0, 38]))];
  const snrDb: Record<Condition, Span | null> = {
    fair: [21, 48],
    field: [10, 38],
    weak: [3.5, 8.5],
    nothing: null,
    'coded-aac': isFair ? [21, 48] : [12, 38],
    'coded-opus': isFair ? [21, 48] : [12, 38],
  };
  return {
    name,
    sampleRateHz: isCoded ? 48000 : dice.pick(range.sampleRatesHz),
    lastsS: LASTS_S,
    air: { temperatureC: dice.between(-2, 30), relativeHumidityPct: dice.between(25, 98) },
    snrDb: snrDb[condition],
    whistles: range.whistles,
    breadth: set === 'wide' ? 'wide' : 'usual',
    pitchHz: range.pitchHz,
    longS: range.longS,
    pipS: range.pipS,
    pipGapS: range.pipGapS,
    othersShare: isFair ? 0 : dice.between(0, 0.4),
    distanceM: dice.pick<Span>(
      isFair
        ? [
            [0.4, 2],
            [2, 40],
          ]
        : [
            [0.4, 3],
            [3, 60],
            [60, 350],
          ],
    ),
    clickModesHz: range.clickModesHz,
    releaseGapS: range.releaseGapS,
    treesS: dice.chance(isFair ? 0.3 : 0.7) ? range.treesS : null,
    windDb: isFair ? dice.between(0, 20) : dice.between(10, 42),
    buffetsPerMinute: isFair ? 0 : dice.between(0, 25),
    disturbances,
    gainControl: dice.pick(isFair ? [range.gains[0]!, ...range.gains.slice(0, 2)] : range.gains),
    backgroundDbFs: isFair ? dice.between(-65, -45) : dice.between(-58, -36),
    gusts: range.gusts,
    wallS: range.wallS !== null && dice.chance(isFair ? 0.2 : 0.5) ? dice.between(...range.wallS) : null,
  };
}

/** The ratio below which a blast or click counts neither as found nor as missed, dB, and above which likewise. */
export function judgedSnrDb(condition: Condition, index: number): Span {
  if (condition === 'weak') return [3, 9];
  if (condition === 'fair' || (condition.startsWith('coded') && index % 2 === 0))
    return [15, Number.POSITIVE_INFINITY];
  return [9, Number.POSITIVE_INFINITY];
}

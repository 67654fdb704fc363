import { type Dice, diceNamed } from '../careers/dice.ts';
import type { BirdKind } from './birds.ts';
import { DRAWN_KINDS, type DrawnKind } from './drawn-songs.ts';
import { FIELD_BIRDS, type FieldBirdKind } from './field-birds.ts';
import type { Disturbance, DisturbanceKind, GainControl, Scene, Span } from './scene.ts';
import type { SyrinxKind } from './syrinx.ts';
import type { VoiceKind } from './voices.ts';

/**
 * `tune`, `held-out` and `wide` teach: `held-out` was kept away until it had been looked at four times, `wide` has songs and whistles drawn from
 * wide ranges. `unheard` and `unmet` are kept away: their birds, their whistles,
 * their gusts, echoes and gains come of other mechanisms than those that teach, and those of `unmet` of others again. How often they were looked
 * at is told in docs/listening.md.
 */
export type SetName = 'tune' | 'held-out' | 'wide' | 'unheard' | 'unmet';

/** What the recordings of a set stand for; the coded ones are fair and field recordings, turn about, through a coder. */
export type Condition = 'fair' | 'field' | 'weak' | 'nothing' | 'coded-aac' | 'coded-opus';

/** In what the sets differ, but for their seeds. */
interface Ranges {
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
    patterns: 'even',
    ringsS: null,
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

/** What else is about in one place; the dice are its own, so that the sets without such a list stay as they were. */
const aboutHere = ({ someOf }: Ranges, dice: Dice): DisturbanceKind[] =>
  someOf === undefined ? [] : Array.from({ length: someOf.count }, () => dice.pick(someOf.kinds));

/** Length of every recording. */
const LASTS_S = 30;

/**
 * The scene of one recording. In-band ratio (defined in `band-ratio.ts`): fair 20 dB and above, field 9 dB and above, weak 3 to 9 dB; a blast
 * or click that a bird or a gust pushes below its set's floor counts neither way. Fair: light air, a few birds and words, near; field: wind,
 * distance, trees, gain control, clipping, everything else; nothing: the field without whistle or click. All of that is the same for every set,
 * so figures compare. `unmet` differs in three things: its other sounds are drawn for each place from a list, as nobody works beside all of them
 * at once; its blasts come in the rhythms of the work, trills of short pips among them, as those are what an ear is for; and in place of one
 * wall's echo some of its places ring.
 */
export function sceneOf(set: SetName, condition: Condition, index: number): Scene {
  const name = `${set} ${condition} ${index}`;
  const dice = diceNamed(name);
  const range = RANGES[set];
  const others = [...range.others, ...aboutHere(range, diceNamed(`${name} place`))];
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
    : [...range.birds.map(busy(3, [-8, 28])), ...others.map(busy(1.5, [0, 38]))];
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
    patterns: range.patterns,
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
    rings:
      range.ringsS !== null && dice.chance(isFair ? 0.2 : 0.5)
        ? { lastsS: dice.between(...range.ringsS), loudDb: dice.between(-20, -2) }
        : null,
  };
}

/** The ratio below which a blast or click counts neither as found nor as missed, dB, and above which likewise. */
export function judgedSnrDb(condition: Condition, index: number): Span {
  if (condition === 'weak') return [3, 9];
  if (condition === 'fair' || (condition.startsWith('coded') && index % 2 === 0))
    return [15, Number.POSITIVE_INFINITY];
  return [9, Number.POSITIVE_INFINITY];
}

import { type Dice, diceNamed } from '../careers/dice.ts';
import type { Disturbance, DisturbanceKind, Scene, Span } from './scene.ts';
import { COMMON, RANGES, type Ranges, type SetName } from './set-ranges.ts';

export type { SetName };

/** What the recordings of a set stand for; the coded ones are fair and field recordings, turn about, through a coder. */
export type Condition = 'fair' | 'field' | 'weak' | 'nothing' | 'coded-aac' | 'coded-opus';

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

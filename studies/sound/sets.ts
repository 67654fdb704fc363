import { type Dice, diceNamed } from '../careers/dice.ts';
import type { Disturbance, DisturbanceKind, Scene, Span } from './scene.ts';
import { COMMON, RANGES, type SetName } from './set-ranges.ts';

export type { SetName };

/** What the recordings of a set stand for; the coded ones are fair and field recordings, turn about, through a coder. */
export type Condition = 'fair' | 'field' | 'weak' | 'nothing' | 'coded-aac' | 'coded-opus';

/** What else is about in one place; the dice are its own, so that the sets without such a list stay as they were. */
const someHere = <Kind>(some: { kinds: readonly Kind[]; count: number } | undefined, dice: Dice): Kind[] =>
  some === undefined ? [] : Array.from({ length: some.count }, () => dice.pick(some.kinds));

/** The bands that a phone hears louder or softer. */
const tintOf = (mostDb: number, dice: Dice) =>
  Array.from({ length: mostDb === 0 ? 0 : 3 }, () => ({
    hz: dice.between(800, 7000),
    db: dice.between(-mostDb, mostDb),
    q: dice.between(0.7, 3),
  }));

/** A still place has a tenth or none of what is about elsewhere, another all of it: every sound is kept with the same chance, low more often than high. */
function thinned(disturbances: readonly Disturbance[], dice: Dice): Disturbance[] {
  const share = dice.uniform() ** 2;
  return disturbances.filter(() => dice.chance(share));
}

/**
 * The scene of one recording. In-band ratio (defined in `band-ratio.ts`): fair 20 dB and above, field 9 dB and above, weak 3 to 9 dB; a blast
 * or click that a bird or a gust pushes below its set's floor counts neither way. Fair: light air, a few birds and words, near; field: wind,
 * distance, trees, gain control, clipping, everything else; nothing: the field without whistle or click. All of that is the same for every set
 * but `apart` and `broad`, which only teach: their places are stiller, and blasts there may stand higher. `unmet` differs in three things: its
 * other sounds are drawn for each place from a list, as nobody works beside all of them at once; its blasts come in the rhythms of the work, trills
 * of short pips among them, as those are what an ear is for; and in place of one wall's echo some of its places ring.
 */
export function sceneOf(set: SetName, condition: Condition, index: number): Scene {
  const name = `${set} ${condition} ${index}`;
  const dice = diceNamed(name);
  const range = RANGES[set];
  const others = [...range.others, ...someHere(range.someOf, diceNamed(`${name} place`))];
  const birds = [...range.birds, ...someHere(range.someBirdsOf, diceNamed(`${name} birds`))];
  const isCoded = condition.startsWith('coded');
  const isFair = condition === 'fair' || (isCoded && index % 2 === 0);
  const quiet = diceNamed(`${name} quiet`);
  const quieterDb = range.quieterDb === null ? 0 : quiet.between(...range.quieterDb);
  const busy =
    (perMinute: number, loudDb: Span) =>
    (kind: DisturbanceKind): Disturbance => ({
      kind,
      perMinute: dice.uniform() < 0.5 ? 0 : dice.between(0, 2 * perMinute),
      loudDb,
    });
  const disturbances = isFair
    ? [...birds.map(busy(1.5, [-10, 12])), ...COMMON.map(busy(0.7, [-5, 25]))]
    : [...birds.map(busy(3, [-8, 28])), ...others.map(busy(1.5, [0, 38]))];
  const snrDb: Record<Condition, Span | null> = {
    fair: [21, 48 + quieterDb],
    field: [10, 38],
    weak: [3.5, 8.5],
    nothing: null,
    'coded-aac': isFair ? [21, 48] : [12, 38],
    'coded-opus': isFair ? [21, 48] : [12, 38],
  };
  return {
    name,
    sampleRateHz: isCoded ? 48000 : dice.pick(range.sampleRatesHz),
    lastsS: range.lastsS,
    air: { temperatureC: dice.between(-2, 30), relativeHumidityPct: dice.between(25, 98) },
    snrDb: snrDb[condition],
    whistles: range.whistles,
    breadth: range.breadth ?? 'usual',
    patterns: range.patterns,
    betweenS: range.betweenS,
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
    disturbances: range.quieterDb === null ? disturbances : thinned(disturbances, quiet),
    gainControl: dice.pick(isFair ? [range.gains[0]!, ...range.gains.slice(0, 2)] : range.gains),
    backgroundDbFs: (isFair ? dice.between(-65, -45) : dice.between(-58, -36)) - quieterDb,
    tint: tintOf(range.tintDb ?? 0, diceNamed(`${name} phone`)),
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

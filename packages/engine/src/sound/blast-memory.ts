import { AFTER_S, type BlastCandidate } from './blast-context.ts';
import { BLAST_FEATURES } from './blast-features.ts';

/**
 * What is measured of a span against what else was heard, each weighed by how like a blast it looked alone. Near: within two seconds, as the
 * notes of a song or the pips of a pattern come. Far: from half a minute before to four seconds after, where a whistle comes back at its own
 * pitch, with its own voice.
 */
export const MEMORY_FEATURES = [
  'alone',
  'sameCount',
  'sameMean',
  'sameLeast',
  'sameMost',
  'otherBlasts',
  'otherNotBlasts',
  'farBlasts',
  'farNotBlasts',
  'farElsewhere',
  'busy',
  'likeLength',
  'fineBlasts',
  'broadBlasts',
  'kinBlasts',
  'kinNotBlasts',
  'unlikeSecond',
  'unlikeBeat',
  'unlikeLine',
  'unlikeBreath',
  'bestAtPitch',
  'louderAtPitch',
  'onTheBeat',
] as const;

export const MEMORY_S = 30;
const NEAR_S = 2;
const BUSY_S = 8;
const SAME_PITCH = 0.03;
const BEST_PITCH = 0.02;
const OTHER_PITCH = 0.05;
/** One whistle's blasts lie about a hundredth apart; a steady mouth's nearer, an unsteady one's further. */
const [FINE_SPREAD, FAR_SPREAD, BROAD_SPREAD] = [0.005, 0.012, 0.03];
/** Mean square of the differences of two voices, in the units below, at which they are no longer called kin. */
const KIN_SPREAD = 0.5;

const at = (name: (typeof BLAST_FEATURES)[number]) => BLAST_FEATURES.indexOf(name);
/** Figures in which two voices are compared, over about their spread in the sets that teach. */
const VOICE = (
  [
    ['length', 1],
    ['flat', 0.3],
    ['rise', 0.5],
    ['fall', 0.6],
    ['beat', 1.2],
    ['line', 0.5],
    ['second', 0.9],
    ['breath', 0.5],
    ['breathLevel', 1.2],
    ['breathLow', 0.7],
    ['breathHigh', 0.7],
    ['third', 0.6],
    ['plateau', 0.3],
    ['lean', 0.3],
    ['riseShare', 1],
    ['fallShare', 1],
    ['quaver', 0.9],
    ['quaverTime', 0.4],
    ['swayTime', 0.3],
    ['together', 0.5],
    ['steady', 1.1],
  ] as const
).map(([name, spread]) => [at(name), spread] as const);
const [SECOND, BEAT, LINE, BREATH] = [at('second'), at('beat'), at('line'), at('breathHigh')];

/** What beeps or sings steadily comes back after the same time again and again: so many times either way, and so near to it. */
const BEAT_LIKE = 0.25;
const LEAST_BEAT_S = 0.35;
const MOST_BEATS = 6;
const BEAT_SHARE = 0.06;

const step = (x: number) => 1 / (1 + Math.exp(-x));
const clip = (value: number) => Math.max(-3, Math.min(3, value));
const bell = (away: number, spread: number) => Math.exp(-0.5 * (away / spread) ** 2);

/** How alike two voices are, 0 to 1. */
function likeness(one: Float64Array, other: Float64Array): number {
  let sum = 0;
  for (const [k, spread] of VOICE) sum += ((one[k]! - other[k]!) / spread) ** 2;
  return Math.exp(-sum / VOICE.length / KIN_SPREAD);
}

/** How many of these come a whole number of the shortest time before or after. */
function onTheBeat(awayS: readonly number[]): number {
  const beatS = Math.min(...awayS.map(Math.abs));
  if (!(beatS > LEAST_BEAT_S && awayS.length > 1)) return 0;
  return awayS.filter((s) => {
    const beats = Math.abs(s) / beatS;
    return Math.round(beats) <= MOST_BEATS && Math.abs(beats - Math.round(beats)) < BEAT_SHARE;
  }).length;
}

/** Figures of one span among those heard about it, in the order of `MEMORY_FEATURES`. */
export function memoryFeatures(one: BlastCandidate, company: readonly BlastCandidate[]): Float64Array {
  const lastsS = one.endS - one.startS;
  let [same, sum, least, most] = [0, 0, 3, -3];
  let [otherBlasts, otherNots, farBlasts, farNots, elsewhere, busy] = [0, 0, 0, 0, 0, 0];
  let [fine, broad, kin, notKin, best] = [0, 0, 0, 0, -3];
  let [likeLength, weights, louder] = [1.5, 1e-9, 0];
  const unlike = new Float64Array(4);
  const alikeAtS: number[] = [];
  for (const other of company) {
    const afterS = other.startS - one.endS;
    const gapS = Math.max(afterS, one.startS - other.endS);
    if (afterS > AFTER_S || gapS > MEMORY_S) continue;
    const away = Math.abs(Math.log(other.pitchHz / one.pitchHz));
    const chance = step(other.alone);
    const looks = clip(other.alone / 3);
    const louderDb = other.levelDb - one.levelDb;
    const isApart = gapS >= 0;
    if (isApart && gapS < NEAR_S && away < SAME_PITCH) {
      same++;
      sum += looks;
      least = Math.min(least, looks);
      most = Math.max(most, looks);
      likeLength = Math.min(likeLength, Math.abs(Math.log((other.endS - other.startS) / lastsS)));
    }
    if (gapS < NEAR_S && away > OTHER_PITCH) {
      const weight = step((louderDb + 9) / 3) * Math.exp(-Math.max(0, gapS) / 0.7);
      otherBlasts += weight * chance;
      otherNots += weight * (1 - chance);
    }
    if (gapS < BUSY_S) busy += 1 - chance;
    if (!isApart) continue;
    const near = bell(away, FAR_SPREAD);
    if (away < BEST_PITCH && Math.abs(Math.log((other.endS - other.startS) / lastsS)) < BEAT_LIKE)
      alikeAtS.push(other.startS - one.startS);
    farBlasts += near * chance;
    farNots += near * (1 - chance);
    fine += bell(away, FINE_SPREAD) * chance;
    broad += bell(away, BROAD_SPREAD) * chance;
    if (away > OTHER_PITCH) elsewhere += chance;
    if (away < BEST_PITCH) best = Math.max(best, looks);
    const alike = likeness(one.own, other.own);
    kin += alike * chance;
    notKin += alike * (1 - chance);
    const weight = near * chance;
    weights += weight;
    louder += weight * louderDb;
    [SECOND, BEAT, LINE, BREATH].forEach((k, i) => {
      unlike[i]! += weight * Math.abs(one.own[k]! - other.own[k]!);
    });
  }
  return Float64Array.of(
    clip(one.alone / 3),
    Math.log1p(same),
    same === 0 ? 0 : sum / same,
    same === 0 ? 0 : least,
    same === 0 ? 0 : most,
    Math.log1p(otherBlasts),
    Math.log1p(otherNots),
    Math.log1p(farBlasts),
    Math.log1p(farNots),
    Math.log1p(elsewhere),
    Math.log1p(busy),
    likeLength,
    Math.log1p(fine),
    Math.log1p(broad),
    Math.log1p(kin),
    Math.log1p(notKin),
    ...unlike.map((value) => value / weights),
    best,
    clip(louder / weights / 10),
    Math.log1p(onTheBeat(alikeAtS)),
  );
}

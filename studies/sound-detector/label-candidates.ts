import type { BlastCandidate } from '../../packages/engine/src/sound/blast-context.ts';
import type { Disturbed, Recording, TrueWhistle, Truth } from '../sound/recording.ts';
import { WITHIN_S } from '../sound/score.ts';

/** One candidate as the detector measured it, and whether it is what is looked for. */
export interface Labelled {
  figures: Float64Array;
  isReal: boolean;
}

/**
 * What the truth says of a candidate: it is a blast, from its beginning to its end; as good as that; it begins with a blast and ends elsewhere; it is none.
 * `unasked` teaches neither way: it lies below the judged ratio.
 */
export type Label = 'real' | 'double' | 'begun' | 'none' | 'unasked';

/** A tone that the detector measured, whether another handler blew it, and what else was sounding. */
export interface LabelledTone {
  candidate: BlastCandidate;
  label: Label;
  isOthers: boolean;
  kinds: readonly string[];
}

type FoundTone = { candidate: BlastCandidate; label: Label | null; isOthers: boolean };
export type FoundClick = { startS: number; label: Label | null; figures: Float64Array };

/** A second chamber lies up to 16 % off the first. */
const SAME_PITCH = 0.16;
/** An end is met within a tenth and a little of the blast: it then has its kind. */
const END_WITHIN_SHARE = 0.12;
/** A release comes up to 0.3 s after its press. */
const RELEASE_S = 0.35;

/** The nearest click without a label within the judged tolerance. */
const nearestClick = (clicks: readonly FoundClick[], atS: number): FoundClick | undefined =>
  clicks
    .filter((one) => one.label === null && Math.abs(one.startS - atS) <= WITHIN_S)
    .sort((a, b) => Math.abs(a.startS - atS) - Math.abs(b.startS - atS))[0];

const soundingAt = (disturbed: readonly Disturbed[], atS: number) =>
  disturbed.filter(({ startS, endS }) => atS > startS - WITHIN_S && atS < endS).map(({ kind }) => kind);

/**
 * Labels the readings of one blast: the nearest of those that begin and end with it is real, the others of these are as good; where none ends with it,
 * the nearest that begins with it is real, as it still counts as found.
 */
function labelReadings(
  tones: readonly FoundTone[],
  { startS, endS, pitchHz, whose }: TrueWhistle,
  isAsked: boolean,
): void {
  const errorS = ({ candidate }: FoundTone) =>
    Math.abs(candidate.startS - startS) + 0.5 * Math.abs(candidate.endS - endS);
  const begin = tones.filter(
    ({ candidate }) =>
      Math.abs(candidate.startS - startS) <= WITHIN_S &&
      Math.abs(Math.log(candidate.pitchHz / pitchHz)) < SAME_PITCH,
  );
  const whole = begin.filter(
    ({ candidate }) =>
      Math.abs(candidate.endS - endS) <= Math.max(WITHIN_S, END_WITHIN_SHARE * (endS - startS)),
  );
  const best = (whole.length > 0 ? whole : begin).toSorted((a, b) => errorS(a) - errorS(b))[0];
  for (const one of begin) one.label ??= !isAsked ? 'unasked' : whole.includes(one) ? 'double' : 'begun';
  if (best !== undefined && isAsked) best.label = 'real';
  for (const one of tones)
    one.isOthers ||=
      whose === 'other' && one.candidate.startS > startS - WITHIN_S && one.candidate.startS < endS + WITHIN_S;
}

/** The tones of a recording labelled by its truth; a blast below `lowestDb` is not asked for. */
export function labelTones(
  candidates: readonly BlastCandidate[],
  { truth, disturbed }: Pick<Recording, 'truth' | 'disturbed'>,
  lowestDb: number,
): LabelledTone[] {
  const tones = candidates.map((candidate): FoundTone => ({ candidate, label: null, isOthers: false }));
  const isAskedFor = ({ inBandSnrDb }: TrueWhistle) => inBandSnrDb >= lowestDb;
  for (const blast of truth.whistles) if (isAskedFor(blast)) labelReadings(tones, blast, true);
  for (const blast of truth.whistles) if (!isAskedFor(blast)) labelReadings(tones, blast, false);
  return tones.map(({ candidate, label, isOthers }) => {
    const isIn = truth.whistles.some(
      (blast) =>
        !isAskedFor(blast) &&
        candidate.startS > blast.startS - WITHIN_S &&
        candidate.startS < blast.endS + WITHIN_S,
    );
    return {
      candidate,
      label: label ?? (isIn ? 'unasked' : 'none'),
      isOthers,
      kinds: soundingAt(disturbed, candidate.startS),
    };
  });
}

/** Labels clicks by the truth: the nearest to each press is real; about one that is not asked for nothing teaches. */
export function labelClicks(clicks: readonly FoundClick[], truth: Truth, lowestDb: number): void {
  for (const { timeS, snrDb } of truth.clicks) {
    const one = nearestClick(clicks, timeS);
    const isAsked = snrDb >= lowestDb;
    if (one !== undefined) one.label = isAsked ? 'real' : 'unasked';
    if (isAsked) continue;
    for (const other of clicks) {
      const isNear = other.startS > timeS - WITHIN_S && other.startS < timeS + RELEASE_S;
      if (isNear) other.label ??= 'unasked';
    }
  }
}

import { ASK_RANGES, type Ask, easyAsk } from '@sedgeline/engine/ability';
import type { AskedLeg } from '@sedgeline/projections';

type AskValue = Ask[keyof Ask];

/** Two lengths within 5 cm are the same length: the screens show tenths of a metre. */
const SAME_LENGTH_M = 0.05;

/**
 * One field of one leg set by hand, the rest of the chain kept true to it. Stop and casts are cues on one and the same
 * send: their distance (metres from the send point) and the share of the way already run move together, the send grows
 * where the cue would lie beyond its end, and what stood at the place of the cue goes along with it.
 */
export function setAskField(
  legs: readonly AskedLeg[],
  index: number,
  field: keyof Ask,
  value: AskValue,
): readonly AskedLeg[] {
  const leg = legs[index];
  if (leg === undefined) throw new RangeError(`index: expected 0 to ${legs.length - 1}, got ${index}`);
  const set = { ...leg, ask: { ...leg.ask, [field]: value } };
  const replaced = legs.map((other, i) => (i === index ? set : other));
  if (typeof value !== 'number' || (field !== 'distanceM' && field !== 'wayFraction')) return replaced;
  if (isCue(leg)) return moveCue(replaced, leg, field, value);
  return leg.skill === 'line' ? moveEnd(replaced, leg, value) : replaced;
}

/** A cue is given to a dog that is on its way. */
function isCue(leg: AskedLeg): boolean {
  return leg.skill === 'stop' || leg.skill.startsWith('cast-');
}

function distanceOf(leg: AskedLeg): number {
  return leg.ask.distanceM ?? easyAsk(leg.skill).distanceM;
}

/** Length of the whole send on which a cue comes, metres. */
function sendLengthM(leg: AskedLeg): number {
  const way = leg.ask.wayFraction ?? easyAsk(leg.skill).wayFraction;
  return distanceOf(leg) / Math.max(way, 0.01);
}

function same(aM: number, bM: number): boolean {
  return Math.abs(aM - bM) <= SAME_LENGTH_M;
}

function withCue(leg: AskedLeg, distanceM: number, lengthM: number): AskedLeg {
  const wayFraction = Math.min(1, Math.round((distanceM / lengthM) * 1000) / 1000);
  return { ...leg, ask: { ...leg.ask, distanceM, wayFraction } };
}

function moveCue(
  legs: readonly AskedLeg[],
  before: AskedLeg,
  field: 'distanceM' | 'wayFraction',
  value: number,
): readonly AskedLeg[] {
  const [, farthestM] = ASK_RANGES.distanceM;
  const oldDistanceM = distanceOf(before);
  const oldLengthM = Math.min(farthestM, sendLengthM(before));
  const distanceM = field === 'distanceM' ? value : Math.round(value * oldLengthM * 10) / 10;
  const lengthM = Math.max(oldLengthM, distanceM, 1);
  return legs.map((leg) => {
    if (isCue(leg) && same(distanceOf(leg), oldDistanceM)) return withCue(leg, distanceM, lengthM);
    if (isCue(leg) && same(distanceOf(leg), distanceM)) return withCue(leg, distanceM, lengthM);
    if (leg.skill !== 'line') return leg;
    const lineM = distanceOf(leg);
    const grownM = same(lineM, oldDistanceM) ? distanceM : same(lineM, oldLengthM) ? lengthM : lineM;
    return { ...leg, ask: { ...leg.ask, distanceM: Math.max(grownM, distanceM) } };
  });
}

/** The line made longer or shorter: the cues stay where they are, unless the line now ends before them. */
function moveEnd(legs: readonly AskedLeg[], before: AskedLeg, lengthM: number): readonly AskedLeg[] {
  const oldLineM = distanceOf(before);
  return legs.map((leg) => {
    if (!isCue(leg)) return leg;
    if (same(distanceOf(leg), oldLineM)) return withCue(leg, lengthM, Math.max(lengthM, sendLengthM(leg)));
    return withCue(leg, Math.min(distanceOf(leg), lengthM), Math.max(lengthM, 1));
  });
}
